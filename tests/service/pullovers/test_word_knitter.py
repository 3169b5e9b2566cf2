"""The knitter who knows only sentences, on a small garment that is reckoned by hand."""

import re

import pytest

from service.language import LANGUAGES
from tests.oracles.sentence_kinds import COUNT, GROUPED, KNITTED, NESTED
from tests.oracles.sentence_reader import reader
from tests.oracles.word_knitter import EXPLAIN, counts, knit, understood
from tests.oracles.word_needle import STEPS, WordsError

DASH = "\u2013"


def say(tag, id, **values):
    """A sentence of a language: numbers as printed, several as one run, words of a group as a list."""
    language, arguments = LANGUAGES[tag], {}
    for name, value in values.items():
        if name in NESTED:
            arguments[name] = value
        elif name in GROUPED:
            arguments[name] = language.listed(tuple(language.message(f"{GROUPED[name]}.{word}") for word in value))
        elif isinstance(value, str):
            arguments[name] = value
        else:
            run = value if isinstance(value, tuple) else (value,)
            printed = [DASH if each is None else str(each) for each in run]
            arguments[name] = printed[0] if len(set(run)) == 1 else f"{printed[0]} ({', '.join(printed[1:])})"
            arguments[f"{name}_number"] = run[0] if len(set(run)) == 1 else 2
    return language.message(id, arguments)


def small(tag, a=lambda first, second=None: first):
    """A garment: 36 stitches cast on, 7 rounds of yoke, 44 stitches of body.

    a: what is printed of both sizes' numbers.
    """

    def s(id, **values):
        return say(tag, id, **values)

    rib = s("ribbing.knit_purl", knit=2, purl=2)
    everywhere = {"kind": "once", "once": ("back", "front", "sleeve"), "twice": (), "more": 8}
    length = {"length_cm": "9", "length_inch": "3 1/2"}
    return [
        (
            "neck",
            [
                s("neck.cast_on_joined", stitches=a(36, 40)),
                s("neck.place_markers", way="joined"),
                s("neck.marker", stitches=a(10, 12), parts=("back",), marker=1),
                s("neck.marker", stitches=6, parts=("line", "first_sleeve"), marker=2),
                s("neck.marker", stitches=a(12, 14), parts=("line", "front"), marker=3),
                s("neck.marker", stitches=6, parts=("line", "second_sleeve"), marker=4),
                s("neck.rest", stitches=2, parts=("line",), way="joined"),
                s("neck.short_rows", rows=a(2), begin="start"),
                s("neck.short_row_method"),
                s("neck.turn", row=1, side="right", stitches=a(4), marker=1),
                s("neck.turn", row=2, side="wrong", stitches=a(2), marker=4),
                s("neck.last_row", kind="joined"),
                s("neck.raised", length_cm=a("0.5"), length_inch=a("1/4")),
                s("neck.sections", stitches=a(36, 40), back=a(10, 12), front=a(10, 12), sleeve=4, line=2),
            ],
        ),
        (
            "yoke",
            [
                s("yoke.lines", line=2),
                s("yoke.leaning"),
                s("yoke.increase", every=2, times=a(3, 4), stitches=a(60, 72), **everywhere),
                s("yoke.plain", rounds=a(1)),
                s("yoke.depth", rounds=a(7, 8), length_cm="7", length_inch="2 3/4"),
            ],
        ),
        (
            "split",
            [
                # 16 of the back, 4 x 2 of the lines, 2 x 10 of the sleeves, 16 of the front
                s("split.begin", stitches=a(60, 72)),
                s("split.first_sleeve", past=1, held=a(12, 14), underarm=4),
                s("split.front", stitches=a(18, 22)),
                s("split.second_sleeve", held=a(12, 14), underarm=4),
                s("split.start_underarm", before=2, seams="none", seam=0),
                s("split.body", stitches=a(44, 52)),
            ],
        ),
        (
            "body",
            [
                s("body.side_markers", before=2, seams="none", seam=0),
                s("body.darts", round=a(5), rows=a(2)),
                s("body.dart_turns", row=1, next=2, stitches=a(6)),
                s("body.darts_end"),
                s("body.decreases", at="marker"),
                s("body.decrease", every=a(3, 2), times=a(2, 3), change=4, stitches=a(36, 40)),
                s("body.plain", rounds=2),
                s("body.rounds", rounds=8, **length),
                s("rib.increase", many=a(4), stitches=a(40)),
                s("rib.work", rounds=5, rib=rib),
                s("rib.bind_off"),
                s("body.length", **length),
            ],
        ),
        (
            "sleeve",
            [
                s("sleeve.return", held=a(12, 14), underarm=4, stitches=a(16, 18)),
                s("sleeve.start", before=2, seams="none", seam=0),
                s("sleeve.decreases", at="marker"),
                s("sleeve.decrease", every=4, times=3, change=2, stitches=a(10, 12)),
                s("sleeve.rounds", rounds=12, **length),
                s("rib.decrease", many=a(2), stitches=a(8)),
                s("rib.work", rounds=4, rib=rib),
                s("rib.bind_off"),
                s("sleeve.length", **length),
                s("sleeve.second"),
            ],
        ),
        (
            "band",
            [
                s("band.pick_up", stitches=a(36, 40)),
                s("rib.work", rounds=4, rib=rib),
                s("band.fold"),
                s("band.inner", rounds=4),
                s("band.join"),
                s("band.height", length_cm="1.5", length_inch="1/2"),
            ],
        ),
    ]


