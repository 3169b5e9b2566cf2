"""Published numbers proofread: what closes gives no finding, and what is known to be a slip is found.

What is called derived is not printed, but follows from what is, so that it stands in a row of the table.
"""

import csv
from collections.abc import Mapping
from fractions import Fraction
from pathlib import Path

import pytest

from grading_core.gauge import Gauge
from grading_core.proof.proof import proofread
from grading_core.proof.request import PrintedRow, ProofRequest
from grading_core.pullover.request import Gauges
from grading_core.units import Number, exact, to_cm
from tests.grading_core.proof.hand_garment import corrected, found, proof_of

Rows = Mapping[str, str]


def per_inch(stitches: Number, rows: Number = 1) -> Gauges:
    return Gauges(Gauge.over(exact(stitches), exact(rows), to_cm(1, "in")))


def one_size(printed: Rows, **fields: object) -> list[str]:
    return [each.code for each in found(proof_of(("one",), printed, **fields))]


def codes(labels: str, printed: Rows, **fields: object) -> set[tuple[str, str | None]]:
    return {(each.code, each.size) for each in found(proof_of(tuple(labels.split()), printed, **fields))}


# The percentage system after Elizabeth Zimmermann, as reported by Claudia Krisniski, 1999, and in its raglan form: K =
# 200 of 40 in at 5 to the inch; sleeve 66, underarm 16, yoke 268, neck 80 (16 in), yoke depth 10 in; in the yoke the
# sleeve 66 - 16 = 50, back and front 100 - 16 = 84. No stitch of a line is told apart.
PERCENTAGES = {
    "body.stitches": "200",
    "sleeve.stitches": "66",
    "split.underarm": "16",
    "split.yoke_total": "268",
    "split.back": "84",
    "split.front": "84",
    "split.sleeve": "50",
    "split.line_to_body": "0",
    "neck.stitches": "80",
    "finished.bust": "40 in",
    "finished.neck": "16 in",
    "finished.underarm": "3.2 in",
    "finished.depth": "10 in",
}


@pytest.mark.parametrize(("rounds", "in_an_inch"), [("66", Fraction(66, 10)), ("75", Fraction(75, 10))])
def test_nothing_is_found_in_the_percentage_systems_raglan(rounds: str, in_an_inch: Fraction) -> None:
    rows = PERCENTAGES | {"yoke.rounds": rounds}
    assert one_size(rows, gauges=per_inch(5, in_an_inch), line_stitches=0) == []


def test_the_133_per_cent_that_are_printed_for_the_yoke_are_two_stitches_of_268_too_few() -> None:
    proof = proof_of(("one",), PERCENTAGES | {"split.yoke_total": "266"}, gauges=per_inch(5), line_stitches=0)
    assert {each.code for each in found(proof)} == {"section_sum", "split_closes"}
    assert corrected(proof) == [("one", "split.yoke_total", 266, 268)]
    assert proof.corrections[0].others == 0


# K = 276: yoke 356, neck 96; teaching article, 1997. That 260 are 32.5 rounds of 8 is derived.
def losing(back: str, front: str, sleeve: str) -> Rows:
    increases = {"yoke.back_increases": back, "yoke.front_increases": front, "yoke.sleeve_increases": sleeve}
    return {"neck.stitches": "96", "split.yoke_total": "356"} | increases


def test_a_neck_of_96_and_a_yoke_of_356_are_no_whole_number_of_full_rounds_apart() -> None:
    assert set(one_size(losing("32.5", "32.5", "32.5"))) == {"not_whole"}
    assert one_size(losing("32", "32", "32")) == ["yoke_from_neck"]
    assert one_size(losing("33", "33", "32")) == []


# Jerusha Robinson, 2015: 36 in at 6.375 are 229.5, taken as 230; yoke 7.25 in at 8 rounds, 58 rounds; underarm 12 of
# 230, 1.9 in or 4.8 cm. The last is rounded to tenths and the others to quarters, so they are two proofs.
def test_nothing_is_found_in_an_essays_body_yoke_and_underarm() -> None:
    gauges = per_inch(exact(6.375), 8)
    body = {"body.stitches": "230", "finished.bust": "36 in", "yoke.rounds": "58", "finished.depth": "7 1/4 in"}
    assert one_size(body, gauges=gauges) == []
    underarm = PrintedRow("finished", "underarm", run="4.8", run_inch="1.9")
    rows = (underarm, PrintedRow("split", "underarm", run="12"))
    assert found(proofread(ProofRequest(labels=("one",), rows=rows, gauges=gauges))) == []


