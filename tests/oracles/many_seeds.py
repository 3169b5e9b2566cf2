"""Knitting what many seeds make, in several processes, for the knitters of random pullovers."""

from __future__ import annotations

import json
import sys
from argparse import Namespace
from collections import Counter
from collections.abc import Callable
from multiprocessing import Pool
from typing import Any, Protocol, TypeVar


class Seen(Protocol):
    """What was met."""

    requests: int
    disagreements: list[tuple[str, str, Any]]

    @property
    def kinds(self) -> Counter[str]:
        """How many disagreements of each kind."""

    def add(self, other: Any) -> None:
        """What was met elsewhere, too."""


Met = TypeVar("Met", bound=Seen)


def knit_seeds(
    seen: Met, asked: Namespace, knit: Callable[[int], Met], start: Callable[..., None], *given: Any
) -> None:
    """Knit as many seeds as are asked for, and print each disagreement when it is found.

    seen: takes in what is met. asked: `count`, `seed` and `processes`. knit: one seed. start: each process, with what
    it is given.
    """
    with Pool(asked.processes, initializer=start, initargs=given) as pool:
        seeds = range(asked.seed * 1_000_000, asked.seed * 1_000_000 + asked.count)
        for one in pool.imap_unordered(knit, seeds, chunksize=10):
            seen.add(one)
            for kind, detail, request in one.disagreements:
                print(f"{kind}: {detail}\n    {json.dumps(request)}", flush=True)
            if seen.requests % 500 == 0:
                print(f"{seen.requests} requests, {dict(seen.kinds)}", file=sys.stderr, flush=True)
