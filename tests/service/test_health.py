from service.app import create_app
from service.config import Config

REQUEST = {"gauge": {"stitches": 22, "rows": 31}, "items": [{"across": 100}]}


def test_a_running_instance_is_live_and_ready(client):
    assert client.get("/health/live").json["status"] == "live"
    assert client.get("/health/ready").json["status"] == "ready"


def test_a_draining_instance_is_live_and_not_ready(tmp_path):
    drain_file = tmp_path / "draining"
    client = create_app(Config(drain_file=drain_file)).test_client()
    assert client.get("/health/ready").status_code == 200
    drain_file.touch()
    response = client.get("/health/ready")
    assert (response.status_code, response.content_type) == (503, "application/problem+json")
    assert client.get("/health/live").status_code == 200


def test_a_draining_instance_still_computes(tmp_path):
    (tmp_path / "draining").touch()
    client = create_app(Config(drain_file=tmp_path / "draining")).test_client()
    assert client.post("/v1/gauge-conversions", json=REQUEST).status_code == 200
