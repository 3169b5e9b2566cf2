"""A pullover in three sizes, reckoned by hand, and how rows are written down for a proof.

At 20 stitches and 28 rounds to 10 cm, L = 2 raglan stitches at each line, of which 1 goes to the body and 1 to the
sleeve; ribs at the same gauge. Lengths are printed to half a centimetre.

neck      S 30 + 30 + 2 x 10 + 4 x 2 = 88     M 32 + 32 + 2 x 10 + 8 = 92     L 32 + 32 + 2 x 12 + 8 = 96
split     S back, front 30 + 2 x 18 = 66      M 32 + 2 x 20 = 72              L 32 + 2 x 23 = 78
          S sleeve 10 + 2 x 15 = 40           M 10 + 2 x 17 = 44              L 12 + 2 x 19 = 50
yoke      S 66 + 66 + 2 x 40 + 8 = 220        M 72 + 72 + 2 x 44 + 8 = 240    L 78 + 78 + 2 x 50 + 8 = 264
body      S 66 + 66 + 4 x 1 + 2 x 8 = 152     M 72 + 72 + 4 + 2 x 8 = 164     L 78 + 78 + 4 + 2 x 10 = 180
sleeve    S 40 + 2 x 1 + 8 = 50               M 44 + 2 + 8 = 54               L 50 + 2 + 10 = 62
closes    S 152 + 100 = 220 + 32              M 164 + 108 = 240 + 32          L 180 + 124 = 264 + 40
cuff      S 50 - 2 x 7 = 36                   M 54 - 2 x 8 = 38               L 62 - 2 x 10 = 42
increases S max(18, 15) = 18                  M max(20, 17) = 20              L max(23 - 2 doubled, 19) = 21
rounds    a step of 2: S 42 >= 36             M 49 >= 40                      L 49 >= 42

Stitches / 2 are cm across, rounds / 2.8 along: bust 76 (82, 90), upper arm 25 (27, 31), neck and band 44 (46, 48),
underarm 4 (4, 5), hem as the body, wrist 18 (19, 21); depth 42 / 2.8 = 15, 49 / 2.8 = 17.5; body 91 / 2.8 = 32.5 and
hem 14 / 2.8 = 5, sleeve 98 / 2.8 = 35 and cuff 5; short rows 14 / 2.8 = 5.
total     S 15 + 37.5 + 5 = 57.5              M, L 17.5 + 37.5 + 5 = 60
reach     S 44 x 7/44 + 15 + 40 = 62          M 46 x 7/44 + 57.5 = 64.82, 65  L 48 x 7/44 + 57.5 = 65.14, 65
yards     S 660 / 0.9144 = 721.8              M 726 / 0.9144 = 794.0          L 836 / 0.9144 = 914.3
inches    S 76 / 2.54 = 29.92, 30             M 82 / 2.54 = 32.28, 32 1/4     L 90 / 2.54 = 35.43, 35 1/2
"""

from collections.abc import Mapping
from fractions import Fraction
from typing import Any, NamedTuple

from grading_core.gauge import Gauge
from grading_core.proof.proof import proofread
from grading_core.proof.request import PrintedRow, ProofRequest
from grading_core.proof.result import Proof
from grading_core.pullover.request import Gauges

LABELS = ("S", "M", "L")
GAUGES = Gauges(plain=Gauge.over(Fraction(20), Fraction(28), Fraction(10)))

Values = tuple[float | None, ...]
Printed = Mapping[str, str | Values]

GARMENT: dict[str, Values] = {
    "to_fit.bust": (70, 76, 84),
    "to_fit.ease": (6, 6, 6),
    "neck.cast_on": (88, 92, 96),
    "neck.stitches": (88, 92, 96),
    "neck.back": (30, 32, 32),
    "neck.front": (30, 32, 32),
    "neck.sleeve": (10, 10, 12),
    "neck.short_rows": (14, 14, 14),
    "yoke.rounds": (42, 49, 49),
    "yoke.increase_rounds": (18, 20, 21),
    "yoke.back_increases": (18, 20, 23),
    "yoke.front_increases": (18, 20, 23),
    "yoke.sleeve_increases": (15, 17, 19),
    "yoke.doubled_rounds": (0, 0, 2),
    "split.back": (66, 72, 78),
    "split.front": (66, 72, 78),
    "split.sleeve": (40, 44, 50),
    "split.yoke_total": (220, 240, 264),
    "split.underarm": (8, 8, 10),
    "split.line_to_body": (1, 1, 1),
    "body.stitches": (152, 164, 180),
    "body.rounds": (91, 91, 91),
    "hem.stitches": (152, 164, 180),
    "hem.rounds": (14, 14, 14),
    "sleeve.stitches": (50, 54, 62),
    "sleeve.rounds": (98, 98, 98),
    "sleeve.decrease_rounds": (7, 8, 10),
    "cuff.stitches": (36, 38, 42),
    "cuff.rounds": (14, 14, 14),
    "band.stitches": (88, 92, 96),
    "band.rounds": (7, 7, 7),
    "finished.bust": (76, 82, 90),
    "finished.upper_arm": (25, 27, 31),
    "finished.neck": (44, 46, 48),
    "finished.depth": (15, 17.5, 17.5),
    "finished.underarm": (4, 4, 5),
    "finished.hem": (76, 82, 90),
    "finished.wrist": (18, 19, 21),
    "finished.body_length": (37.5, 37.5, 37.5),
    "finished.front_length": (37.5, 37.5, 37.5),
    "finished.sleeve_length": (40, 40, 40),
    "finished.total_length": (57.5, 60, 60),
    "finished.reach": (62, 65, 65),
    "finished.band": (44, 46, 48),
    "yarn.grams_1": (300, 330, 380),
    "yarn.metres_1": (660, 726, 836),
    "yarn.yards_1": (722, 794, 914),
    "yarn.balls_1": (6, 7, 8),
}
BUST_IN_INCHES = "30 (32 1/4, 35 1/2)"


def row(name: str, values: str | Values, **fields: Any) -> PrintedRow:
    """A row by its "part.item": of a text its run, of numbers its values."""
    part, item = name.split(".")
    return PrintedRow(part, item, **{"run" if isinstance(values, str) else "values": values}, **fields)


def proof_of(labels: tuple[str, ...], printed: Printed, **fields: Any) -> Proof:
    return proofread(ProofRequest(labels=labels, rows=tuple(row(*each) for each in printed.items()), **fields))


def garment_proof(changes: Printed | None = None, **fields: Any) -> Proof:
    """The garment, some of its rows otherwise or besides, its bust in inches too."""
    rows = [row(name, values) for name, values in (GARMENT | dict(changes or {})).items()]
    rows = [each._replace(run_inch=BUST_IN_INCHES) if each[:2] == ("finished", "bust") else each for each in rows]
    asked = {"gauges": GAUGES, "line_stitches": 2, "step": 2} | fields
    return proofread(ProofRequest(labels=LABELS, rows=tuple(rows), **asked))


class Found(NamedTuple):
    code: str
    size: str | None
    printed: Fraction | None
    expected: Fraction | None


def found(proof: Proof) -> list[Found]:
    return [Found(each.code.value, each.size, each.printed, each.expected) for each in proof.findings]


def corrected(proof: Proof) -> list[tuple[str | None, str, Fraction, Fraction]]:
    return [(each.size, ".".join(each.row), each.printed, each.expected) for each in proof.corrections]
