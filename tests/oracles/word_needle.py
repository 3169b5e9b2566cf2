"""What a knitter has who knows nothing but the sentences: needles with sections and markers, and what is worked."""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass, field
from typing import Any

from tests.oracles.sentence_kinds import is_run
from tests.oracles.sentence_reader import Reader, Reading


class WordsError(AssertionError):
    """A sentence cannot be followed, or says something else than what is on the needles."""


def expect(found: Any, told: Any, what: str) -> None:
    """Fail where what is on the needles isn't what is told."""
    if found != told:
        raise WordsError(f"{what}: {found} on the needles, {told} told")


def demand(holds: bool, what: str) -> None:
    """Fail where something doesn't hold that has to."""
    if not holds:
        raise WordsError(what)


@dataclass(frozen=True)
class Said:
    """A reading as one size has it: of every run its own figure."""

    reader: Reader
    reading: Reading
    figures: Mapping[str, str | None]
    place: int
    sizes: int

    @classmethod
    def to(cls, reader: Reader, reading: Reading, place: int, sizes: int) -> Said:
        """What a reading says to the size at a place among so many."""
        own: dict[str, str | None] = {}
        for name, printed in reading.printed.items():
            if is_run(reading.id, name):
                run = reader.figures(printed)
                demand(len(run) in (1, sizes), f"{printed} for {sizes} sizes")
                own[name] = run[place if len(run) > 1 else 0]
        return cls(reader, reading, own, place, sizes)

    @property
    def id(self) -> str:
        """Of the message."""
        return self.reading.id

    @property
    def skipped(self) -> bool:
        """Whether a dash tells this size to go on."""
        return None in self.figures.values()

    def count(self, name: str, usual: int | None = None) -> int:
        """A whole number: printed, or told by the words chosen for it."""
        if name in self.figures:
            figure = self.figures[name]
            assert figure is not None
            return int(figure)
        key = self.reading.chosen.get(f"{name}_number", "")
        told = int(key) if key.isdigit() else 1 if key == "one" else usual
        if told is None:
            raise WordsError(f"{self.id} doesn't tell {name}")
        return told

    def word(self, name: str) -> str:
        """What chose a variant."""
        return self.reading.chosen.get(name, "")

    @property
    def colour(self) -> str:
        """The name of the colour that is printed."""
        return self.reading.printed["colour"]

    def listed(self, name: str) -> tuple[str, ...]:
        """The members of a list, none where it isn't told."""
        printed = self.reading.printed.get(name)
        return self.reader.listed(name, printed) if printed else ()

    def nested(self, name: str) -> list[Said]:
        """The sentences of a list as this size has them."""
        return [Said.to(self.reader, each, self.place, self.sizes) for each in self.reading.nested[name]]


@dataclass
class Stretch:
    """Stitches side by side. name: the section, as the sentences name it; "underarm" for what is cast on there."""

    name: str
    stitches: int


@dataclass
class Tube:
    """A part worked in rounds: stitches, rounds before and in its rib, and what a stated shaping round changes.

    shaped: the rounds that are shaped, and by how many stitches. stated: the changes that are explained. adjusted: by
    how many stitches the rib is wider. ribs: how often a rib is named. rib: its knit and purl stitches, where these are
    told. rest: stitches beyond the rib's repeats.
    """

    stitches: int
    rounds: int = 0
    shaped: dict[int, int] = field(default_factory=dict)
    stated: set[int] = field(default_factory=set)
    adjusted: int = 0
    ribbed: int = 0
    ribs: int = 0
    rib: tuple[int, int] | None = None
    rest: int = 0
    done: bool = False


@dataclass(frozen=True)
class Gap:
    """Stitches counted up to a marker, and what they are said to be."""

    stitches: int
    parts: tuple[str, ...]


START, GAP = "start", "gap"
"""The marker for the start of the round; where needles are not joined."""


