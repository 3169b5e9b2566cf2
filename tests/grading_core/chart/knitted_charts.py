"""A pullover knitted stitch by stitch, with no arithmetic on where a section starts.

The chart is an endless wallpaper: every stitch carries the wallpaper column that it stands on. New stitches
go on next to the edge stitch, decreased ones come off, and the split joins lists of stitches. A motif is whole where
every column of it is there. Floats are found by looking at every stitch. Shares no code with the package beyond the
plan's data.
"""

from collections import Counter
from dataclasses import dataclass
from fractions import Fraction
from itertools import pairwise


@dataclass
class Stitch:
    section: str
    colour: str
    column: int | None
    """The chart's column from 1, None where the stitch is plain."""


@dataclass
class Garment:
    rows: dict
    """Part -> chart row of each round, None where none is worked."""
    rounds: dict
    """Part -> rounds, each a list of stitches in working order."""

    def colours(self, part):
        return [[stitch.colour for stitch in knitted] for knitted in self.rounds[part]]

    def floats(self, part):
        """For every round of a part: (length, colour) of every float that counts for it."""
        found, before = [], []
        for knitted in self.colours(part):
            here = []
            for colour in set(knitted):
                places = [place for place, other in enumerate(knitted) if other == colour]
                if colour in before:
                    unused = next(n for n, other in enumerate(reversed(before)) if other == colour)
                    here.append((unused + places[0], colour))
                here += [(after - place - 1, colour) for place, after in pairwise(places)]
            found.append(here)
            before = knitted
        return found

    def count(self, part):
        return Counter(colour for knitted in self.colours(part) for colour in knitted)


def knit(plan, size):
    chart, width, height = plan.chart, len(plan.chart.rows[0]), len(plan.chart.rows)
    swapped = dict(zip(plan.exchange, plan.exchange[::-1], strict=True)) if plan.exchange else {}
    drawn_rows = ["".join(swapped.get(symbol, symbol) for symbol in row) for row in chart.rows]
    most = Counter("".join(drawn_rows)).most_common()
    ground = plan.plain_colour or most[0][0]
    below = plan.below_colour or ground
    motif = (plan.motif_columns or width) if plan.partial_motifs == "plain" else 1
    to_body = plan.line_stitches // 2 if plan.line_to_body is None else plan.line_to_body
    to_sleeve = plan.line_stitches - to_body
    body_seam, sleeve_seam = (
        size.underarm % 2 if seam is None else seam for seam in (plan.seam_stitches.body, plan.seam_stitches.sleeve)
    )

    def worked(section, columns, row, plain):
        sort = "sleeve" if "sleeve" in section else "body"
        if row is None or len(columns) < getattr(plan.minimum_width, sort):
            return [plain_stitch(section, plain) for _ in columns]
        drawn = drawn_rows[row - 1] if chart.first_row == "top" else drawn_rows[-row]
        drawn_from_right = drawn[::-1]
        knitted = []
        for column in columns:
            of_motif = range((column - 1) // motif * motif + 1, (column - 1) // motif * motif + motif + 1)
            if set(of_motif) <= set(columns):
                knitted.append(Stitch(section, drawn_from_right[(column - 1) % width], (column - 1) % width + 1))
            else:
                knitted.append(plain_stitch(section, plain))
        return knitted

    def plain_of(number):
        """The plain colour of a round: the second one when the chart's last row has been worked."""
        over = chart.repeat == "once" and number - plan.first_round >= height
        return below if over else ground

    def plain_stitch(section, colour):
        return Stitch(section, colour, None)

    def lined(stitches, section, colour):
        return [plain_stitch(section, colour) for _ in range(stitches)]

    def chart_row(number):
        """Count the chart's rows off, round by round."""
        row = None
        for at in range(1, number + 1):
            if at == plan.first_round:
                row = 1
            elif row is not None:
                row += 1
                if row > height:
                    row = 1 if chart.repeat == "rows" else None
                    if row is None:
                        return None
        return row

    sections = {}
    for name in ("back", "front", "sleeve"):
        stitches, anchor = getattr(size.neck, name), getattr(plan.anchor, name)
        # The middle stitch stands on the anchor, or the two middle ones on either side of it.
        first = anchor - Fraction(stitches - 1, 2)
        if first.denominator == 2:
            first -= Fraction(1, 2)
        sections[name] = [int(first) + place for place in range(stitches)]

    garment = Garment({"yoke": [], "body": [], "sleeve": []}, {"yoke": [], "body": [], "sleeve": []})
    for number in range(1, size.rounds + 1):
        for step in size.increase_rounds:
            if step.round == number:
                for name, columns in sections.items():
                    for _ in range(getattr(step, name)):
                        columns.insert(0, columns[0] - 1)
                        columns.append(columns[-1] + 1)
        row, plain = chart_row(number), plain_of(number)
        line = lined(plan.line_stitches, "line", plan.line_colour or plain)
        garment.rows["yoke"].append(row)
        garment.rounds["yoke"].append(
            worked("back", sections["back"], row, plain)
            + line
            + worked("first_sleeve", sections["sleeve"], row, plain)
            + line
            + worked("front", sections["front"], row, plain)
            + line
            + worked("second_sleeve", sections["sleeve"], row, plain)
            + line
        )

    for name, share, seam in (
        ("back", to_body, body_seam),
        ("front", to_body, body_seam),
        ("sleeve", to_sleeve, sleeve_seam),
    ):
        columns = sections[name]
        for _ in range(share):
            columns.insert(0, columns[0] - 1)
            columns.append(columns[-1] + 1)
        # Underarm stitches join on, turn about, until only the seam is left of them; a wider seam eats stitches.
        for turn in range(size.underarm - seam):
            if turn % 2 == 0:
                columns.append(columns[-1] + 1)
            else:
                columns.insert(0, columns[0] - 1)
        for turn in range(seam - size.underarm):
            columns.pop(0 if turn % 2 == 0 else -1)
    for number in range(1, size.body_rounds + 1):
        for step in size.body_shaping:
            if step.round == number:
                for _ in range(abs(step.stitches) // 4):
                    for name in ("back", "front"):
                        columns = sections[name]
                        if step.stitches > 0:
                            columns.insert(0, columns[0] - 1)
                            columns.append(columns[-1] + 1)
                        else:
                            columns.pop(0)
                            columns.pop()
        row, plain = chart_row(size.rounds + number), plain_of(size.rounds + number)
        seam = lined(body_seam, "seam", plan.seam_colour or plain)
        garment.rows["body"].append(row)
        garment.rounds["body"].append(
            worked("back", sections["back"], row, plain) + seam + worked("front", sections["front"], row, plain) + seam
        )
    for number in range(1, size.sleeve_rounds + 1):
        if number in size.sleeve_decrease_rounds:
            sections["sleeve"].pop(0)
            sections["sleeve"].pop()
        row, plain = chart_row(size.rounds + number), plain_of(size.rounds + number)
        garment.rows["sleeve"].append(row)
        garment.rounds["sleeve"].append(
            worked("sleeve", sections["sleeve"], row, plain) + lined(sleeve_seam, "seam", plan.seam_colour or plain)
        )
    return garment
