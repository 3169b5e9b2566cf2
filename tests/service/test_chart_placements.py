"""POST /v1/chart-placements, against placements, floats and counts worked out by hand."""

from itertools import pairwise

import pytest

PATH = "/v1/chart-placements"
ARROW = {"rows": ["..#..", ".###.", "#####"], "colours": {".": {"name": "ground"}, "#": {"name": "motif"}}}
SEED = {"rows": ["..#.."], "colours": {".": {"name": "ground"}, "#": {"name": "motif"}}}
MIDDLE = {"back": 3, "front": 3, "sleeve": 3}


def size(label="S", **counts):
    return {"label": label, "rounds": 2, "neck": {"back": 5, "front": 5, "sleeve": 5}, **counts}


def request(chart=ARROW, sizes=None, **options):
    return {
        "gauge": {"stitches": 20, "rows": 30},
        "chart": chart,
        "anchor": MIDDLE,
        "line_stitches": 0,
        "sizes": sizes or [size()],
        **options,
    }


def answer(client, *arguments, **options):
    response = client.post(PATH, json=request(*arguments, **options))
    assert response.status_code == 200, response.json
    return response.json


def placed(client, *arguments, **options):
    return answer(client, *arguments, **options)["sizes"][0]


def errors(client, sent):
    response = client.post(PATH, json=sent)
    assert response.status_code == 422
    return {error["pointer"]: error["detail"] for error in response.json["errors"]}


def codes(client, *arguments, **options):
    return [warning["code"] for warning in answer(client, *arguments, **options)["warnings"]]


def test_a_section_of_five_starts_with_column_1_and_one_of_seven_with_column_5(client):
    """With W = 5 and c = 3, laid out on paper: 5 4 3 2 1, then one more stitch at either side, 1 5 4 3 2 1 5."""
    rounds = placed(client, sizes=[size(increase_rounds=[{"round": 2, "body": 1}])])["rounds"]
    assert [here["back"] for here in rounds] == [
        {"stitches": 5, "first_column": 1, "last_column": 5},
        {"stitches": 7, "first_column": 5, "last_column": 1},
    ]
    assert [here["chart_row"] for here in rounds] == [1, 2]


