#!/bin/sh
# Measures the service beside a bare Flask route, what its cost grows with, its memory, what a kept answer saves and the
# worst requests, and prints Markdown. Takes about three minutes and works from any directory. Needs Python 3.11 with
# pip, and nginx for what it keeps.
set -eu
cd "$(dirname "$0")/.."

deploy/venv.sh .venv-test deploy/requirements-test.lock
.venv-test/bin/python -m tests.benchmarks.run
echo
.venv-test/bin/python -m tests.benchmarks.kept
echo
echo "## The worst requests within the limits"
echo
exec .venv-test/bin/python -m tests.benchmarks.worst
