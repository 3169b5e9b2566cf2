"""Knitting what many seeds make, in several processes, for the knitters of random pullovers."""

from __future__ import annotations

import json
import sys
from argparse import ArgumentParser, Namespace
from collections import Counter
from collections.abc import Callable
from dataclasses import dataclass, field, fields
from multiprocessing import Pool
from typing import Any, Self, TypeVar


@dataclass
class Seen:
    """What came of some requests; who counts more adds fields that can be added up."""

    requests: int = 0
    disagreements: list[tuple[str, str, Any]] = field(default_factory=list)

    def add(self, other: Self) -> None:
        """What came of other requests too."""
        for each in fields(self):
            setattr(self, each.name, getattr(self, each.name) + getattr(other, each.name))

    @property
    def kinds(self) -> Counter[str]:
        """How many disagreements of each kind."""
        return Counter(kind for kind, _, _ in self.disagreements)


Met = TypeVar("Met", bound=Seen)


def arguments(about: str | None, count: int) -> ArgumentParser:
    """What is asked on the command line.

    about: the program's docstring. count: of requests, unless told.
    """
    parser = ArgumentParser(description=(about or "").split("\n", 1)[0])
    parser.add_argument("--count", type=int, default=count)
    parser.add_argument("--seed", type=int, default=1)
    parser.add_argument("--processes", type=int, default=2)
    return parser


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
