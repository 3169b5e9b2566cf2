"""What stands before the knitting, titles, chart and own gauge in the words of each language."""

from fractions import Fraction

import pytest

from grading_core.chart import words as chart
from grading_core.gauge import Gauge
from grading_core.parts.ribbing import KNIT_PURL
from grading_core.printing import DASH
from grading_core.pullover import front_matter, own_gauge, terms
from grading_core.pullover.request import Gauges
from grading_core.pullover.result import PART_TITLES
from grading_core.pullover.table import LINES
from grading_core.sentences import SAYINGS
from service.language import LANGUAGES

US, GB, DE = (LANGUAGES[tag] for tag in ("en-US", "en-GB", "de"))
IN_CM = (Fraction(92), Fraction(102))
"""36 1/4 and 40 1/4 in, to the nearest quarter."""

OURS = ("sizes", "finished_measurements", "gauge", "needles", "yarn", "notions", "terms", "title", "chart", "own_gauge")


@pytest.mark.parametrize("language", LANGUAGES.values(), ids=lambda language: language.tag)
@pytest.mark.parametrize("id", sorted(id for id in SAYINGS if id.partition(".")[0] in OURS))
def test_every_sentence_has_words_in_every_language(language, id):
    examples = {
        "count": (1, None),
        "counts": (2, 4),
        "number": (Fraction(9, 2), None),
        "length": (*IN_CM, None),
        "text": ("S", None),
        "names": ("S", "M"),
        "words": ("back", "sleeve"),
        "token": "some",
    }
    saying = SAYINGS[id]
    values = {name: examples[kind.name] for name, kind in saying.values.items()}
    if "places" in values:
        values["places"] = ("before", "after")
    assert language.text(saying(**values))


def test_terms_are_of_sentences_that_there_are():
    assert all(id in SAYINGS for used in terms._TERMS.values() for id in used)


def test_sizes_are_one_or_several():
    assert US.text(front_matter.LABELS(sizes=("S", "M"), many=2)) == "Sizes: S (M)."
    assert US.text(front_matter.LABELS(sizes=("S",), many=1)) == "Size: S."
    assert DE.text(front_matter.LABELS(sizes=("S", "M"), many=2)) == "Größen: S (M)."


def test_how_a_run_is_read_in_each_language():
    reading = front_matter.RUN(first="S", others=("M", "L"))
    assert "those in parentheses for M and L" in US.text(reading)
    assert "those in round brackets for M and L" in GB.text(reading)
    assert "die Zahlen in Klammern gelten der Reihe nach für M und L" in DE.text(reading)


def test_the_dash_that_is_explained_is_the_one_that_is_printed():
    assert f"“{DASH}” in place of a number" in US.text(front_matter.DASH(dash=None))


@pytest.mark.parametrize("item", front_matter.FINISHED)
@pytest.mark.parametrize("language", LANGUAGES.values(), ids=lambda language: language.tag)
def test_a_finished_measurement_has_the_name_that_its_row_has(language, item):
    saying, _ = front_matter.FINISHED[item]
    (line,) = [line for line in LINES if line.part == "finished" and line.item == item]
    assert language.text(saying(length=IN_CM)).startswith(f"{language.text(line.title)}: ")


def test_a_length_is_told_in_both_units():
    saying, _ = front_matter.FINISHED["body_length"]
    assert US.text(saying(length=IN_CM)) == "Finished body length: 36 1/4 (40 1/4) in / 92 (102) cm."


def test_a_gauge_is_printed_as_the_trade_of_each_country_does():
    (plain,) = front_matter.gauge_words(Gauges(Gauge(Fraction(11, 5), Fraction(31, 10))))
    assert US.text(plain) == (
        "In stockinette stitch, worked in the round and blocked: 22 stitches and 31 rounds to 10 cm = 4 in."
    )
    assert GB.text(plain) == (
        "In stocking stitch, worked in the round and blocked: 22 stitches and 31 rounds to 10 cm = 4 in."
    )
    assert DE.text(plain) == (
        "Glatt rechts, in Runden gestrickt und gespannt: "
        "22 Maschen und 31 Runden auf 10 \N{MULTIPLICATION SIGN} 10 cm (10 cm = 4 Zoll)."
    )