# Raglan how-to (title not in the text seen): 16 cm at 2.5 to the cm are 40; back 13, front 14, sleeves 13, of which the
# 4 line stitches are taken: 9, that is 4 and 4, and the odd one to the front.
SPLIT_NECK = {
    "neck.stitches": "40",
    "neck.back": "13",
    "neck.front": "15",
    "neck.sleeve": "4",
    "finished.neck": "16 cm",
}


def test_nothing_is_found_in_a_neck_of_forty_split_with_a_stitch_at_each_line() -> None:
    gauges = Gauges(Gauge(Fraction(5, 2), Fraction(3)))
    assert one_size(SPLIT_NECK, gauges=gauges, line_stitches=1) == []


def test_the_odd_stitch_of_the_how_to_is_missed_where_it_goes_nowhere() -> None:
    assert one_size(SPLIT_NECK | {"neck.front": "14"}, line_stitches=1) == ["section_sum"]


# Vanille, a free worsted raglan, nine sizes, 14 sts to 4 in: cast on, front and back alike, each sleeve; girth and
# depth at the centre back in inches.
VANILLE = {
    "neck.stitches": "58 (60, 62, 62, 64, 64, 64, 66, 68)",
    "neck.back": "23 (23, 24, 24, 22, 22, 20, 20, 20)",
    "neck.front": "23 (23, 24, 24, 22, 22, 20, 20, 20)",
    "neck.sleeve": "6 (7, 7, 7, 10, 10, 12, 13, 14)",
    "finished.bust": "34 (36, 38, 40, 42, 44, 46, 48, 50) in",
    "finished.depth": "9 (10, 10, 10, 11, 11, 12, 12, 13) in",
}
NINE = "1 2 3 4 5 6 7 8 9"


def test_nothing_is_found_in_a_raglans_neck_in_nine_sizes() -> None:
    assert codes(NINE, VANILLE) == set()


def test_a_sleeve_of_the_neck_in_nine_sizes_that_is_printed_wrong_is_found() -> None:
    wrong = VANILLE | {"neck.sleeve": "6 (7, 7, 7, 10, 11, 12, 13, 14)"}
    assert codes(NINE, wrong) == {("section_sum", "6")}


# Knitty, Spring 2007, page PATTleaf: a top-down cardigan in six sizes. Cast on 64 as 1/14/34/14/1, so the front has 2;
# a first increase row to 72, then 18 (21, 24, 27, 30, 33) more: derived, 19 (22, ...) in all, and from them back and
# front. Sleeves and body are printed before any underarm is cast on.
LEAF = {
    "neck.stitches": "64",
    "neck.back": "34",
    "neck.front": "2",
    "neck.sleeve": "14",
    "yoke.back_increases": "19 (22, 25, 28, 31, 34)",
    "yoke.front_increases": "19 (22, 25, 28, 31, 34)",
    "yoke.sleeve_increases": "19 (22, 25, 28, 31, 34)",
    "yoke.increase_rounds": "19 (22, 25, 28, 31, 34)",
    "split.back": "72 (78, 84, 90, 96, 102)",
    "split.front": "40 (46, 52, 58, 64, 70)",
    "split.sleeve": "52 (58, 64, 70, 76, 82)",
    "split.yoke_total": "216 (240, 264, 288, 312, 336)",
    "split.underarm": "0",
    "split.line_to_body": "0",
    "body.stitches": "112 (124, 136, 148, 160, 172)",
    "sleeve.stitches": "52 (58, 64, 70, 76, 82)",
}
SIX = "1 2 3 4 5 6"


def test_nothing_is_found_in_a_cardigan_in_six_sizes() -> None:
    assert codes(SIX, LEAF) == set()


def test_a_first_increase_row_from_64_makes_72() -> None:
    row = {"neck.stitches": "64", "split.yoke_total": "72"} | dict.fromkeys(list(LEAF)[4:7], "1")
    assert one_size(row) == []
    assert one_size(row | {"split.yoke_total": "74"}) == ["yoke_from_neck"]


def test_two_digits_that_change_places_in_the_cardigan_are_found_with_what_was_printed() -> None:
    proof = proof_of(tuple(SIX.split()), LEAF | {"split.yoke_total": "216 (240, 246, 288, 312, 336)"})
    assert corrected(proof) == [("3", "split.yoke_total", 246, 264)]
    assert [each.cause for each in proof.corrections] == ["digits_swapped"]