@dataclass
class Piece:
    """One size on its way.

    part: of the instructions that is read. done: ids of sentences followed. doubts: what can only be followed by
    going back to what was done before.
    """

    part: str = ""
    doubts: list[str] = field(default_factory=list)
    done: Counter[str] = field(default_factory=Counter)
    colours: dict[str, str] = field(default_factory=dict)
    """The names of colours: of what is plain, the underarms, hem, cuff and band."""
    # the neck
    cast_on: int = 0
    flat: bool = False
    joined: bool = False
    order: list[Gap | str] = field(default_factory=list)
    """The cast-on as it is counted: stitches and markers."""
    line: int | None = None
    short_rows: int = 0
    raised: dict[int, int] = field(default_factory=dict)
    here: int = 0
    side: str = ""
    """Of the next row."""
    turns: list[tuple[str, int]] = field(default_factory=list)
    drop_rows: int = 0
    drop_edges: int = 0
    drop_centre: int = 0
    # the yoke
    needle: list[Stretch | str] = field(default_factory=list)
    rounds: int = 0
    neck: dict[str, int] = field(default_factory=dict)
    """The sections at the neck, with all that is cast on later."""
    increases: list[dict[str, int]] = field(default_factory=list)
    listed: dict[int, dict[str, int]] = field(default_factory=dict)
    """Increase rounds by number that are still to come."""
    split: dict[str, int] = field(default_factory=dict)
    """The sections after the yoke's last round."""
    # below it
    past: int = 0
    underarms: list[int] = field(default_factory=list)
    held: list[int] = field(default_factory=list)
    walked: list[tuple[str, list[Stretch]]] = field(default_factory=list)
    seam: int | None = None
    purled: set[str] = field(default_factory=set)
    """The parts of which the seam stitches are purled."""
    before: int | None = None
    """Stitches of an underarm before its marker."""
    sides: bool = False
    """Whether both sides are marked."""
    dart_round: int = 0
    dart_rows: int = 0
    darts: list[int] = field(default_factory=list)
    tubes: dict[str, Tube] = field(default_factory=dict)

    @property
    def counted(self) -> int:
        """Stitches counted so far for the markers."""
        return sum(item.stitches for item in self.order if isinstance(item, Gap))

    @property
    def markers(self) -> list[str]:
        """Numbered markers in their places."""
        return [item for item in self.order if isinstance(item, str) and item != START]

    @property
    def ends(self) -> tuple[int, int]:
        """Where the needles end before and after the start of the round; joined, where a row would meet itself."""
        if not self.flat:
            return -self.cast_on, self.cast_on
        ahead = self.cast_on - self._place(START)
        return ahead - self.cast_on, ahead

    def _place(self, marker: str) -> int:
        before = self.order[: self.order.index(marker)]
        return sum(item.stitches for item in before if isinstance(item, Gap))

    def forward(self, marker: str) -> int:
        """Where a numbered marker stands, counted in working order from the start of the round."""
        place = (self._place(marker) - self._place(START)) % self.cast_on
        return place or (0 if marker == "1" else self.cast_on)

    def join(self) -> None:
        """Join flat needles into a round."""
        demand(not self.joined, "joined twice")
        self.joined = True

    @property
    def stitches(self) -> int:
        """On the needles."""
        return sum(item.stitches for item in self.needle if isinstance(item, Stretch))

    @property
    def tube(self) -> Tube:
        """The part below the yoke that is worked."""
        demand(self.part in self.tubes, f"nothing is on the needles for the {self.part}")
        return self.tubes[self.part]

    def total(self, name: str) -> int:
        """Stitches of a section on the needles."""
        return sum(item.stitches for item in self.needle if isinstance(item, Stretch) and item.name == name)


Step = Callable[[Piece, Said], None]
STEPS: dict[str, Step] = {}
"""What is done for a sentence, by its id. Sentences that have one mean the same."""


def says(*ids: str) -> Callable[[Step], Step]:
    """What to do for sentences of some ids."""

    def registered(step: Step) -> Step:
        STEPS.update(dict.fromkeys(ids, step))
        return step

    return registered


def once(piece: Piece, ids: Sequence[str], what: str) -> None:
    """Fail where something that needs an explanation was never explained."""
    demand(any(piece.done[id] for id in ids), f"{what} is never explained ({', '.join(ids)})")
