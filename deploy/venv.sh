#!/bin/sh
# Makes the virtual environment DIR hold exactly what LOCK names, every file checked by its hash.
# Usage: venv.sh DIR LOCK. An environment that already holds that lock is left as it is.
set -eu

dir=$1
lock=$2
installed=$dir/installed.lock

if [ -x "$dir/bin/python" ] && "$dir/bin/python" -c '' 2>/dev/null && cmp -s "$lock" "$installed"; then
    exit 0
fi

# The locks were resolved on Python 3.11, so that one comes first.
python=
for candidate in python3.11 python3 python3.12 python3.13 python3.14; do
    if "$candidate" -c 'import sys; sys.exit(sys.version_info < (3, 11))' 2>/dev/null; then
        python=$candidate
        break
    fi
done
if [ -z "$python" ]; then
    echo "Python 3.11 or newer is needed, and none was found on the PATH." >&2
    exit 1
fi

echo "Installing $(basename "$lock") into $dir" >&2
rm -rf "$dir"
if "$python" -c 'import ensurepip' 2>/dev/null; then
    "$python" -m venv "$dir"
    set -- "$dir/bin/python" -m pip
else
    # Debian keeps ensurepip in a package of its own, python3-venv; the machine's pip will do as well.
    "$python" -m venv --without-pip "$dir"
    set -- "$python" -m pip --python "$dir/bin/python"
fi
"$@" install --quiet --disable-pip-version-check --no-input \
    --require-hashes --only-binary :all: -r "$lock" >&2
cp "$lock" "$installed"