# Lion Brand, "Family of Sweaters", nine sizes, worked from the hem up: of 25 (31, ...) stitches 2 are decreased every
# 2nd row 6 (9, ...) times, then every 4th row 1 (0, ...) times; 11 (13, ...) are left. Read from the neck down the
# decreases are increases, and the rows, twice the first and four times the second, those of the yoke (both derived).
TWO_RATES = {
    "neck.back": "11 (13, 15, 15, 19, 19, 21, 23, 23)",
    "yoke.back_increases": "7 (9, 11, 13, 14, 16, 16, 17, 18)",
    "yoke.increase_rounds": "7 (9, 11, 13, 14, 16, 16, 17, 18)",
    "yoke.rounds": "16 (18, 26, 30, 30, 34, 34, 36, 36)",
    "split.back": "25 (31, 37, 41, 47, 51, 53, 57, 59)",
}


def test_nothing_is_found_in_a_raglan_of_two_rates_in_nine_sizes() -> None:
    assert codes(NINE, TWO_RATES, step=2) == set()


# A leaflet of the 1950s or 1960s (title not in the text seen), a seamed raglan in five sizes and five more, each a run
# of its own: back cast on; bound off at each side; decreased every 2nd row; left. Sleeve cast on; increases; stitches;
# the same bound off and decreased, 4 left. Read from the neck down what is bound off at both sides is the underarm, and
# (derived) what is between the two the split.
LEAFLET = {
    "102 to 126": {
        "neck.back": "28 (30, 32, 34, 36)",
        "neck.sleeve": "4",
        "yoke.back_increases": "30 (31, 32, 33, 34)",
        "yoke.sleeve_increases": "30 (31, 32, 33, 34)",
        "split.back": "88 (92, 96, 100, 104)",
        "split.sleeve": "64 (66, 68, 70, 72)",
        "split.underarm": "14 (16, 18, 20, 22)",
        "split.line_to_body": "0",
        "sleeve.stitches": "78 (82, 86, 90, 94)",
        "sleeve.decrease_rounds": "18 (19, 20, 21, 22)",
        "cuff.stitches": "42 (44, 46, 48, 50)",
    },
    "86 to 106": {
        "neck.back": "26 (28, 30, 32, 34)",
        "neck.sleeve": "4",
        "yoke.back_increases": "26 (27, 28, 29, 30)",
        "yoke.sleeve_increases": "26 (27, 28, 29, 30)",
        "split.back": "78 (82, 86, 90, 94)",
        "split.sleeve": "56 (58, 60, 62, 64)",
        "split.underarm": "8 (8, 10, 10, 12)",
        "split.line_to_body": "0",
        "sleeve.stitches": "64 (66, 70, 72, 76)",
        "sleeve.decrease_rounds": "12 (12, 13, 14, 15)",
        "cuff.stitches": "40 (42, 44, 44, 46)",
    },
}
BACKS_CAST_ON = {"102 to 126": (102, 108, 114, 120, 126), "86 to 106": (86, 90, 96, 100, 106)}


@pytest.mark.parametrize("backs", LEAFLET)
def test_nothing_is_found_in_a_seamed_raglan(backs: str) -> None:
    # front and back alike (derived), so that the body is twice the back that is cast on
    first, *others = (2 * back for back in BACKS_CAST_ON[backs])
    body = {"body.stitches": f"{first} ({', '.join(map(str, others))})", "split.front": LEAFLET[backs]["split.back"]}
    assert codes("1 2 3 4 5", LEAFLET[backs] | body, line_stitches=0, step=2) == set()


# Yarn Forward no. 7, magazine errata, a raglan in twelve sizes: stitches, times decreased and stitches left as printed;
# the rounds are derived from the plain ones and the interval.
ERRATA = {
    "sleeve.stitches": "48 (52, 56, 60, 66, 70, 74, 80, 84, 88, 92, 98)",
    "sleeve.decrease_rounds": "7 (7, 9, 9, 12, 12, 14, 15, 17, 17, 19, 20)",
    "sleeve.rounds": "91 (91, 90, 90, 91, 91, 91, 90, 93, 93, 95, 91)",
    "cuff.stitches": "34 (38, 38, 42, 42, 46, 46, 50, 50, 54, 54, 58)",
}
TWELVE = "1 2 3 4 5 6 7 8 9 10 11 12"


def test_nothing_is_found_in_a_magazines_sleeves_in_twelve_sizes() -> None:
    assert codes(TWELVE, ERRATA) == set()