def test_the_changes_are_the_rounds_whose_start_differs_from_the_round_before(client):
    grown = size(rounds=8, increase_rounds=[{"round": n, "body": 1, "sleeve": n // 4} for n in (2, 3, 6)])
    seen = placed(client, sizes=[grown])
    for section, changes in seen["changes"].items():
        starts = [here[section]["first_column"] for here in seen["rounds"]]
        assert changes == [n for n, (before, start) in enumerate(pairwise(starts), 2) if before != start]
    assert seen["changes"] == {"back": [2, 3, 6], "front": [2, 3, 6], "sleeve": [6]}


def test_body_and_sleeve_go_on_with_the_next_row_and_count_their_own_rounds(client):
    below = size(rounds=4, body_rounds=2, sleeve_rounds=1)
    seen = placed(client, sizes=[below])
    assert [here["chart_row"] for here in seen["rounds"]] == [1, 2, 3, 1]
    assert [(here["round"], here["chart_row"]) for here in seen["body"]["rounds"]] == [(1, 2), (2, 3)]
    assert seen["sleeve"]["rounds"] == [
        {"round": 1, "chart_row": 2, "stitches": 5, "first_column": 1, "last_column": 5}
    ]


def test_rows_worked_and_left_and_the_shortest_body(client):
    """Four rounds over a chart of three rows: one whole repeat and a row, so two rows are left, 2 / 3 cm."""
    seen = placed(client, sizes=[size(rounds=4)])
    assert (seen["yoke_chart_rows"], seen["last_chart_row"], seen["rows_left"]) == (4, 1, 2)
    assert seen["shortest_body"] == {"rounds": 2, "length": {"cm": 0.67, "inch": 0.26}}
    assert seen["shortest_sleeve"] == seen["shortest_body"]
    assert seen["chart_ends_at_split"] == {
        "shallower_by": {"rounds": 1, "length": {"cm": 0.33, "inch": 0.13}},
        "deeper_by": {"rounds": 2, "length": {"cm": 0.67, "inch": 0.26}},
    }


def test_a_plain_section_has_null_columns(client):
    seen = placed(client, minimum_width={"body": 0, "sleeve": 7})
    assert seen["rounds"][0]["sleeve"] == {"stitches": 5, "first_column": None, "last_column": None}
    assert seen["rounds"][0]["back"]["first_column"] == 1


def test_rounds_before_the_first_have_no_chart_row(client):
    rounds = placed(client, first_round=2)["rounds"]
    assert [here["chart_row"] for here in rounds] == [None, 1]
    assert rounds[0]["back"]["first_column"] is None


def test_the_longest_float_in_stitches_and_length(client):
    """..#....#....#....#.. around: four stitches, 2 cm at 20 stitches in 10 cm, between two motif stitches."""
    longest = placed(client, SEED)["longest_float"]
    assert longest == {
        "stitches": 4,
        "length": {"cm": 2.0, "inch": 0.79},
        "part": "yoke",
        "round": 1,
        "colour": "#",
        "start": {"round": 1, "section": "back", "column": 3},
        "end": {"round": 1, "section": "first_sleeve", "column": 3},
    }


def test_a_round_of_one_colour_has_no_float(client):
    assert placed(client, {"rows": ["#"]}, anchor=dict.fromkeys(MIDDLE, 1))["longest_float"] is None


def test_every_round_has_its_longest_float(client):
    """..#.. once in the sleeve: ground over one motif stitch, then motif over the round's start, 2 and 2."""
    seen = placed(client, SEED, sizes=[size(body_rounds=1, sleeve_rounds=2)])
    assert seen["floats_by_round"] == {"yoke": [4, 4], "body": [4], "sleeve": [1, 4]}


def test_a_float_above_the_limit_is_named_with_its_rounds(client):
    seen = placed(client, SEED, float_limit=3)
    assert seen["long_float_rounds"] == {"yoke": [1, 2], "body": [], "sleeve": []}
    assert "long_float" in codes(client, SEED, float_limit=3)
    assert "long_float" not in codes(client, SEED, float_limit=4)


def test_a_long_float_in_a_garment_for_children_gets_its_own_caution(client):
    wide = {"rows": ["...#..."]}
    wide_size = size(neck={"back": 7, "front": 7, "sleeve": 7})
    options = {"sizes": [wide_size], "anchor": dict.fromkeys(MIDDLE, 4)}
    assert "float_can_catch_fingers" in codes(client, wide, for_children=True, **options)
    assert "float_can_catch_fingers" not in codes(client, wide, **options)


def test_stitches_by_colour_are_those_on_the_needle(client):
    """Two yoke rounds of 20 stitches, a body round of 10, two rounds of each sleeve of 5; a fifth is motif."""
    seen = placed(client, SEED, sizes=[size(body_rounds=1, sleeve_rounds=2)])
    assert seen["stitches_by_colour"] == {
        "total": {".": 56, "#": 14},
        "yoke": {".": 32, "#": 8},
        "body": {".": 8, "#": 2},
        "sleeves": {".": 16, "#": 4},
    }


def test_stitches_behind_which_a_colour_is_carried_are_those_between_two_of_its_own(client):
    """Rounds are repeats of ..#..: # passes 4 stitches between two, over the start of the round too; . passes 1.

    Two yoke rounds of four repeats: seven floats of #, eight of .; a body round of two, one and two of them; two rounds
    of a sleeve of one, one float of # over the start of the second round and two of ., in both sleeves twice as many.
    """
    seen = placed(client, SEED, sizes=[size(body_rounds=1, sleeve_rounds=2)])
    assert seen["float_stitches_by_colour"] == {
        "total": {".": 8 + 2 + 4, "#": 28 + 4 + 8},
        "yoke": {".": 8, "#": 28},
        "body": {".": 2, "#": 4},
        "sleeves": {".": 4, "#": 8},
    }


def test_plain_stitches_at_the_ends_are_told_where_partial_motifs_are_plain(client):
    grown = size(
        rounds=3,
        neck={"back": 3, "front": 3, "sleeve": 5},
        increase_rounds=[{"round": 2, "body": 1}, {"round": 3, "body": 1}],
    )
    seen = placed(client, sizes=[grown], partial_motifs="plain")
    assert [here["back"] for here in seen["rounds"]] == [
        {"stitches": 3, "first_column": None, "last_column": None},
        {"stitches": 5, "first_column": 1, "last_column": 5, "plain_before": 0, "plain_after": 0},
        {"stitches": 7, "first_column": 1, "last_column": 5, "plain_before": 1, "plain_after": 1},
    ]
    assert seen["motifs"]["back"] == seen["motifs"]["front"] == [{"motifs": 1, "from_round": 2}]
    assert seen["motifs"]["sleeve"] == [{"motifs": 1, "from_round": 1}]


def test_nothing_is_told_of_motifs_that_may_be_cut(client):
    seen = placed(client, sizes=[size(body_rounds=1, sleeve_rounds=1)])
    assert seen.keys() & {"motifs"} == seen["body"].keys() & {"motifs"} == seen["sleeve"].keys() & {"motifs"} == set()
    assert "plain_before" not in seen["sleeve"]["rounds"][0]


def test_below_the_split_whole_motifs_are_told_too(client):
    seen = placed(client, sizes=[size(underarm=10, body_rounds=1, sleeve_rounds=1)], partial_motifs="plain")
    # fifteen stitches from five and five at either side
    assert seen["body"]["motifs"] == {
        "back": [{"motifs": 3, "from_round": 1}],
        "front": [{"motifs": 3, "from_round": 1}],
    }
    assert seen["sleeve"]["motifs"] == [{"motifs": 3, "from_round": 1}]
    assert seen["sleeve"]["rounds"][0]["plain_before"] == 0


def test_the_answered_colours_stay_where_two_are_exchanged(client):
    seen = answer(client, SEED, exchange=[".", "#"], plain_colour=".")
    assert seen["chart"]["colours"] == SEED["colours"]
    assert seen["sizes"][0]["stitches_by_colour"]["yoke"] == {".": 8, "#": 32}


def test_rounds_of_more_than_two_colours_are_listed(client):
    three = {"rows": ["..#..", ".o#o."]}
    assert placed(client, three)["rounds_over_two_colours"] == {"yoke": [1], "body": [], "sleeve": []}


def test_the_chart_comes_back_with_its_mirror_axes(client):
    assert answer(client)["chart"] == {
        "columns": 5,
        "rows": 3,
        "colours": ARROW["colours"],
        "symmetry": "both",
        "mirror_axes": [3, 5.5],
    }


def test_a_half_is_an_anchor_for_even_sections(client):
    even = size(neck={"back": 4, "front": 4, "sleeve": 4})
    seen = placed(client, sizes=[even], anchor=dict.fromkeys(MIDDLE, 2.5))
    assert seen["rounds"][0]["back"] == {"stitches": 4, "first_column": 1, "last_column": 4}


def test_the_same_gauge_in_inches_gives_the_same_answer(client):
    metric = answer(client, gauge={"stitches": 20, "rows": 30, "over": 10.16})
    imperial = answer(client, unit="in", gauge={"stitches": 20, "rows": 30, "over": 4})
    assert metric["sizes"] == imperial["sizes"]


def test_symbols_without_colours_are_their_own_names(client):
    assert answer(client, {"rows": ["..#.."]})["chart"]["colours"] == {".": {"name": "."}, "#": {"name": "#"}}


def test_csv_counts_the_stitches_of_each_colour_in_stitches(client):
    response = client.post(PATH, json=request(SEED), headers={"Accept": "text/csv"})
    assert "stitches_by_colour,total.#,stitches,8,8,\r\n" in response.text
    assert "first_column" not in response.text


# What is wrong


@pytest.mark.parametrize(
    ("change", "pointer"),
    [
        ({"sizes": [size(), size()]}, "/sizes/1/label"),
        ({"sizes": [size(neck={"back": 6, "front": 5, "sleeve": 5})]}, "/sizes/0/neck/back"),
        ({"anchor": {**MIDDLE, "front": 2.25}}, "/anchor/front"),
        ({"anchor": {**MIDDLE, "front": 7}}, "/anchor/front"),
        ({"chart": {**ARROW, "rows": ["..#..", ".###"]}}, "/chart/rows/1"),
        ({"chart": {**ARROW, "rows": ["..o.."]}}, "/chart/rows/0"),
        ({"chart": {**ARROW, "rows": ["." * 801]}}, "/chart/rows/0"),
        ({"chart": {**ARROW, "rows": ["."] * 401}}, "/chart/rows"),
        ({"chart": {"colours": ARROW["colours"]}}, "/chart"),
        ({"chart": {**ARROW, "colours": {".": {"name": "a", "hex": "red"}}}}, "/chart/colours/./hex"),
        ({"plain_colour": "o"}, "/plain_colour"),
        ({"line_stitches": 1, "line_to_body": 2}, "/line_to_body"),
        ({"sizes": [size(increase_rounds=[{"round": 3, "body": 1}])]}, "/sizes/0/increase_rounds/0/round"),
        (
            {"sizes": [size(body_rounds=4, body_shaping=[{"round": 1, "stitches": 2}])]},
            "/sizes/0/body_shaping/0/stitches",
        ),
        ({"sizes": [size(sleeve_rounds=4, sleeve_decrease_rounds=[2, 2])]}, "/sizes/0/sleeve_decrease_rounds/1"),
        ({"sizes": [size(underarm=4, body_rounds=1)], "seam_stitches": {"body": 1}}, "/sizes/0/underarm"),
        ({"float_limit": True}, "/float_limit"),
        ({"half_stitch": "ignore"}, "/half_stitch"),
        ({"colour": "."}, "/colour"),
    ],
)
def test_a_wrong_place_is_named(client, change, pointer):
    assert pointer in errors(client, request() | change)


def test_a_half_stitch_is_shifted_on_request_and_said(client):
    odd_one_out = [size(neck={"back": 6, "front": 5, "sleeve": 5})]
    seen = answer(client, sizes=odd_one_out, half_stitch="shift")
    # Six stitches about the middle of columns 2 and 3, read from the right: 5 1 | 2 3 | 4 5.
    assert seen["sizes"][0]["rounds"][0]["back"] == {"stitches": 6, "first_column": 5, "last_column": 5}
    assert "half_stitch_off_centre" in [warning["code"] for warning in seen["warnings"]]


def test_rounds_of_all_parts_and_sizes_have_a_limit(client):
    many = [size(str(n), rounds=200, body_rounds=200, sleeve_rounds=100 + n // 39) for n in range(40)]
    assert errors(client, request(SEED, many)) == {
        "/sizes": "have 20001 rounds in all, and one answer holds at most 20000."
    }
    many[39]["sleeve_rounds"] -= 1
    assert client.post(PATH, json=request(SEED, many)).status_code == 200


def test_many_colours_in_a_row_lower_that_limit(client):
    colourful = {"rows": ["ABCDEFGHIJKLMNOPQRST"]}
    anchor = dict.fromkeys(MIDDLE, 10)
    many = [size(str(n), rounds=51) for n in range(40)]
    assert (
        "with 20 colours in one chart row an answer holds at most 2000"
        in (errors(client, request(colourful, many, anchor=anchor))["/sizes"])
    )
    fewer = [size(str(n), rounds=50) for n in range(40)]
    assert client.post(PATH, json=request(colourful, fewer, anchor=anchor)).status_code == 200
