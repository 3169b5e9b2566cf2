"""A real server on loopback and a real browser."""

import shutil
import socket
import subprocess
import sys
import time
from pathlib import Path

import pytest
import requests
from playwright.sync_api import Browser, sync_playwright

CHROMIUM = shutil.which("chromium")
ROOT = Path(__file__).parents[2]


@pytest.fixture(scope="session")
def server(tmp_path_factory):
    """The address of a gunicorn that serves the application."""
    with socket.socket() as probe:
        probe.bind(("127.0.0.1", 0))
        port = probe.getsockname()[1]
    address = f"http://127.0.0.1:{port}"
    command = [sys.executable, "-m", "gunicorn", "--bind", f"127.0.0.1:{port}", "--no-control-socket"]
    log = tmp_path_factory.mktemp("live") / "gunicorn.log"
    with log.open("wb") as output:
        process = subprocess.Popen([*command, "service.wsgi:app"], cwd=ROOT, stdout=output, stderr=output)
        try:
            _wait_until_ready(address, process, log)
            yield address
        finally:
            process.terminate()
            process.wait(timeout=30)


@pytest.fixture(scope="session")
def browser() -> Browser:
    """Headless Chromium that asks nobody anything on its own account."""
    if CHROMIUM is None:
        pytest.fail("chromium is missing: install Debian's package of that name, as deploy/test.sh does.")
    quiet = ["--no-sandbox", "--disable-gpu", "--disable-background-networking", "--disable-component-update"]
    with sync_playwright() as playwright:
        browser = playwright.chromium.launch(executable_path=CHROMIUM, args=quiet)
        yield browser
        browser.close()


def _wait_until_ready(address, process, log):
    end = time.monotonic() + 120
    while process.poll() is None and time.monotonic() < end:
        try:
            if requests.get(f"{address}/health/ready", timeout=5).ok:
                return
        except requests.RequestException:
            time.sleep(0.1)
    pytest.fail(f"gunicorn did not become ready:\n{log.read_text()}")
