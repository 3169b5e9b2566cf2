"""Published tables as frozen data, each row with its source and edition.

A table is kept as it was published, in centimetres and inches side by side, with a note where the
two contradict each other. `body` holds the types and says which column counts; `body_tables` joins
the four tables; `heads`, `fit`, `needles` and `yarn_weights` are the other charts of the trade.
"""

from grading_core.standards.body import BodyRow, BodyTable, Measurement, Origin, Within
from grading_core.standards.body_tables import BODY_TABLES, body_table

__all__ = ["BODY_TABLES", "BodyRow", "BodyTable", "Measurement", "Origin", "Within", "body_table"]
