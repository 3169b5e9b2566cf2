import pytest

from tests.service.pullovers.answers import DIAMOND, GAUGE

WRONG = {
    "no gauge of two": ({"gauges": {"plain": GAUGE}}, {""}),
    "lists of a wrong length, wherever they stand": (
        {
            "ease": {"bust": [1, 2]},
            "neck": {"circumference": [40]},
            "yoke": {"depth": [20, 21, 22], "underarm": [6]},
            "body": {"length": [30, 31], "levels": [{"measurement": "waist", "below": [1, 2]}]},
            "sleeve": {"length": [40]},
            "changes": {"body_length": [1], "sleeve_length": [2, 3], "ease": {"bust": [3, 4]}},
        },
        {
            "/ease/bust",
            "/neck/circumference",
            "/yoke/depth",
            "/yoke/underarm",
            "/body/length",
            "/body/levels/0/below",
            "/sleeve/length",
            "/changes/body_length",
            "/changes/sleeve_length",
            "/changes/ease/bust",
        },
    ),
    "what no schema knows": (
        {"yoke": {"dept": 3}, "ease": {"head": 3}, "neck": {"shares": {"back": 1}}, "chart": {"chart": {}}},
        {"/yoke/dept", "/ease/head", "/neck/shares/front", "/neck/shares/sleeve", "/chart/chart"},
    ),
    "an ease that nothing has": ({"ease": {"hip": 3}}, {"/ease/hip"}),
    "a front wider than the back": (
        {"neck": {"shares": {"back": 10, "front": 11, "sleeve": 4}}},
        {"/neck/shares/front"},
    ),
    "more of the line to the body than there is": ({"yoke": {"line_to_body": 3}}, {"/yoke/line_to_body"}),
    "a weight without its stitches": ({"yarn": {"metres_per_100g": 200, "swatch_grams": 3}}, {"/yarn/swatch_stitches"}),
    "lengths that fall": (
        {"labels": ["S", "M"], "yoke": {"depth": [24, 22]}, "neck": {"circumference": {"from": 46, "to": 44}}},
        {"/yoke/depth", "/neck/circumference"},
    ),
    "short rows across a chart that runs on": (
        {"labels": ["S", "M"], "body": {"bust_darts": {"extra": [0, 2]}}, "chart": {"chart": DIAMOND}},
        {"/body/bust_darts"},
    ),
    "a front that gets narrower": ({"labels": ["S", "M"], "body": {"front_extra": [3, 2]}}, {"/body/front_extra"}),
    "less than no short rows": (
        {"body": {"front_extra": -1, "bust_darts": {"extra": -1}}},
        {"/body/front_extra", "/body/bust_darts/extra"},
    ),
    "steps to less than nothing": (
        {"body": {"front_extra": {"from": -2, "to": 1}, "bust_darts": {"extra": {"from": 1, "to": -2}}}},
        {"/body/front_extra", "/body/bust_darts/extra"},
    ),
    "levels in the wrong order": (
        {"body": {"levels": [{"measurement": "hip", "below": 30}, {"measurement": "waist", "below": 15}]}},
        {"/body/levels/1/below"},
    ),
    "labels of no size": ({"labels": ["S", "Q", "S"]}, {"/labels/1", "/labels/2"}),
    "sizes that lack something": (
        {"sizes": [{"label": "a", "bust": 90}, {"label": "b", "bust": 100, "upper_arm": 30}]},
        {"/sizes/0", "/sizes/1"},
    ),
    "anchors outside the chart, and half a stitch apart": (
        {"chart": {"chart": DIAMOND, "anchor": {"back": 3, "front": 2.5, "sleeve": 7}}},
        {"/chart/anchor/front", "/chart/anchor/sleeve"},
    ),
    "a ragged chart, and colours that it lacks": (
        {"chart": {"chart": {"rows": ["..#", "...."]}, "plain_colour": "x", "seam_colour": "z"}},
        {"/chart/chart/rows/1", "/chart/plain_colour", "/chart/seam_colour"},
    ),
    "a cast-on that the anchors' parity can't land on": (
        # odd sections all round: 2 odd backs and 2 odd sleeves are a multiple of 4
        {
            "neck": {"count_rule": {"multiple": 4, "plus": 2}},
            "chart": {"chart": DIAMOND, "anchor": {"back": 3, "front": 3, "sleeve": 3}},
        },
        {"/neck/count_rule", "/chart/anchor/back", "/chart/anchor/sleeve"},
    ),
    "ribs that don't come out even, and edges in colours that there aren't": (
        {
            "body": {"hem": {"rib": {"knit": 2, "purl": 2}, "count_rule": {"multiple": 6}, "colour": "x"}},
            "sleeve": {"cuff": {"rib": {"knit": 3, "purl": 2}, "count_rule": {"plus": 2}, "colour": "y"}},
            "band": {"rib": {"knit": 1, "purl": 1}},
            "changes": {"band": {"count_rule": {"plus": 1}, "colour": "z"}},
        },
        {
            "/body/hem/count_rule/multiple",
            "/body/hem/colour",
            "/sleeve/cuff/count_rule/plus",
            "/sleeve/cuff/colour",
            "/changes/band/count_rule/plus",
            "/changes/band/colour",
        },
    ),
    "a rib without a purl stitch": ({"band": {"rib": {"knit": 2, "purl": 0}}}, {"/band/rib/purl"}),
    "several colours, and none that is the pullover's": (
        {"yarn": {"colours": {symbol: {"metres_per_100g": 400} for symbol in "ab"}}},
        {"/yarn/main_colour"},
    ),
    "a maker's yarn that lacks a colour, and has another main one": (
        {
            "yarn": {"colours": {symbol: {"metres_per_100g": 400} for symbol in "ab"}, "main_colour": "a"},
            "changes": {"yarn": {"colours": {"b": {"metres_per_100g": 200}}, "main_colour": "b"}},
        },
        {"/changes/yarn/colours", "/changes/yarn/main_colour"},
    ),
    "a main colour beside a chart": (
        {
            "chart": {"chart": DIAMOND},
            "yarn": {"colours": {symbol: {"metres_per_100g": 400} for symbol in ".#"}, "main_colour": "."},
        },
        {"/yarn/main_colour"},
    ),
    "two ways to change the yoke": ({"changes": {"yoke": {"depth": 3, "rounds": 3}}}, {"/changes/yoke"}),
    "a changed gauge that is too fine": ({"changes": {"gauge": {"stitches": 900, "rows": 30}}}, {"/changes"}),
    "a changed yoke that is too deep": ({"changes": {"yoke": {"rounds": 5000}}}, {"/changes/yoke"}),
    "more than one answer holds": ({"body": {"length": 2000}}, {""}),
}


@pytest.mark.parametrize(("request_", "pointers"), WRONG.values(), ids=WRONG)
def test_every_wrong_place_is_named(refuse, request_, pointers):
    assert refuse(**request_).keys() == pointers
