#!/bin/sh
# Measures the choice of counts beside a general solver, beside trying every chain of counts and, where `soffice` is
# installed, beside a spreadsheet, and what its cost grows with; prints Markdown. Takes about a minute and works from any
# directory. Needs Python 3.11 with pip.
set -eu
cd "$(dirname "$0")/.."

deploy/venv.sh .venv-test deploy/requirements-test.lock
exec .venv-test/bin/python -m tests.benchmarks.solvers
