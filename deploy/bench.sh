#!/bin/sh
# Measures the service beside a bare Flask route, what its cost grows with, its memory and start, what a kept answer
# saves, a pipeline's thousand requests and the worst requests, and prints Markdown. Takes less than six minutes on two
# cores and works from any directory. Needs Python 3.11 with pip, and nginx for what it keeps. What it prints,
# tests.benchmarks.report fills into measurements.md.
set -eu
cd "$(dirname "$0")/.."

deploy/venv.sh .venv-test deploy/requirements-test.lock
.venv-test/bin/python -m tests.benchmarks.run
echo
.venv-test/bin/python -m tests.benchmarks.kept
echo
.venv-test/bin/python -m tests.benchmarks.pipeline
echo
echo "## The worst requests within the limits"
echo
exec .venv-test/bin/python -m tests.benchmarks.worst
