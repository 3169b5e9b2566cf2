"""A real server on loopback and a real browser."""

import shutil

import pytest
from playwright.sync_api import Browser, sync_playwright

from tests.served import served

CHROMIUM = shutil.which("chromium")


@pytest.fixture(scope="session")
def server(tmp_path_factory):
    """The address of a gunicorn that serves the application."""
    with served(tmp_path_factory.mktemp("live")) as address:
        yield address


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
