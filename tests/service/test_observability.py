import logging

import pytest
from flask.testing import FlaskClient
from prometheus_client.mmap_dict import MmapedDict
from prometheus_client.parser import text_string_to_metric_families

from service import VERSION, observability
from service.app import create_app
from service.config import Config

REQUEST = {"gauge": {"stitches": 22, "rows": 31}, "items": [{"name": "a name of one's own", "across": 100}]}


@pytest.fixture
def client() -> FlaskClient:
    """An application with numbers of its own, and one address that fails."""
    app = create_app(Config())

    def fail() -> None:
        raise ZeroDivisionError

    app.add_url_rule("/fault", "fault", fail)
    return app.test_client()


def samples(client: FlaskClient) -> dict[tuple, float]:
    """The numbers as Prometheus reads them, by their name and the values of their labels."""
    text = client.get("/metrics").text
    found = [sample for family in text_string_to_metric_families(text) for sample in family.samples]
    return {(sample.name, *(value for _, value in sorted(sample.labels.items()))): sample.value for sample in found}


def count(client: FlaskClient, method: str, operation: str, status: str) -> float:
    return samples(client).get(("grading_requests_total", method, operation, status), 0)


def test_requests_are_counted_by_operation_method_and_status(client):
    for _ in range(3):
        client.post("/v1/gauge-conversions", json=REQUEST)
    client.open("/v1/gauge-conversions", method="QUERY", json=REQUEST)
    client.post("/v1/gauge-conversions", json={})
    assert count(client, "POST", "gauge-conversions", "200") == 3
    assert count(client, "QUERY", "gauge-conversions", "200") == 1
    assert count(client, "POST", "gauge-conversions", "422") == 1


def test_a_fault_is_counted(client):
    client.get("/fault")
    assert count(client, "GET", "fault", "500") == 1


def test_every_request_of_an_operation_is_timed(client):
    for body in (REQUEST, {}):
        client.post("/v1/gauge-conversions", json=body)
    found = samples(client)
    assert found["grading_request_seconds_count", "gauge-conversions"] == 2
    assert found["grading_request_seconds_bucket", "+Inf", "gauge-conversions"] == 2
    assert 0 < found["grading_request_seconds_sum", "gauge-conversions"] < 60


def test_made_up_addresses_and_methods_make_no_labels_of_their_own(client):
    for name in ("a", "b", "c"):
        client.get(f"/v1/{name}")
        client.open(f"/v1/{name}", method=f"MADEUP{name.upper()}")
        client.get(f"/v1/standards/body-tables/{name}")
    labels = [labels for name, *labels in samples(client) if name == "grading_requests_total"]
    assert sorted(labels) == [["GET", "none", "404"], ["GET", "standards-body-table", "404"], ["other", "none", "404"]]


def test_nothing_is_in_flight_but_the_asking_for_numbers_itself(client):
    client.post("/v1/gauge-conversions", json=REQUEST)
    client.get("/nowhere")
    client.get("/fault")
    assert samples(client)[("grading_requests_in_flight",)] == 1


def test_the_running_version_is_told(client):
    assert samples(client)["grading_build_info", VERSION] == 1


def test_numbers_are_written_as_the_scraper_asks(client):
    plain = client.get("/metrics")
    assert plain.content_type.startswith("text/plain; version=")
    newer = client.get("/metrics", headers={"Accept": "application/openmetrics-text; version=1.0.0"})
    assert newer.content_type.startswith("application/openmetrics-text; version=1.0.0")
    assert newer.text.endswith("# EOF\n")


def test_the_numbers_are_read_again_where_a_process_is_just_making_its_file(client, monkeypatch, tmp_path):
    whole, tried = observability._everywhere, []

    def everywhere(own):
        tried.append(own)
        if len(tried) == 1:
            (tmp_path / "counter_1.db").touch()
            MmapedDict.read_all_values_from_file(str(tmp_path / "counter_1.db"))
        return whole(own)

    monkeypatch.setattr(observability, "_everywhere", everywhere)
    assert client.get("/metrics").status_code == 200
    assert len(tried) == 2


