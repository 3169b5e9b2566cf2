"""Pages of other origins through the proxy, whichever of the two answers. Fetch standard, 3.3 (CORS protocol)."""

import os
import socket
from collections.abc import Callable, Iterator

import pytest
import requests

from service.headers import EXPOSED
from tests.deploy.conftest import QUESTION
from tests.deploy.proxy import UNHURRIED

SHOP, APP = "https://shop.example", "https://app.example:8443"
ORIGINS = f"{SHOP}, {APP}"
PATH = "/v1/gauge-conversions"
LARGE = b" " * (1024 * 1024 + 1)

Ask = Callable[[str | None], requests.Response]


@pytest.fixture(scope="module")
def asking(start_instance: Callable, start_proxy: Callable) -> Iterator[dict[str, Ask]]:
    """Asks from an origin for an answer of every kind: the service's own, and what nginx makes."""
    address = ("127.0.0.1", 0)
    with (
        pytest.MonkeyPatch.context() as patched,
        socket.create_server(address) as silent,
        socket.create_server(address) as silent_too,
    ):
        patched.setitem(os.environ, "GRADING_CORS_ORIGINS", ORIGINS)
        port = start_instance().port
        nobody = silent.getsockname()[1], silent_too.getsockname()[1]
        usual = start_proxy((port, port), UNHURRIED, origins=ORIGINS).url
        hasty = start_proxy((port, port), {"rate=50r/s": "rate=1r/m", "burst=100 nodelay": ""}, origins=ORIGINS).url
        alone = start_proxy((9, 10), origins=ORIGINS).url
        # asked again and again, though they never answer
        waiting = {f":{each} max_fails=3": f":{each} max_fails=0" for each in nobody}
        waiting["proxy_read_timeout 12s;"] = "proxy_read_timeout 100ms;"
        slow = start_proxy(nobody, waiting, origins=ORIGINS).url
        requests.get(hasty, timeout=30)

        def ask(url: str, **sent: object) -> Ask:
            method = "POST" if sent else "GET"
            return lambda origin: requests.request(
                method, url, headers={"Origin": origin} if origin else {}, timeout=30, **sent
            )

        yield {
            "200": ask(usual + PATH, json=QUESTION),
            "422": ask(usual + PATH, json={}),
            "404": ask(f"{usual}/metrics"),
            "413": ask(usual + PATH, data=LARGE),
            "429": ask(f"{hasty}/health/live"),
            "502": ask(f"{alone}/health/live"),
            "504": ask(f"{slow}/health/live"),
        }


each_answer = pytest.mark.parametrize("status", ["200", "422", "404", "413", "429", "502", "504"])


@each_answer
@pytest.mark.parametrize(
    ("origin", "allowed"),
    [
        (SHOP, SHOP),
        (APP, APP),
        ("https://shop.example.evil.example", None),
        ("https://shop", None),
        ("https://app.example", None),
        (ORIGINS, None),
        ("null", None),
        (None, None),
    ],
)
def test_an_answer_names_the_asking_origin_once_or_none(
    asking: dict[str, Ask], status: str, origin: str | None, allowed: str | None
) -> None:
    # twice, so that a kept answer is asked for too
    for _ in range(2):
        answer = asking[status](origin)
        assert str(answer.status_code) == status
        # two of them would come joined by a comma
        assert answer.headers.get("Access-Control-Allow-Origin") == allowed
        assert "Origin" in answer.headers["Vary"]


@each_answer
def test_a_page_may_read_what_an_answer_says_of_itself(asking: dict[str, Ask], status: str) -> None:
    exposed = asking[status](SHOP).headers["Access-Control-Expose-Headers"]
    assert set(exposed.split(", ")) == set(EXPOSED)


def test_a_kept_answer_is_not_given_with_the_name_of_another_origin(asking: dict[str, Ask]) -> None:
    told = [asking["200"](origin).headers.get("Access-Control-Allow-Origin") for origin in (SHOP, APP, None, SHOP, APP)]
    assert told == [SHOP, APP, None, SHOP, APP]


def test_a_page_asks_first_and_may_then_post_json(asking: dict[str, Ask]) -> None:
    url = asking["200"](None).url
    sent = {
        "Origin": SHOP,
        "Access-Control-Request-Method": "POST",
        "Access-Control-Request-Headers": "content-type, traceparent, x-request-id",
    }
    answer = requests.options(url, headers=sent, timeout=30)
    assert answer.ok
    assert answer.headers["Access-Control-Allow-Origin"] == SHOP
    assert "POST" in answer.headers["Access-Control-Allow-Methods"]
    assert {"content-type", "traceparent"} <= set(answer.headers["Access-Control-Allow-Headers"].lower().split(", "))


@pytest.mark.parametrize(("origins", "allowed"), [("*", "*"), (f"{SHOP}, *", "*"), ("", None)])
def test_all_origins_or_none_may_read_what_nginx_says(start_proxy: Callable, origins: str, allowed: str | None) -> None:
    url = start_proxy((9, 10), origins=origins).url
    for headers in ({}, {"Origin": SHOP}):
        answer = requests.get(f"{url}/health/live", headers=headers, timeout=30)
        assert answer.headers.get("Access-Control-Allow-Origin") == allowed
        assert ("Access-Control-Expose-Headers" in answer.headers) == (allowed is not None)
