#!/bin/sh
# Runs every check of the project, the tests last. Works from any directory and needs nothing but Python 3.11
# with pip, and, unless it runs as root on Debian (it installs them then), Chromium, nginx and ShellCheck.
set -eu
cd "$(dirname "$0")/.."

# Prints, on one line, the Debian packages whose programs are missing.
missing_packages() {
    for program in chromium nginx shellcheck; do
        command -v $program >/dev/null || printf '%s ' $program
    done
}

PATH=$PATH:/usr/sbin
missing=$(missing_packages)
if [ -n "$missing" ] && [ "$(id -u)" = 0 ] && command -v apt-get >/dev/null; then
    apt="apt-get -qq -o Acquire::Retries=3 -o DPkg::Lock::Timeout=300"
    $apt update >&2
    # RUNLEVEL=1 keeps the package scripts from starting a system-wide nginx.
    # shellcheck disable=SC2086  # one word per package
    DEBIAN_FRONTEND=noninteractive RUNLEVEL=1 \
        $apt install -y --no-install-recommends $missing </dev/null >/dev/null
    missing=$(missing_packages)
fi
if [ -n "$missing" ]; then
    echo "The tests need these programs installed: $missing" >&2
    exit 1
fi

deploy/venv.sh .venv-test deploy/requirements-test.lock
bin=.venv-test/bin

# The npm packages of the tests, exactly those of their lock, every one checked by its hash. Node is in the environment.
packages=tests/clients
if ! cmp -s $packages/package-lock.json $packages/node_modules/installed.lock; then
    echo "Installing $packages/package-lock.json" >&2
    $bin/npm ci --prefix $packages --ignore-scripts --no-audit --no-fund --loglevel=error >&2
    cp $packages/package-lock.json $packages/node_modules/installed.lock
fi

$bin/ruff check .
$bin/ruff format --check .
$bin/mypy
$bin/lint-imports
# All tests take two processors; a few named ones are looked at one by one.
if [ $# = 0 ]; then
    set -- --numprocesses=2 --dist=loadfile
fi
exec $bin/python -m pytest "$@"
