#!/bin/sh
# Starts the service on this machine, grades a pullover with it and prints the answers; then keeps serving until
# Ctrl-C. Usage: demo.sh [--once]  (--once ends after the print). PORT sets the port, 8000 otherwise or any free
# one. Needs Python 3.11 with pip and nothing else.
set -eu
cd "$(dirname "$0")/.."

case "$*" in
    '' | --once) ;;
    *)
        echo "Usage: demo.sh [--once]" >&2
        exit 2
        ;;
esac

deploy/venv.sh .venv-demo deploy/requirements.lock
python=.venv-demo/bin/python
address=127.0.0.1:$($python deploy/demo/free_port.py "${PORT:-8000}")

BIND=$address GRADING_LOG_LEVEL=WARNING $python -m gunicorn --config deploy/gunicorn.conf.py &
server=$!
trap 'kill $server 2>/dev/null || true; wait $server || true' EXIT
trap 'exit 0' INT TERM

no_proxy=127.0.0.1 $python deploy/demo/show.py "http://$address"
if [ "$*" = --once ]; then
    exit 0
fi
echo
echo "Try every operation in the browser: http://$address/docs"
echo "Stop with Ctrl-C."
wait $server