def test_one_decrease_more_in_the_magazines_sleeves_is_found() -> None:
    wrong = ERRATA | {"sleeve.decrease_rounds": "7 (7, 9, 9, 12, 12, 14, 15, 17, 18, 19, 20)"}
    assert codes(TWELVE, wrong) == {("decreases_to_cuff", "10")}


@pytest.mark.parametrize(
    ("stitches", "times", "rounds", "left"),
    [
        pytest.param("60", "11", "108", "38", id="K. TenDyke, 2014; the rows derived of 15.5 in at 7"),
        pytest.param("62", "8", "78", "46", id="Paper Moon Knits, part I; the rows derived of 9.5 in at 8.25"),
        pytest.param("156", "42", "176", "72", id="The sleeve, a blog of 2007: half-widths of 78 and 36"),
    ],
)
def test_nothing_is_found_in_a_published_sleeve(stitches: str, times: str, rounds: str, left: str) -> None:
    sleeve = {"sleeve.stitches": stitches, "sleeve.decrease_rounds": times, "sleeve.rounds": rounds}
    assert one_size(sleeve | {"cuff.stitches": left}) == []


def test_78_less_32_is_not_42() -> None:
    # The sleeve, a blog of 2007, writes 78 - 32 = 42 where it is 78 - 36, all of half a sleeve
    sleeve = {"sleeve.stitches": "156", "sleeve.decrease_rounds": "42", "cuff.stitches": "64"}
    assert one_size(sleeve) == ["decreases_to_cuff"]


@pytest.mark.parametrize(
    ("times", "rounds"),
    [
        pytest.param("36", "140", id="Knitting and the Magic Formula, about 2006"),
        pytest.param("26", "130", id="drop-shoulder chapter of a handbook (title not in the text seen)"),
    ],
)
def test_nothing_is_found_in_published_shapings_that_fit_their_rows(times: str, rounds: str) -> None:
    assert one_size({"sleeve.decrease_rounds": times, "sleeve.rounds": rounds}) == []


@pytest.mark.parametrize(
    ("girths", "depths"),
    [
        pytest.param(
            "34 1/4 (37 3/4, 41 1/4, 45 3/4, 49 1/4, 53 3/4, 57 1/4, 61 3/4, 66 1/4, 70 3/4, 74 1/4) in",
            "8 3/4 (9, 9 1/4, 9 1/2, 10, 10, 10 1/2, 10 3/4, 11, 11 1/4, 11 3/4) in",
            id="Alary pullover, P. Pereira",
        ),
        pytest.param(
            "36 (40, 44, 48, 52, 56, 60, 64, 68, 72, 76) in",
            "10.5 (10.5, 10.5, 11.25, 11.25, 11.25, 12, 12, 12, 13, 13) in",
            id="Mesic tee, S. Lotven",
        ),
        pytest.param(
            "83 (94, 99, 110, 115, 125, 136, 146, 151) cm",
            "19 (19, 21, 22, 23, 23, 23, 25, 25) cm",
            id="a pullover of bust 83 to 151 cm",
        ),
        pytest.param(
            "86 (94, 102, 110, 118, 124, 134, 142, 150) cm",
            "19 (20, 22, 23, 24, 25, 26, 28, 30) cm",
            id="a pullover of bust 86 to 150 cm",
        ),
    ],
)
def test_nothing_is_found_in_published_depths(girths: str, depths: str) -> None:
    labels = " ".join(str(place) for place in range(girths.count(",") + 2))
    assert codes(labels, {"finished.bust": girths, "finished.depth": depths}) == set()


# Lily Chin, magazine series, 2017: 22 in round the neck, 102 sts; 184 at a 40 in bust; sleeves 60 sts, 13 in. Her gauge
# is derived of the body.
def test_nothing_is_found_in_a_magazines_neck_body_and_sleeve() -> None:
    rows = {
        "neck.stitches": "102",
        "finished.neck": "22 in",
        "body.stitches": "184",
        "finished.bust": "40 in",
        "sleeve.stitches": "60",
        "finished.upper_arm": "13 in",
    }
    assert one_size(rows, gauges=per_inch(Fraction(184, 40))) == []


# A drop-shoulder crew in worsted (title not in the text seen): 1180 yd = 1079 m.
def test_nothing_is_found_in_published_yards_and_metres() -> None:
    assert one_size({"yarn.yards_1": "1180", "yarn.metres_1": "1079"}) == []
    assert one_size({"yarn.yards_1": "1180", "yarn.metres_1": "1097"}) == ["yards"]


