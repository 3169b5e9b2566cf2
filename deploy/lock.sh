#!/bin/sh
# Resolves the requirements anew and writes both lock files, then the bill of materials.
# Runs from any directory. Needs the test environment: run deploy/test.sh once before.
# Arguments go to pip-compile: "--upgrade" takes newer releases, "--upgrade-package flask" one.
set -eu
cd "$(dirname "$0")/.."

compile() {
    .venv-test/bin/pip-compile --quiet --generate-hashes --allow-unsafe --strip-extras --no-header \
        --no-emit-index-url --no-emit-trusted-host --no-emit-find-links "$@"
}

compile "$@" --output-file deploy/requirements.lock deploy/requirements.in
compile "$@" --output-file deploy/requirements-test.lock deploy/requirements-test.in
deploy/sbom.sh