def logged(caplog: pytest.LogCaptureFixture) -> list[logging.LogRecord]:
    return [record for record in caplog.records if record.name == "service.requests"]


def test_a_request_is_one_line_in_the_log(client, caplog):
    with caplog.at_level(logging.INFO, "service"):
        response = client.post("/v1/gauge-conversions", json=REQUEST, headers={"X-Request-Id": "swatch-7"})
    (line,) = logged(caplog)
    assert line.levelname == "INFO"
    assert (line.request_id, line.operation) == ("swatch-7", "gauge-conversions")
    assert (line.method, line.status) == ("POST", 200)
    assert line.bytes_in == response.request.content_length
    assert line.bytes_out == len(response.data)
    assert 0 < line.duration_ms < 60_000


def test_the_bytes_logged_are_those_that_are_sent(client, caplog):
    with caplog.at_level(logging.INFO, "service"):
        response = client.get("/openapi.json", headers={"Accept-Encoding": "gzip"})
    assert response.content_encoding == "gzip"
    (line,) = logged(caplog)
    assert line.bytes_out == len(response.data)


def test_neither_log_nor_numbers_hold_what_was_sent(client, caplog):
    secret = "s3cr3t"
    with caplog.at_level(logging.DEBUG):
        client.post(
            f"/v1/gauge-conversions?token={secret}",
            json=REQUEST | {"items": [{"name": secret, "across": 100}]},
            headers={"Authorization": f"Bearer {secret}", "Cookie": f"session={secret}", "User-Agent": secret},
        )
        client.post("/v1/gauge-conversions", json={secret: secret})
        client.get(f"/{secret}")
    assert len(logged(caplog)) == 3
    assert secret not in repr([vars(record) for record in caplog.records])
    assert secret not in client.get("/metrics").text


TRACE = "4bf92f3577b34da6a3ce929d0e0e4736"
TRACE_PARENTS = [
    # the standard's own example
    (f"00-{TRACE}-00f067aa0ba902b7-01", TRACE),
    (f"00-{TRACE}-00f067aa0ba902b7-00", TRACE),
    # a later version, which may add fields after another dash
    (f"cc-{TRACE}-00f067aa0ba902b7-01", TRACE),
    (f"cc-{TRACE}-00f067aa0ba902b7-01-what-will-come", TRACE),
    (f"cc-{TRACE}-00f067aa0ba902b7-01.what", None),
    (f"00-{TRACE}-00f067aa0ba902b7-01-more", None),
    (f"ff-{TRACE}-00f067aa0ba902b7-01", None),
    (f"00-{'0' * 32}-00f067aa0ba902b7-01", None),
    (f"00-{TRACE}-{'0' * 16}-01", None),
    (f"00-{TRACE.upper()}-00f067aa0ba902b7-01", None),
    (f"00-{TRACE[1:]}-00f067aa0ba902b7-01", None),
    (f"00-{TRACE}-00f067aa0ba902b7-1", None),
    (f"00-{TRACE}-00f067aa0ba902b7", None),
    (f", 00-{TRACE}-00f067aa0ba902b7-01", None),
    ("secret", None),
    ("", None),
]
"""What a header `traceparent` may hold, and the trace it names (W3C Trace Context, section 3.2)."""


@pytest.mark.parametrize(("parent", "trace"), TRACE_PARENTS)
def test_a_line_names_the_trace_of_a_well_formed_header_and_nothing_of_another(client, caplog, parent, trace):
    with caplog.at_level(logging.INFO, "service"):
        client.get("/health/live", headers={"traceparent": parent, "tracestate": "secret=1"})
    (line,) = logged(caplog)
    assert getattr(line, "trace_id", None) == trace
    assert "secret" not in repr(vars(line))


def test_a_line_without_a_trace_says_nothing_of_one(client, caplog):
    with caplog.at_level(logging.INFO, "service"):
        client.get("/health/live")
    assert not hasattr(logged(caplog)[0], "trace_id")


def test_no_requests_are_logged_above_level_info(caplog):
    quiet = create_app(Config(log_level="WARNING")).test_client()
    quiet.get("/health/live")
    assert logged(caplog) == []