@pytest.mark.parametrize(
    ("busts", "metres"),
    [
        pytest.param("37 (42.5, 44, 50, 57.5, 67) in", "1070 (1130, 1225, 1310, 1320, 1410)", id="Bernat leaflet"),
        pytest.param(
            "84 (89.5, 95, 99.5, 105.5, 110, 115.5, 120, 126, 130, 135, 140) cm",
            "1325 (1417, 1508, 1600, 1691, 1791, 1874, 1965, 2011, 2057, 2103, 2276)",
            id="a long pullover of 20 x 28",
        ),
    ],
)
def test_nothing_is_found_in_published_metres_of_all_sizes(busts: str, metres: str) -> None:
    labels = " ".join(str(place) for place in range(busts.count(",") + 2))
    assert codes(labels, {"finished.bust": busts, "yarn.metres_1": metres}) == set()


# Craft Yarn Council, Standards & Guidelines, as `test_body_tables` has it. Inches are printed to quarters, most to
# halves, and centimetres to halves.
CHARTS = list(csv.DictReader((Path(__file__).parent / "data" / "size_charts.csv").read_text().splitlines()))
BY_MORE_THAN_PRINT_ALLOWS = Fraction(1, 4) + Fraction(1, 4) * Fraction("2.54")
"""Half a centimetre's half and half an inch's half: less may be rounded twice."""

Place = tuple[str, str, str]


def contradictions(table: str) -> set[Place]:
    """Size, measurement and end of each figure whose two columns differ by more than that."""
    return {
        (line["size"], line["measurement"], end)
        for line in CHARTS
        for end in ("low", "high")
        if line["table"] == table
        and abs(Fraction(line[f"inch_{end}"]) * Fraction("2.54") - Fraction(line[f"cm_{end}"]))
        > BY_MORE_THAN_PRINT_ALLOWS
    }


def chart_proof(table: str, changes: Mapping[tuple[str, str, str], str] | None = None):  # type: ignore[no-untyped-def]
    """A size chart, each end of each measurement a row. changes: other figures, by size, measurement and column."""
    lines = {(line["size"], line["measurement"]): line for line in CHARTS if line["table"] == table}
    sizes, measurements = (tuple(dict.fromkeys(key[place] for key in lines)) for place in (0, 1))

    def run(measurement: str, column: str) -> str:
        told = ((size, lines.get((size, measurement), {}).get(column, "-")) for size in sizes)
        return "; ".join((changes or {}).get((size, measurement, column), figure) for size, figure in told)

    rows = tuple(
        PrintedRow("body", f"{name}/{end}", "cm", run=run(name, f"cm_{end}"), run_inch=run(name, f"inch_{end}"))
        for name in measurements
        for end in ("low", "high")
    )
    return proofread(ProofRequest(labels=sizes, rows=rows))


@pytest.mark.parametrize("table", ["women", "men", "children", "babies"])
def test_the_published_figures_whose_inches_contradict_their_centimetres_are_found(table: str) -> None:
    findings = chart_proof(table).findings
    assert {each.code.value for each in findings} <= {"inches"}
    assert {(each.size, *each.rows[0].item.split("/")) for each in findings} == contradictions(table)


def test_nine_published_figures_contradict_themselves() -> None:
    assert sum(len(contradictions(table)) for table in ("women", "men", "children", "babies")) == 9


def test_the_centimetres_of_men_that_repeat_the_size_before_are_corrected_to_their_inches() -> None:
    # cross back of 3X: 20-21 in are 51-53.5 cm, and the 48-51 of 2X are printed; of 4X: 21 in are 53.5 cm, printed 51
    told = {(size, row): (was, right) for size, row, was, right in corrected(chart_proof("men"))}
    assert told["3X", "body.cross_back/low"] == (48, 51)
    assert told["3X", "body.cross_back/high"] == (51, 53.5)
    assert told["4X", "body.cross_back/low"] == (51, 53.5)


def test_the_upper_arm_of_5x_that_the_web_edition_prints_is_the_size_before() -> None:
    # 18.5 in, as of 4X, beside 49.5 cm; the booklet of 2018 prints 19.5 in
    proof = chart_proof("women", {("5X", "upper_arm", f"inch_{end}"): "18.5" for end in ("low", "high")})
    wrong = [each for each in proof.corrections if each.row.item.startswith("upper_arm")]
    assert [(each.size, each.unit, each.printed, each.expected, each.cause) for each in wrong] == [
        ("5X", "inch", 18.5, 19.5, "neighbouring_size")
    ] * 2
