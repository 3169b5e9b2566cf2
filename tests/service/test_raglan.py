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
