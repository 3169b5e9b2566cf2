#!/bin/sh
# Asks every operation, in this process, with made-up requests: more of them than the tests do, and other ones every
# time. A failure prints the request that caused it. Usage: fuzz.sh [REQUESTS]  (written freely for each operation,
# 500 otherwise, beside the systematic ones). Works from any directory. Needs Python 3.11 with pip and nothing else.
set -eu
cd "$(dirname "$0")/.."

deploy/venv.sh .venv-test deploy/requirements-test.lock
FUZZ_REQUESTS=${1:-500} exec .venv-test/bin/python -m pytest tests/openapi/test_fuzzing.py