def test_needles_are_a_start():
    needles, *_ = front_matter.needle_words(Gauges(Gauge(Fraction(11, 5), Fraction(31, 10))))
    start = "Start with needles of 3.75 to 4.5 mm (US 5 to 7), and use whatever size gives you the "
    assert US.text(needles) == f"{start}gauge."
    assert GB.text(needles) == f"{start}tension."
    assert "(US 5 bis 7)" in DE.text(needles)


@pytest.mark.parametrize(("balls", "words"), [((1,), "1 ball of 50 g."), ((4, 5), "4 (5) balls of 50 g.")])
def test_balls_are_counted(balls, words):
    whose = {"colours": "several", "colour": "sand", "strands": "one", "strand": 1, "name": ""}
    told = front_matter.BALLS(**whose, balls=balls, ball_grams=Fraction(50), margin=10)
    assert US.text(told) == f"Yarn in sand, to buy with 10% to spare: {words}"


@pytest.mark.parametrize(("strands", "words"), [("named", "mohair"), ("numbered", "strand 2")])
def test_a_strand_is_told_by_its_name_or_its_number(strands, words):
    whose = {"colours": "several", "colour": "sand", "strands": strands, "strand": 2, "name": "mohair"}
    told = front_matter.BALLS(**whose, balls=(4,), ball_grams=Fraction(25), margin=10)
    assert US.text(told) == f"Yarn in sand, {words}, to buy with 10% to spare: 4 balls of 25 g."


def test_a_rib_is_named_as_where_it_is_worked():
    for language in LANGUAGES.values():
        named = language.text(KNIT_PURL(knit=2, purl=2))
        assert language.text(terms.RIB(knit=2, purl=2)).startswith(f"{named}: ")


def test_how_every_so_many_rounds_is_counted():
    every = terms.EVERY(every=4, plain=3)
    assert US.text(every).startswith("“The last of every 4 rounds”: work 3 rounds without shaping, then ")
    assert DE.text(every).startswith(
        "„Jeweils die letzte von 4 Runden“: 3 Runden ohne Zu- und Abnahmen stricken, dann "
    )


@pytest.mark.parametrize(
    ("language", "title"),
    [(US, "Gauge"), (GB, "Tension"), (DE, "Maschenprobe")],
    ids=lambda value: getattr(value, "tag", ""),
)
def test_a_part_has_a_title(language, title):
    assert language.text(PART_TITLES["gauge"]()) == title


def test_no_two_rows_have_the_same_title():
    for language in LANGUAGES.values():
        titles = [language.text(line.title) for line in LINES]
        assert len({*titles}) == len(titles)


def test_which_column_is_at_the_center_of_which_section():
    sections = ("back", "front")
    assert US.text(chart.CENTER(column=3, sections=sections)) == "Column 3 is at the center of the back and the front."
    between = chart.CENTER_BETWEEN(column=8, next=9, sections=("sleeve",))
    assert US.text(between) == "The center of each sleeve lies between column 8 and column 9."
    assert GB.text(between) == "The centre of each sleeve lies between column 8 and column 9."
    assert DE.text(between) == "Zwischen Spalte 8 und Spalte 9 hat jeder Ärmel seine Mitte."


def test_with_which_column_a_section_starts():
    start = chart.START(round=(3, 3), column=(1, 5), sections=("back", "front"))
    assert US.text(start) == "In round 3 the back and the front begin with column 1 (5)."
    assert DE.text(start) == "In Runde 3 beginnen das Rückenteil und das Vorderteil mit Spalte 1 (5)."


def test_where_the_chart_stands_below_the_split():
    back = chart.BODY_BACK(before=(7, 8), column=(3, 2))
    assert US.text(back) == (
        "From round 1 on the back begins after the first 7 (8) stitches of the second underarm, with column 3 (2)."
    )


def test_the_caution_about_floats_has_both_limits():
    caution = chart.FLOATS_YOUNG(stitches=5, length=Fraction(5, 2))
    assert "more than 5 stitches or 1 in / 2.5 cm" in US.text(caution)
    assert "fingers and toes" in US.text(caution)
    assert "Finger und Zehen" in DE.text(caution)


def test_corrections_are_told_by_part():
    add = own_gauge.ADD(part="body", rounds=(3, None))
    assert US.text(add) == (
        f"For the body length of the design add 3 ({DASH}) rounds without shaping to the body, above the hem."
    )
    assert DE.text(add) == (
        f"Für die Rumpflänge des Entwurfs vor dem Bund 3 ({DASH}) Runden ohne Zu- und Abnahmen mehr stricken."
    )
