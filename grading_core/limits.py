"""How large one request may be, so that none takes a worker more than a second (measured)."""

from __future__ import annotations

MAX_STITCHES = 5_000
"""Of one section."""

MAX_ROUNDS = 5_000
"""Of one yoke."""

MAX_ROUNDS_IN_ALL = 20_000
"""Of everything that one answer tells round by round, over all sizes."""

MAX_STRANDS_IN_ALL = 1_000
"""Of the yarns of all colours of a pullover, over all sizes that are answered."""
