#!/bin/sh
# Writes deploy/sbom.json: what the service installs at run time, with versions and licences (CycloneDX).
# Runs from any directory. Needs the test environment: run deploy/test.sh once before.
set -eu
cd "$(dirname "$0")/.."

scratch=$(mktemp -d)
trap 'rm -rf "$scratch"' EXIT
bin=.venv-test/bin

# An environment without pip, so that nothing but the lock is listed.
$bin/python -m venv --without-pip "$scratch/venv"
$bin/python -m pip --python "$scratch/venv/bin/python" install --quiet --disable-pip-version-check --no-input \
    --require-hashes --only-binary :all: -r deploy/requirements.lock
$bin/cyclonedx-py environment --output-reproducible --output-format JSON --pyproject pyproject.toml \
    --output-file "$scratch/sbom.json" "$scratch/venv"

# The packages' links change without any change of ours, and nobody checks a bill of materials by them.
$bin/python - "$scratch/sbom.json" deploy/sbom.json <<'PYTHON'
import json
import sys
from pathlib import Path

source, target = map(Path, sys.argv[1:])
without_links = json.loads(
    source.read_text(), object_hook=lambda part: {k: v for k, v in part.items() if k != "externalReferences"}
)
target.write_text(json.dumps(without_links, indent=2) + "\n")
PYTHON
