"""Operations about printed patterns."""

from __future__ import annotations

from grading_core.proof.proof import MAX_FINDINGS, proof_problems, proofread
from service.csv_body import read_wide_table
from service.media import CSV, PER_SIZE
from service.operation import Operation
from service.schemas.proof import ProofsRequestSchema, ProofsSchema

PROOFS = Operation(
    path="/v1/proofs",
    name="proofs",
    tag="Garment",
    summary="Find what doesn't add up in a pattern's numbers",
    description=f"""\
Takes the numbers that a pattern prints, as values or as the size runs that stand in it, and answers every
contradiction between them: sections, increases and the split, body and sleeves, rounds and decreases, multiples, counts
and lengths at the gauge, inches and centimetres, sums of lengths, runs that are too short or fall, yarn. Each has a
code, the size, the rows, what is printed and what would hold, and the reasoning in a sentence.

Everything is judged with the rounding of print, which is seen from the numbers themselves: what a right pattern can
print gives no finding. Where numbers disagree, `corrections` names the fewest whose change mends the size, and with
`likely_cause` the slip that it looks like. `checked` tells what was computed, `unchecked` what could not be for want of
which rows, and `most_wanted` the one row that would allow most. At most {MAX_FINDINGS} findings are named.

The rows are those of a pullover's table; a table of this service can be sent as it came, also as CSV in the wide
layout, of which decimals may have a comma and columns may be parted by semicolons.""",
    request=ProofsRequestSchema,
    answer=ProofsSchema,
    call=proofread,
    check=proof_problems,
    media=PER_SIZE,
    reads={CSV: read_wide_table},
)

OPERATIONS = (PROOFS,)