REACHED = {
    ("neck", "cast_on"): 36, ("neck", "stitches"): 36, ("neck", "back"): 10, ("neck", "front"): 10,
    ("neck", "sleeve"): 4, ("neck", "short_rows"): 2, ("neck", "front_drop"): 0,
    ("yoke", "rounds"): 7, ("yoke", "increase_rounds"): 3, ("yoke", "doubled_rounds"): 0,
    ("yoke", "back_increases"): 3, ("yoke", "front_increases"): 3, ("yoke", "sleeve_increases"): 3,
    ("split", "back"): 16, ("split", "front"): 16, ("split", "sleeve"): 10, ("split", "yoke_total"): 60,
    ("split", "underarm"): 4, ("split", "line_to_body"): 1,
    ("body", "stitches"): 44, ("body", "rounds"): 8, ("body", "bust_dart_rows"): 2,
    ("hem", "stitches"): 40, ("hem", "rounds"): 6,
    ("sleeve", "stitches"): 16, ("sleeve", "rounds"): 12, ("sleeve", "decrease_rounds"): 3,
    ("cuff", "stitches"): 8, ("cuff", "rounds"): 5,
    ("band", "stitches"): 36, ("band", "rounds"): 9,
}  # fmt: skip
LARGER = {
    ("neck", "cast_on"): 40, ("neck", "stitches"): 40, ("neck", "back"): 12, ("neck", "front"): 12,
    ("neck", "sleeve"): 4, ("neck", "short_rows"): 0, ("neck", "front_drop"): 0,
    ("yoke", "rounds"): 8, ("yoke", "increase_rounds"): 4, ("yoke", "doubled_rounds"): 0,
    ("yoke", "back_increases"): 4, ("yoke", "front_increases"): 4, ("yoke", "sleeve_increases"): 4,
    ("split", "back"): 20, ("split", "front"): 20, ("split", "sleeve"): 12, ("split", "yoke_total"): 72,
    ("split", "underarm"): 4, ("split", "line_to_body"): 1,
    ("body", "stitches"): 52, ("body", "rounds"): 8, ("body", "bust_dart_rows"): 0,
    ("hem", "stitches"): 40, ("hem", "rounds"): 5,
    ("sleeve", "stitches"): 18, ("sleeve", "rounds"): 12, ("sleeve", "decrease_rounds"): 3,
    ("cuff", "stitches"): 12, ("cuff", "rounds"): 4,
    ("band", "stitches"): 40, ("band", "rounds"): 9,
}  # fmt: skip


@pytest.fixture(params=[*LANGUAGES])
def tag(request):
    return request.param


def test_one_size_is_knitted_as_it_is_told(tag):
    piece, _ = knit(small(tag), ["S"], "S", reader(tag))
    assert counts(piece) == REACHED


def test_each_of_two_sizes_follows_its_own_figures(tag):
    def both(first, second=None):
        return f"{first} ({DASH})" if isinstance(first, str) else (first, second)

    parts = small(tag, both)
    # what ends the short rows has no figure by which a size without any could pass over it
    parts[0][1][11] = say(tag, "sizes.only", sizes="S", sizes_number="1", sentence=parts[0][1][11])
    made = [counts(knit(parts, ["S", "M"], label, reader(tag))[0]) for label in ("S", "M")]
    assert made == [REACHED, LARGER]


NOWHERE_ELSE = ("neck.raised", "body.dart_turns", "body.length", "sleeve.length", "band.height")
"""Sentences with figures that no other sentence and no row of the table tells in other words."""


def test_every_count_that_is_printed_wrong_is_noticed(tag):
    parts, unnoticed = small(tag), []
    for part, (name, texts) in enumerate(parts):
        for place, text in enumerate(texts):
            reading = understood(text, name, reader(tag))
            if reading.id in NOWHERE_ELSE:
                continue
            for wrong in _misprints(text, reading):
                printed = [(each, list(those)) for each, those in parts]
                printed[part][1][place] = wrong
                try:
                    same = counts(knit(printed, ["S"], "S", reader(tag))[0]) == REACHED
                except WordsError:
                    continue
                if same:
                    unnoticed.append(wrong)
    assert unnoticed == []


def _misprints(text, reading):
    """The text with one more in each of its counts, but for lengths and the repeat of a rib."""
    apart = [printed for name, printed in reading.printed.items() if name.endswith(("_cm", "_inch")) or name in NESTED]
    for found in re.finditer(COUNT, text):
        if found[0] not in re.findall(COUNT, " ".join(apart)):
            yield f"{text[: found.start()]}{int(found[0]) + 1}{text[found.end() :]}"


def test_every_sentence_of_the_parts_knitted_is_followed_or_explains():
    known = {id for id in reader("en-US").ids if id.partition(".")[0] in KNITTED}
    assert known == {*STEPS, *EXPLAIN} - {"sizes.apart"}


def test_no_text_means_two_things(tag):
    words, unclear = reader(tag), {}
    knitted = [(text, id) for text, id in words.examples() if id.partition(".")[0] in KNITTED]
    for text, id in knitted:
        for part in ("neck", "yoke", "split", "body", "sleeve", "band"):
            try:
                understood(text, part, words)
            except WordsError as error:
                unclear[id] = str(error)
    assert unclear == {}


def test_no_message_has_one_text_for_two_of_its_variants(tag):
    assert [*reader(tag).unlike()] == []


@pytest.mark.parametrize("steps", [1, 2, 3])
def test_steps_of_a_list_are_told_apart(tag, steps):
    step = say(tag, "step.increase", rounds=1, kind="both", once=("front", "sleeve"), twice=("back",), more=10)
    language = LANGUAGES[tag]
    assert len([*reader(tag).split(language.listed((step,) * steps), ("step",))]) == 1
