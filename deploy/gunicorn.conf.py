"""Settings of the application server, gunicorn 27.

The environment may set `BIND` (an address with a port), `WEB_CONCURRENCY` (the number of workers) and
`FORWARDED_ALLOW_IPS` (the proxies whose word on the scheme of a request is believed).
"""

import gc
import json
import logging
import os
import shutil
import socket
from http import HTTPStatus
from pathlib import Path
from typing import Any

from gunicorn import util
from gunicorn.arbiter import Arbiter
from gunicorn.workers.base import Worker
from gunicorn.workers.sync import SyncWorker

SHARED_MEMORY = Path("/dev/shm")
TEMPORARY = SHARED_MEMORY if os.access(SHARED_MEMORY, os.W_OK) else Path("/tmp")


class Outbox:
    """A client's connection that keeps what is to be sent."""

    def __init__(self, connection: socket.socket) -> None:
        self.connection = connection
        self.content = bytearray()

    def sendall(self, data: bytes) -> None:
        """Keep it for later."""
        self.content += data

    def __getattr__(self, name: str) -> Any:
        return getattr(self.connection, name)


class WholeAnswerWorker(SyncWorker):
    """Sends the head and the body of an answer at once.

    By itself gunicorn sends the head first. A worker killed right after that leaves the proxy with half an answer
    passed on and no way to ask another instance.
    """

    def handle_request(self, listener: Any, req: Any, client: socket.socket, addr: Any) -> None:
        """Compute one answer and send it."""
        outbox = Outbox(client)
        super().handle_request(listener, req, outbox, addr)
        client.sendall(outbox.content)


wsgi_app = "service.wsgi:app"
chdir = str(Path(__file__).resolve().parent.parent)
bind = os.environ.get("BIND", "127.0.0.1:8000")

# A request is a short computation with nothing to wait for, so one process a core does all there is to do.
worker_class = WholeAnswerWorker
workers = int(os.environ.get("WEB_CONCURRENCY") or len(os.sched_getaffinity(0)))
backlog = 512
sendfile = False

# No computation takes a second. What takes longer is a slow client, which the proxy in front holds off.
timeout = 10
graceful_timeout = 15

# A worker that is renewed now and then cannot leak for long; the jitter keeps them from leaving together.
max_requests = 20_000
max_requests_jitter = 4_000

limit_request_line = 2_048
limit_request_fields = 64
limit_request_field_size = 4_096

# The heartbeat must not wait for a disk.
worker_tmp_dir = str(TEMPORARY)

# Instances of one user would share it, and nothing here uses it.
control_socket_disable = True

# What no line says isn't found out for it: where it was written, by which thread and by which process's name (Python's
# logging HOWTO, "Optimization").
logging._srcfile = None
logging.logThreads = False
logging.logMultiprocessing = False

# Requests are logged by the service itself. Its lines and the server's own go to standard error, each a JSON object.
accesslog = None
logconfig_dict: dict[str, Any] = {
    "formatters": {
        "json": {
            "()": "pythonjsonlogger.orjson.OrjsonFormatter",
            "fmt": ("levelname", "name", "process", "message"),
            "timestamp": "time",
            "rename_fields": {"levelname": "level", "name": "logger", "exc_info": "traceback"},
        }
    },
    "handlers": {"standard_error": {"class": "logging.StreamHandler", "formatter": "json"}},
    "root": {"level": "WARNING", "handlers": ["standard_error"]},
    "loggers": {"gunicorn.error": {"level": "WARNING", "handlers": ["standard_error"], "propagate": False}},
}

# The workers' metrics meet in a directory of this instance, named before the metrics library is imported. A worker's
# files carry the number of its place and not its process id: whoever takes the place goes on with them. So the
# numbers outlive a worker, and there are never more files than workers at a time.
metrics_directory = TEMPORARY / f"pullover-grading-metrics-{os.getpid()}"
os.environ["PROMETHEUS_MULTIPROC_DIR"] = str(metrics_directory)


def on_starting(server: Arbiter) -> None:
    """Start with no numbers of a process that had the same id before, and with the words and the code of all workers.

    Compiling a language takes a second and loading the code half of one: workers are forked with both, the renewed ones
    too, and share the memory that it takes. What is left of compiling goes before the code comes, which then takes its
    place.
    """
    from service.language import LANGUAGES

    for language in LANGUAGES.values():
        language.compile()
        gc.collect()
    import service.app  # noqa: F401
    from service.config import Config
    from service.routes import operations

    for operation in operations(Config()):
        operation.prepare()
    gc.collect()
    # A collection in a worker would write to each object, and so copy what it shares.
    gc.freeze()
    shutil.rmtree(metrics_directory, ignore_errors=True)
    metrics_directory.mkdir()


def pre_fork(server: Arbiter, worker: Worker) -> None:
    """Give a new worker the first place that none holds."""
    taken = {other.place for other in server.WORKERS.values()}
    worker.place = min(set(range(len(taken) + 1)) - taken)


def post_fork(server: Arbiter, worker: Worker) -> None:
    """Let the worker count in the files of its place."""
    from prometheus_client import values

    values.ValueClass = values.MultiProcessValue(lambda: worker.place)


def post_worker_init(worker: Worker) -> None:
    """Keep the garbage collector from looking through the loaded application again and again.

    What a request makes is free again when it ends, without a collection; left alone, collections take a sixth of
    the time and now and then hold one request up for 40 ms.
    """
    gc.collect()
    gc.freeze()
    gc.set_threshold(50_000, 10, 10)


def child_exit(server: Arbiter, worker: Worker) -> None:
    """Drop the gauges of a worker that has gone; an error here would take the whole server down."""
    try:
        from prometheus_client.multiprocess import mark_process_dead

        mark_process_dead(worker.place)
    except Exception:
        server.log.exception("The metrics of worker %s could not be closed.", worker.pid)


def on_exit(server: Arbiter) -> None:
    """Leave nothing behind."""
    shutil.rmtree(metrics_directory, ignore_errors=True)


def write_problem(sock: socket.socket, status_int: int, reason: str, mesg: str) -> None:
    """Answer a request that never reached the application as a problem document (RFC 9457), not as HTML."""
    status = HTTPStatus(status_int)
    kind = "bad-request" if status.value < 500 else "internal-error"
    body = json.dumps({"type": f"/problems/{kind}", "title": status.phrase, "status": status.value, "detail": mesg})
    head = (
        f"HTTP/1.1 {status.value} {status.phrase}\r\n"
        "Connection: close\r\n"
        "Content-Type: application/problem+json\r\n"
        f"Content-Length: {len(body)}\r\n\r\n"
    )
    util.write_nonblock(sock, (head + body).encode("ascii"))


# gunicorn has no setting for the body of its own errors.
util.write_error = write_problem
