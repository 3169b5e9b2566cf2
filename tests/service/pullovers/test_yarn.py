import pytest

from tests.oracles.pullover_answer import feasible
from tests.service.pullovers.answers import CHARTED, DIAMOND, WOMEN


def test_the_yarn_of_the_colours_is_every_stitch_of_the_garment_once(make):
    # `check` adds all stitches up; what isn't worked from the chart is in its commoner colour, so that those of the
    # other one are just the stitches drawn in it
    answer = make(**CHARTED["by default"], yarn={"metres_per_100g": 250})
    assert len(feasible(answer)) == len(WOMEN)
    for size in feasible(answer):
        by_name = {colour["colour"]: colour["stitches"] for colour in size["yarn"]}
        yoke, body, sleeve = (size["chart"][part] for part in ("rounds", "body", "sleeve"))
        drawn = sum(dots(told, told[name]) for told in yoke for name in ("back", "front", "sleeve", "sleeve"))
        drawn += sum(dots(told, told[name]) for told in body["rounds"] for name in ("back", "front"))
        drawn += 2 * sum(dots(told, told) for told in sleeve["rounds"])
        assert by_name["."] == drawn


def dots(told, section):
    """The stitches of a section that its chart row shows as dots, one by one from its first column."""
    if section["first_column"] is None:
        return 0
    # rows are worked from the lowest and read from the right
    read = DIAMOND["rows"][-told["chart_row"]][::-1]
    columns = range(section["first_column"] - 1, section["first_column"] - 1 + section["stitches"])
    return sum(read[column % len(read)] == "." for column in columns)


def test_a_weighed_swatch_decides_the_grams(make):
    # 12 g for 1200 stitches: a hundredth of a gram each; balls of 50 g with a tenth more
    swatch = {"metres_per_100g": 250, "swatch_grams": 12, "swatch_stitches": 1200, "ball_grams": 50}
    (size,) = make(labels=["M"], yarn=swatch)["sizes"]
    (yarn,) = size["yarn"]
    grams = yarn["stitches"] / 100
    assert yarn["basis"] == "measured"
    parts = yarn["metres_for"]
    assert parts["stitches"] + parts["ribs"] == pytest.approx(2.5 * grams, abs=0.11)
    assert yarn["metres"] == pytest.approx(sum(parts.values()), abs=0.21)
    assert yarn["grams"]["likely"] == pytest.approx(yarn["metres"] / 2.5, abs=0.11)
    assert yarn["balls"] == -(-yarn["grams"]["high"] * 1.1 // 50)


def test_strands_held_together_are_counted_in_balls_of_their_own(make):
    # 250 and 119 tex: of 369 g of both 250 are the first's; a strand's ball is its own, else what its metres weigh
    yarn = {"strands": [{"metres": 200, "grams": 50}, {"tex": 119, "name": "halo", "ball_grams": 25}]}
    answer = make(labels=["M"], yarn=yarn)
    ((need,),) = [size["yarn"] for size in answer["sizes"]]
    first, second = need["strands"]
    assert first["grams"]["likely"] == pytest.approx(need["grams"]["likely"] * 250 / 369, abs=0.11)
    assert (first["ball_grams"], second["ball_grams"], second["name"]) == (50, 25, "halo")
    assert first["balls"] == need["balls"] == -(-first["grams"]["high"] * 1.1 // 50)
    assert second["balls"] == -(-second["grams"]["high"] * 1.1 // 25)
    rows = {row["item"]: (row["values"], row.get("strand")) for row in answer["table"] if row["part"] == "yarn"}
    assert rows["balls_1"] == ([first["balls"]], 1)
    assert rows["balls_1_2"] == ([second["balls"]], 2)
