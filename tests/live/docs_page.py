"""The docs page as somebody uses it."""

from __future__ import annotations

from typing import Any

from playwright.sync_api import Browser, Locator, Page

ANSWER = ".live-responses-table tbody"


def opened(browser: Browser, server: str, fragment: str = "", **context: Any) -> Page:
    """The page in a browser of its own, once its operations are shown.

    fragment: of its address. context: of the browser, as Playwright has it.
    """
    page = browser.new_context(**context).new_page()
    page.set_default_timeout(30_000)
    page.goto(f"{server}/docs{fragment}")
    page.locator(".opblock.is-open .execute" if "/" in fragment else ".opblock").first.wait_for()
    return page


def block(page: Page, tag: str, operation: str) -> Locator:
    """An operation on the page."""
    return page.locator(f"#operations-{tag}-{operation}")


def executed(page: Page) -> Locator:
    """What is answered to the request of the operation that is open."""
    page.locator(".execute").click()
    answer = page.locator(ANSWER)
    answer.locator(".response-col_description > *").first.wait_for()
    return answer


def request_field(page: Page) -> Locator:
    """Where the request is written."""
    return page.get_by_label("Request body")


def rows_of(table: Locator) -> list[list[str]]:
    """The texts of a table's cells, heads included."""
    rows: list[list[str]] = table.evaluate(
        "table => [...table.rows].map(row => [...row.cells].map(cell => cell.innerText.trim()))"
    )
    return rows
