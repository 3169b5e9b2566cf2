import pytest

from tests.oracles.pullover_answer import feasible
from tests.service.pullovers.answers import CHARTED


def test_the_yarn_of_the_colours_is_every_stitch_of_the_garment_once(make):
    # `check` adds the stitches up; what a chart's colours have beside the plain one is theirs alone
    answer = make(**CHARTED["by default"], yarn={"metres_per_100g": 250})
    for size in feasible(answer):
        by_name = {colour["colour"]: colour["stitches"] for colour in size["yarn"]}
        assert by_name["."] == size["chart"]["stitches_by_colour"]["total"]["."]


def test_a_weighed_swatch_decides_the_grams(make):
    # 12 g for 1200 stitches: a hundredth of a gram each; balls of 50 g with a tenth more
    swatch = {"metres_per_100g": 250, "swatch_grams": 12, "swatch_stitches": 1200, "ball_grams": 50}
    (size,) = make(labels=["M"], yarn=swatch)["sizes"]
    (yarn,) = size["yarn"]
    grams = yarn["stitches"] / 100
    assert yarn["basis"] == "measured"
    assert yarn["grams"]["low"] == yarn["grams"]["high"] == pytest.approx(grams, abs=0.051)
    assert yarn["metres"] == pytest.approx(2.5 * grams, abs=0.051)
    assert yarn["balls"] == -(-grams * 1.1 // 50)
