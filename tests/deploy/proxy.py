"""nginx with its deployed settings, on loopback."""

import re
import shutil
import socket
import subprocess
import tempfile
import time
from pathlib import Path

from service import VERSION

SETTINGS = Path(__file__).resolve().parent.parent.parent / "deploy" / "nginx.conf"
NGINX = shutil.which("nginx") or shutil.which("nginx", path="/usr/sbin")
UNHURRIED = {"rate=50r/s": "rate=50000r/s", "burst=100": "burst=50000"}
"""Textual changes that leave no rate limit to speak of."""


class Proxy:
    """nginx before the instances at two ports.

    changes: textual ones of its settings. origins: what GRADING_CORS_ORIGINS says. release: what GRADING_RELEASE says.
    """

    def __init__(
        self,
        ports: tuple[int, int],
        changes: dict[str, str] | None = None,
        *,
        origins: str = "",
        release: str = VERSION,
    ) -> None:
        # nginx's workers are another user where it is started by root, so that all may enter; and a path in its
        # settings has no spaces. Both are sure of /tmp alone.
        self.directory = Path(tempfile.mkdtemp(prefix="pullover-grading-nginx-", dir="/tmp"))
        self.directory.chmod(0o755)
        self.port = free_port()
        filled_in = {"GRADING_CORS_ORIGINS": origins, "GRADING_RELEASE": release}
        settings = self.directory / "nginx.conf"
        settings.write_text(_settings(self.directory, self.port, ports, changes or {}, filled_in))
        command = [str(NGINX), "-e", "stderr", "-p", str(self.directory), "-c", str(settings), "-g", "daemon off;"]
        with self.log.open("wb") as log:
            self._process = subprocess.Popen(command, stdout=log)

    @property
    def log(self) -> Path:
        """What it logs of requests."""
        return self.directory / "access.log"

    @property
    def url(self) -> str:
        """Where it answers."""
        return f"http://127.0.0.1:{self.port}"

    @property
    def process(self) -> int:
        """The id of the process whose children answer."""
        return self._process.pid

    def wait_until_up(self) -> None:
        """Until it takes connections; two minutes at most, since another's load may slow this machine down."""
        end = time.monotonic() + 120
        while not connects(self.port):
            if self._process.poll() is not None or time.monotonic() > end:
                raise RuntimeError("nginx has not started")
            time.sleep(0.025)

    def stop(self) -> None:
        """Let it end, and leave nothing behind."""
        self._process.terminate()
        self._process.wait(timeout=30)
        shutil.rmtree(self.directory)


def _settings(
    directory: Path, port: int, upstreams: tuple[int, int], changes: dict[str, str], filled_in: dict[str, str]
) -> str:
    """The deployed settings with this machine's addresses and a directory of their own in place of theirs."""
    changes = {
        "listen 8080;": f"listen 127.0.0.1:{port};",
        "server app1:8000 ": f"server 127.0.0.1:{upstreams[0]} ",
        "server app2:8000 ": f"server 127.0.0.1:{upstreams[1]} ",
        "proxy_cache_path /var/cache/answers ": f"proxy_cache_path {directory}/answers ",
        **changes,
    }
    text = SETTINGS.read_text().replace(" /tmp/", f" {directory}/")
    for before, after in changes.items():
        assert text.count(before) == 1, before
        text = text.replace(before, after)
    # as envsubst does it
    return re.sub(r"\$\{(GRADING_[A-Z_]+)\}", lambda name: filled_in[name[1]], text)


def connects(port: int) -> bool:
    """Whether something listens at a port."""
    with socket.socket() as probe:
        return probe.connect_ex(("127.0.0.1", port)) == 0


def free_port() -> int:
    """A port at which nothing listens."""
    with socket.socket() as probe:
        probe.bind(("127.0.0.1", 0))
        port: int = probe.getsockname()[1]
        return port
