"""What sentences tell a knitter, read from ids and values alone, and what comes of it on the needles."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from fractions import Fraction
from typing import Any, NamedTuple

from grading_core.sections import IncreaseRound, Increases, Sections
from grading_core.sentences import Kind, Sentence

RUNS = frozenset(("count", "number", "length", "cm", "text"))
"""Kinds of which a tuple has one value per size."""


class Told(NamedTuple):
    """A sentence as one size reads it."""

    id: str
    values: Mapping[str, Any]


def told_alone(sentences: Iterable[Sentence]) -> list[Told]:
    """What one size is told where no other is: no value is a run, and none is missing."""
    return [Told(sentence.id, _values(sentence, None)) for sentence in sentences]


def told_each(sentences: Iterable[Sentence], labels: Sequence[str]) -> dict[str, list[Told]]:
    """What each size reads in the sentences of all.

    A size skips a sentence that names others only, and one with a dash in its place. A dash stands in every run of a
    sentence or in none of them, and every sentence is for somebody.
    """
    read: dict[str, list[Told]] = {label: [] for label in labels}
    for sentence in sentences:
        readers = labels if sentence.labels is None else sentence.labels
        if sentence.places is not None:
            assert [labels[place] for place in sentence.places] == [*readers], sentence
        runs = _runs(sentence)
        assert all(len(run) == len(labels) for run in runs.values()), sentence
        skipping = {
            label: {run[place] is None for run in runs.values()} or {False} for place, label in enumerate(labels)
        }
        assert all(len(missing) == 1 for missing in skipping.values()), sentence
        reading = [label for label in readers if skipping[label] == {False}]
        assert reading, sentence
        if sentence.places is not None and runs:
            assert [label for label in labels if skipping[label] == {False}] == [*readers], sentence
        for label in reading:
            read[label].append(Told(sentence.id, _values(sentence, labels.index(label))))
    return read


class DropTold(NamedTuple):
    """A front drop as it is told: its rows, the increases at each of its edges, and what is cast on after them."""

    rows: int
    edges: int
    centre: int

    @classmethod
    def of(cls, neck: Sequence[Told]) -> DropTold | None:
        """From all that is told of a neck; None where its front is not dropped."""
        if "neck.drop" not in ids(neck):
            return None
        edges = [values["times"] for id, values in neck if id == "neck.drop_edges"]
        assert only(neck, "neck.drop_join")["round"] == only(neck, "neck.drop")["rows"] + 1
        return cls(only(neck, "neck.drop")["rows"], sum(edges), only(neck, "neck.drop_join")["stitches"])

    def to_come(self, row: int) -> int:
        """Stitches of the front that are not on the needles after a row; the last row is a right-side row."""
        increased = [self.rows - 2 * back for back in range(self.edges)]
        return self.centre + 2 * sum(each > row for each in increased) if row < self.rows else 0


def work_yoke(
    sentences: Iterable[Told], neck: Sections, line_stitches: int, drop: DropTold | None = None
) -> tuple[list[IncreaseRound], int]:
    """The increase rounds that a yoke is told, and its last round; the stitches told are counted on the way.

    neck: all sections, those that a drop adds among them.
    """
    number, sections, worked, listed = 0, neck, list[IncreaseRound](), dict[int, Increases]()

    def on_needles() -> int:
        in_all = sections.back + sections.front + 2 * sections.sleeve + 4 * line_stitches
        return in_all - (drop.to_come(number) if drop else 0)

    for id, values in sentences:
        if id in ("yoke.lines", "yoke.no_lines", "yoke.leaning", "yoke.doubled", "yoke.wrong_side", "sizes.apart"):
            continue
        if id == "yoke.after_drop":
            assert drop is not None
            assert values["rows"] == drop.rows
            continue
        if id == "yoke.depth":
            assert values["rounds"] == number
            continue
        if id == "yoke.rounds_listed":
            assert not listed.keys() & {*values["rounds"]}, "one round is listed twice"
            listed |= dict.fromkeys(values["rounds"], increases_told(values))
            continue
        if id == "yoke.rounds_other":
            assert number == 0
            worked = [IncreaseRound(each, *listed[each]) for each in sorted(listed)]
            for increases in listed.values():
                sections = sections.after(increases)
            number = values["last"]
            assert values["stitches"] == on_needles(), (id, values)
            continue
        assert not listed, "how many rounds there are is not told"
        if "first" in values:
            assert values["first"] == number + 1, (id, values)
            assert values["rounds"] == values["last"] - number, (id, values)
        if id in ("yoke.plain", "yoke.rounds_plain"):
            number += values["rounds"]
            continue
        assert values["times"] >= 1, (id, values)
        for interval, increases in _increase_steps(id, values) * values["times"]:
            number += interval
            sections = sections.after(increases)
            worked.append(IncreaseRound(number, *increases))
        assert values["stitches"] == on_needles(), (id, values)
        # a sentence of increases ends with its last increase round
        assert values.get("last", number) == number, (id, values)
    return worked, number


def increases_told(values: Mapping[str, Any]) -> Increases:
    """Increases at each back, front and sleeve edge, from what is told of one increase round."""
    once, twice = values["once"], values["twice"]
    assert set(once) | set(twice) <= {"back", "front", "sleeve"}
    assert not set(once) & set(twice)
    assert values["kind"] == ("both" if once and twice else "twice" if twice else "once")
    back, front, sleeve = (once.count(edge) + 2 * twice.count(edge) for edge in ("back", "front", "sleeve"))
    # back and front have two edges, and each of two sleeves has
    assert values["more"] == 2 * back + 2 * front + 2 * 2 * sleeve > 0
    return back, front, sleeve


def work_shaping(sentences: Iterable[Told], part: str, stitches: int) -> tuple[list[tuple[int, int]], int, int]:
    """The shaping that a body or a sleeve is told: (round, stitches gained or lost), its last round and the stitches.

    What else the part is told is passed over.
    """
    number, worked = 0, list[tuple[int, int]]()
    signs = {"decrease": -1, "decrease_cycle": -1, "increase": 1, "increase_cycle": 1}
    for id, values in sentences:
        of, _, what = id.partition(".")
        if of != part or what not in (*signs, "plain"):
            continue
        if what == "plain":
            assert values["rounds"] >= 1, values
            number += values["rounds"]
            continue
        assert values["times"] >= 1, values
        for interval in _intervals(values) * values["times"]:
            number += interval
            stitches += signs[what] * values["change"]
            worked.append((number, signs[what] * values["change"]))
        assert values["stitches"] == stitches, values
    return worked, number, stitches


def work_edge(sentences: Iterable[Told], stitches: int) -> tuple[int, int, tuple[int, int] | None]:
    """A ribbed edge as told: its stitches, its rounds, and the knit and purl stitches of its rib, if told."""
    rounds, rib, before = 0, None, stitches
    for id, values in sentences:
        if id in ("rib.decrease", "rib.increase"):
            # one round, the first: two stitches become one, or one becomes more
            assert rounds == 0
            assert values["many"] >= 1, values
            assert id == "rib.increase" or 2 * values["many"] <= stitches, values
            before = stitches
            stitches += values["many"] if id == "rib.increase" else -values["many"]
            assert values["stitches"] == stitches, values
            rounds += 1
        elif id == "rib.spread":
            assert spread_told(values["steps"]) == (before, stitches), values
        elif id == "rib.work":
            assert values["rounds"] >= 1, values
            rounds += values["rounds"]
            named: Told = values["rib"]
            if named.id == "ribbing.knit_purl":
                rib = (named.values["knit"], named.values["purl"])
                assert stitches % sum(rib) == 0
    return stitches, rounds, rib


def spread_told(steps: Iterable[Told]) -> tuple[int, int]:
    """The stitches before and after a round that is worked step by step."""
    before = after = 0
    for id, values in steps:
        if id == "across.work":
            before, after = before + values["stitches"], after + values["stitches"]
            continue
        taken = 2 if id == "across.decrease" else 0
        before += values["times"] * (values["gap"] + taken)
        after += values["times"] * (values["gap"] + 1)
    return before, after


def only(sentences: Iterable[Told], id: str) -> Mapping[str, Any]:
    """The values of the one sentence with an id."""
    (values,) = [sentence.values for sentence in sentences if sentence.id == id]
    return values


def ids(sentences: Iterable[Sentence | Told]) -> list[str]:
    """The ids of sentences in order."""
    return [sentence.id for sentence in sentences]


def _increase_steps(id: str, values: Mapping[str, Any]) -> list[tuple[int, Increases]]:
    """Intervals with the increases that end them."""
    if id == "yoke.rounds_steps":
        steps: list[Told] = values["steps"]
        assert {step.id for step in steps} == {"step.increase"}
        return [(step.values["rounds"] + 1, increases_told(step.values)) for step in steps]
    assert id in ("yoke.increase", "yoke.cycle", "yoke.rounds_increase", "yoke.rounds_cycle"), id
    return [(interval, increases_told(values)) for interval in _intervals(values)]


def _intervals(values: Mapping[str, Any]) -> list[int]:
    """The one interval, or several that are worked in turn."""
    if "every" in values:
        assert values["every"] >= 1, values
        return [values["every"]]
    assert len(values["cycle"]) > 1, values
    return [*values["cycle"]]


def _runs(sentence: Sentence) -> dict[str, tuple[Any, ...]]:
    """The values of a sentence that are runs."""
    kinds, values = sentence.saying.values, sentence.values
    return {name: values[name] for name in kinds if kinds[name].name in RUNS and type(values[name]) is tuple}


def _values(sentence: Sentence, place: int | None) -> dict[str, Any]:
    """The values of a sentence for the size in a place, or for a size alone; each of its kind."""
    kinds, runs = sentence.saying.values, _runs(sentence)
    assert kinds.keys() == sentence.values.keys(), sentence
    read = {}
    for name, kind in kinds.items():
        value = sentence.values[name] if place is None or name not in runs else runs[name][place]
        assert _is_one(kind, value), (sentence.id, name, value)
        if kind.name == "sentence":
            (value,) = told_alone([value])
        elif kind.name == "sentences":
            value = told_alone(value)
        read[name] = value
    return read


def _is_one(kind: Kind, value: Any) -> bool:
    """Whether something is one value of a kind, no run and not missing."""
    match kind.name:
        case "count":
            return type(value) is int and value >= 0
        case "counts":
            return type(value) is tuple and all(type(each) is int for each in value)
        case "length" | "cm" | "number":
            return isinstance(value, Fraction | int)
        case "names" | "words":
            return type(value) is tuple and all(type(each) is str for each in value)
        case "sentence":
            return isinstance(value, Sentence)
        case "sentences":
            return type(value) is tuple and all(isinstance(each, Sentence) for each in value)
        case _:
            return type(value) is str
