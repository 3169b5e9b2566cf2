"""Increase schedules and adjusted yokes over HTTP."""

from flask.testing import FlaskClient

NECK = {"back": 34, "front": 34, "sleeve": 12}


def test_increase_rounds_come_back_as_sent_also_where_back_and_front_take_turns(client: FlaskClient) -> None:
    worked = [{"round": 2, "back": 1, "front": 0, "sleeve": 1}, {"round": 4, "back": 0, "front": 1, "sleeve": 0}]
    size = {"label": "S", "rounds": 8, "neck": NECK, "split": {"back": 36, "front": 36, "sleeve": 14}}
    answer = client.post(
        "/v1/yoke-adjustments",
        json={
            "gauge": {"stitches": 22, "rows": 31},
            "adjust": {"rounds": 9},
            "sizes": [{**size, "increase_rounds": worked}],
        },
    ).json
    before = answer["sizes"][0]["before"]
    assert before["increase_rounds"] == worked
    assert [(phase["back"], phase["front"]) for phase in before["phases"]] == [(1, 0), (0, 1), (0, 0)]
    assert before["body_increases"] == 1


def test_warnings_of_yokes_name_size_rounds_and_centimetres(client: FlaskClient) -> None:
    gauge = {"stitches": 22, "rows": 31}
    size = {"label": "S", "rounds": 62, "neck": NECK, "split": {"back": 96, "front": 96, "sleeve": 74}}
    answer = client.post("/v1/yoke-adjustments", json={"gauge": gauge, "adjust": {"rounds": 31}, "sizes": [size]}).json
    # 31 increases at every edge and 31 rounds
    assert answer["sizes"][0]["recommended"] == "closer"
    assert answer["sizes"][0]["options"][2]["consecutive_increase_rounds"] == 31
    (warning,) = answer["warnings"]
    assert (warning["code"], warning["size"]) == ("many_increase_rounds_in_a_row", "S")
    early = {**size, "rounds": 80, "split": {"back": 82, "front": 82, "sleeve": 50}}
    answer = client.post(
        "/v1/raglan-schedules", json={"gauge": gauge, "spacing": "single_then_plain", "sizes": [early]}
    ).json
    # 24 times every 2nd round end with round 48 of 80, 32 rounds of 10 / 31 cm above the split
    (warning,) = answer["warnings"]
    assert (warning["code"], warning["size"]) == ("increases_end_early", "S")
    assert "32 rounds (10.3 cm)" in warning["message"]
