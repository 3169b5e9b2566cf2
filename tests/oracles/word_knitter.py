"""One size of a pullover, knitted from the text of its pattern alone, and what comes of it beside the table.

Of every run the size takes its own figure; a dash, and a sentence that names other sizes, is passed over. What each
sentence has the knitter do stands in `word_neck`, `word_yoke` and `word_tubes`.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping, Sequence
from typing import Any

from tests.oracles import word_neck, word_tubes, word_yoke
from tests.oracles.sentence_kinds import KNITTED
from tests.oracles.sentence_reader import Reader, Reading
from tests.oracles.word_needle import STEPS, Piece, Said, WordsError, demand

Parts = Sequence[tuple[str, Sequence[str]]]
"""The parts of a pattern, each with its sentences."""

PARTS = ("neck", "yoke", "split", "body", "sleeve", "band", "finishing")
"""The parts that are followed: no other leads to stitches on the needles."""

EXPLAIN = (
    "sizes.apart", "neck.short_row_method", "neck.raised", "neck.edge",
    "yoke.leaning", "yoke.doubled", "yoke.wrong_side",
    "body.darts_end", "body.length", "sleeve.length", "sleeve.second", "band.height",
    "finishing.underarms", "finishing.ends", "finishing.block", "finishing.no_cords",
)  # fmt: skip
"""Sentences that leave the stitches on the needles as they are."""

MEASURED = {"yoke.depth": "depth", "body.length": "body_length", "sleeve.length": "sleeve_length", "neck.edge": "neck"}
"""Sentences with a length of the table's finished measurements, and its name there."""

_LEARNT = (word_neck, word_tubes, word_yoke)
"""The modules that put what they know into `STEPS`."""


def knit(parts: Parts, labels: Sequence[str], label: str, reader: Reader) -> tuple[Piece, list[Said]]:
    """Follow a pattern in one size: what is knitted, and all that was said to it.

    parts: in order. labels: of all sizes of the pattern, as its runs have them. Raises WordsError where a sentence
    can't be read, can be read in two ways, or can't be followed.
    """
    piece, heard = Piece(), list[Said]()
    for part, texts in parts:
        piece.part = part
        for text in texts if part in PARTS else ():
            said = hear(text, part, labels, label, reader)
            if said is None:
                continue
            heard.append(said)
            step = STEPS.get(said.id)
            demand(bool(step) or said.id in EXPLAIN, f"nobody told the knitter of {said.id}")
            if step:
                try:
                    step(piece, said)
                except (AssertionError, LookupError, ValueError) as error:
                    # what is missing on the needles is as wrong as what doesn't fit there
                    raise WordsError(f"{said.id}: {error}. {text!r}") from error
            piece.done[said.id] += 1
    _look_at_the_end(piece)
    return piece, heard


def hear(text: str, part: str, labels: Sequence[str], label: str, reader: Reader) -> Said | None:
    """What a sentence says to one size, None where it is not for it."""
    only, rest = reader.for_sizes(text, labels)
    named = labels if only is None else only
    if label not in named:
        return None
    said = Said.to(reader, understood(rest, part, reader), named.index(label), len(named))
    dashes = [name for name, figure in said.figures.items() if figure is None]
    runs = [name for name in said.figures if len(reader.figures(said.reading.printed[name])) > 1]
    demand(not dashes or set(runs) <= set(dashes), f"a dash among figures: {text!r}")
    return None if dashes else said


def understood(text: str, part: str, reader: Reader) -> Reading:
    """The one meaning of a text; ids that have the knitter do the same mean the same."""
    readings = [each for each in reader.read(text) if each.id.partition(".")[0] in (*KNITTED, "sizes")]
    demand(bool(readings), f"no sentence of the language: {text!r}")
    meanings: dict[Any, Reading] = {}
    for reading in readings:
        tokens = tuple((name, key) for name, key in reading.chosen.items() if not name.endswith("_number"))
        does = STEPS.get(reading.id, reading.id)
        key = (does, tokens, *sorted(reading.printed.items()), *map(repr, sorted(reading.nested.items())))
        if key not in meanings or reading.id.startswith(f"{part}."):
            meanings[key] = reading
    demand(len(meanings) == 1, f"{' or '.join(sorted({each.id for each in readings}))}: {text!r}")
    return next(iter(meanings.values()))


def _look_at_the_end(piece: Piece) -> None:
    demand(bool(piece.split), "the yoke is never divided")
    for part in ("body", "sleeve", "band"):
        demand(part in piece.tubes and piece.tubes[part].done, f"the {part} is never bound off")
    demand(bool(piece.done["sleeve.second"]), "there is one sleeve")


def counts(piece: Piece) -> dict[tuple[str, str], int]:
    """All numbers of a piece that the table has, by part and item."""
    body, sleeve, band = (piece.tubes[part] for part in ("body", "sleeve", "band"))
    made = {
        ("neck", "cast_on"): piece.cast_on,
        ("neck", "stitches"): piece.cast_on + piece.drop_centre + 2 * piece.drop_edges,
        ("neck", "short_rows"): len(piece.turns),
        ("neck", "front_drop"): piece.drop_rows,
        ("yoke", "rounds"): piece.rounds,
        ("yoke", "increase_rounds"): len(piece.increases),
        ("yoke", "doubled_rounds"): sum(max(each.values()) > 1 for each in piece.increases),
        ("split", "back"): piece.split["back"],
        ("split", "front"): piece.split["front"],
        ("split", "sleeve"): piece.split["first_sleeve"],
        ("split", "yoke_total"): sum(piece.split.values()),
        ("split", "underarm"): piece.underarms[0],
        ("split", "line_to_body"): piece.past,
        ("body", "stitches"): body.stitches - body.adjusted - sum(body.shaped.values()),
        ("body", "rounds"): body.rounds,
        ("body", "bust_dart_rows"): len(piece.darts),
        ("hem", "stitches"): body.stitches,
        ("hem", "rounds"): body.ribbed,
        ("sleeve", "stitches"): piece.held[0] + piece.underarms[0],
        ("sleeve", "rounds"): sleeve.rounds,
        ("sleeve", "decrease_rounds"): len(sleeve.shaped),
        ("cuff", "stitches"): sleeve.stitches,
        ("cuff", "rounds"): sleeve.ribbed,
        ("band", "stitches"): band.stitches,
        ("band", "rounds"): band.ribbed,
    }
    for section in ("back", "front", "sleeve"):
        made["neck", section] = piece.neck[section]
        made["yoke", f"{section}_increases"] = sum(each.get(section, 0) for each in piece.increases)
    return made


def against_table(piece: Piece, values: Mapping[tuple[str, str], Any]) -> Iterable[str]:
    """Where a piece has another number than the table says of its size.

    values: by part and item, None where the size has none.
    """
    for key, made in counts(piece).items():
        told = values.get(key)
        if made != (told or 0):
            yield f"{' '.join(key)}: {made} knitted, {told} in the table"


def against_runs(
    heard: Iterable[Said], printed: Callable[[str], tuple[str | None, str | None]], dropped: bool
) -> Iterable[str]:
    """Where a sentence has another length than the table prints.

    printed: of a finished measurement, in cm and in inches. dropped: whether the neck has more of an edge than its
    cast-on.
    """
    for said in heard:
        item = MEASURED.get(said.id)
        if item and not (said.id == "neck.edge" and dropped):
            for unit, told in zip(("cm", "inch"), printed(item), strict=True):
                # a language may do without inches
                found = said.figures.get(f"length_{unit}")
                if found != told and (found is not None or unit == "cm"):
                    yield f"{said.id}: {found} {unit} said, {told} in the table"
