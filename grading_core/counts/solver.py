"""Chooses the counts of all sizes at once, to the optimum of one cost.

    cost = sum over sizes and quantities of weight x (count - target) squared
         + 1/2 sum over neighbouring sizes and quantities of weight x (step - step of the targets) squared

The first sum keeps every size near what it should be, the second keeps the run even. Both are in squared
stitches, a round counting as a stitch; targets are taken to a hundredth. The weights are in `candidates`. Sections,
underarm and rounds never fall from one size to the next, so neither does a total.

The domain: each count lies within `REACH` of its target, or within one step of its rule where that is more. The
parity of the sections is the same in all sizes; where it is left open, the one that costs least is taken, and of those
that cost the same the one whose necks cost less.

For given parities the cost falls into three parts that share no term: the neck, the split (body, sleeve, underarm) and
the rounds. By how much the front is wider than the back at the split is given, not chosen. Each is brought to its exact
optimum (see `size_chain`), in that order. What is settled bounds what follows: a section has at the split at least its
stitches at the neck, and the rounds have room for the increases. As long as there is room, which is the rule, the
result is the optimum of the whole sum. Where there is not, the yoke gets the rounds it needs before a circumference
gives way, and no neck is pulled out of shape to make increases fit: a judgement of the craft, no source.
"""

from __future__ import annotations

from bisect import bisect_left
from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace
from itertools import accumulate, product
from math import floor, gcd, lcm
from operator import ge
from typing import NamedTuple

from grading_core.codes import ReasonCode
from grading_core.counts.candidates import (
    NECK_WEIGHTS,
    REACH,
    ROUNDS_WEIGHTS,
    SPLIT_WEIGHTS,
    UNIT,
    Permitted,
    Splits,
    least_neck,
    least_split,
    necks,
    permitted,
    rounds,
)
from grading_core.counts.request import Parity, Rules, Targets
from grading_core.counts.result import Counts
from grading_core.counts.size_chain import ALL, Broken, Candidate, Shelf, Weights, cheapest_chain, shelf_of
from grading_core.counts.size_chain import Counts as CandidateCounts
from grading_core.errors import Impossible, Nearest
from grading_core.fraction import Fraction
from grading_core.rounding import NEAREST, CountRule
from grading_core.sections import Sections
from grading_core.sentences import COUNT, Saying
from grading_core.yoke.schedule import why_impossible

NO_CAST_ON = Saying("reason.no_permitted_cast_on", multiple=COUNT, stitches=COUNT, reach=COUNT)
_EXCEEDED = {"stitches": COUNT, "least": COUNT}
BODY_EXCEEDED = Saying("reason.neck_too_wide_body", **_EXCEEDED)
BODY_EXCEEDED_BY_EXTRA = Saying("reason.neck_too_wide_body_extra", **_EXCEEDED)
SLEEVE_EXCEEDED = Saying("reason.neck_too_wide_sleeve", **_EXCEEDED)
NO_COUNTS = Saying("reason.no_permitted_counts")
FRONT_EXTRA_GROWS = Saying("reason.front_extra_grows_too_fast")
UNDERARM_GROWS = Saying("reason.underarm_grows_too_fast", reach=COUNT)

_DEMANDS = ("neck", "body", "sleeve", "back_parity", "sleeve_parity", "seam_stitches")
"""The fields of the rules that can contradict each other."""

_ANY_ROUNDS = 1_000_000


@dataclass(frozen=True, slots=True)
class Solved:
    """The counts of one size. differences: each count less its target. cost: its own, without steps."""

    counts: Counts
    differences: Targets
    cost: Fraction


@dataclass(frozen=True, slots=True)
class Solution:
    """All sizes, in the order of the targets.

    cost: of the sizes that are possible, in squared stitches. unevenness: the part of it that the steps between
    sizes cost.
    """

    sizes: tuple[Solved | Impossible, ...]
    cost: Fraction
    unevenness: Fraction


class _Size(NamedTuple):
    """What was chosen for one size, as far as it goes."""

    neck: Candidate | None
    split: Candidate | None
    rounds: Candidate | None


class _Settled(NamedTuple):
    """One part of all sizes: how many have none, the cost of the others, and what was chosen."""

    impossible: int
    cost: int
    chosen: list[Candidate | None]


class _Glance(NamedTuple):
    """What shows of given parities at once, in the order in which they are tried.

    impossible: so many sizes at least. least: what all sizes cost at least, if each is possible. place: among the
    parities that are open. back, sleeve: the parities. splits: what each size's costs at least, None where it has none.
    """

    impossible: int
    least: int
    place: int
    back: int
    sleeve: int
    splits: list[int | None]


class _Outlook(NamedTuple):
    """What is known of all sizes with given parities before anything is chosen.

    impossible, least, place: as a glance has them, and nearer. necks: of each size. least_necks, least_splits: what
    they cost at least in each size.
    """

    impossible: int
    least: int
    place: int
    necks: list[Shelf]
    least_necks: list[int]
    least_splits: list[int]


class _Attempt(NamedTuple):
    """All sizes with given parities, in the order in which they are preferred.

    impossible: how many sizes are. cost: of the others. necks_impossible, neck_cost: the same of the necks alone.
    place: among the parities that are open. sizes: what was chosen.
    """

    impossible: int
    cost: int
    necks_impossible: int
    neck_cost: int
    place: int
    sizes: tuple[_Size, ...]


def solve(targets: Sequence[Targets], rules: Rules) -> Solution:
    """The counts of every size, or why a size has none.

    targets: one per size, from the smallest to the largest. rules: free of `conflicts`.

    Raises ValueError where the rules contradict each other.

    >>> from grading_core.counts.request import QUANTITIES
    >>> small = Targets(label="S", **dict(zip(QUANTITIES, map(Fraction, (97, 33, 33, 12, 202, 69, 14, 69)))))
    >>> large = Targets(label="L", **dict(zip(QUANTITIES, map(Fraction, (105, 34, 34, 14, 251, 80, 17, 77)))))
    >>> solution = solve([small, large], Rules(body=CountRule(4)))
    >>> [(size.counts.cast_on, size.counts.body, size.counts.sleeve) for size in solution.sizes]
    [(96, 204, 68), (104, 252, 80)]
    """
    of_all = [permitted(target, rules) for target in targets]
    open_parities = _open_parities(rules)
    if not open_parities:
        raise ValueError(f"the rules contradict each other: {', '.join(conflicts(rules))}")
    best: _Attempt | None = None
    for glance in sorted(_glance(of_all, rules, place, *parities) for place, parities in enumerate(open_parities)):
        if not _beats(best, glance.impossible, glance.least):
            best = _better(targets, of_all, rules, _outlook(of_all, rules, glance), best)
    assert best is not None
    sizes: list[Solved | Impossible] = []
    before: Counts | None = None
    for target, amounts, chosen in zip(targets, of_all, best.sizes, strict=True):
        solved = _solved(target, rules, amounts, chosen)
        sizes.append(solved or _impossible(target, rules, amounts, chosen, before))
        before = solved.counts if solved else before
    own = sum(
        size.neck.cost + size.split.cost + size.rounds.cost
        for size in best.sizes
        if size.neck and size.split and size.rounds
    )
    return Solution(tuple(sizes), Fraction(best.cost, UNIT), Fraction(best.cost - own, UNIT))


def conflicts(rules: Rules) -> tuple[str, ...]:
    """The fields of the rules that no size at all can obey together; none where they can be.

    rules: of all sizes. Where giving up one field alone would do, each such field is named, otherwise all that demand
    something.

    >>> conflicts(Rules(body=CountRule(4, 1)))
    ('body',)
    >>> conflicts(Rules(neck=CountRule(4, 2), back_parity="odd", sleeve_parity="odd"))
    ('neck', 'back_parity', 'sleeve_parity')
    """
    if _open_parities(rules):
        return ()
    free = Rules()
    demanding = [name for name in _DEMANDS if getattr(rules, name) != getattr(free, name)]
    alone = [name for name in demanding if _open_parities(replace(rules, **{name: getattr(free, name)}))]
    return tuple(alone or demanding)


def _open_parities(rules: Rules) -> list[tuple[int, int]]:
    """The parities of back and sleeve (0 even, 1 odd) with which every total can land on its multiple.

    Modulo 4 a cast-on is back + front + 2 sleeves, and a body 2 backs + 2 underarms; modulo 2 a sleeve is sleeve
    + underarm. The raglan lines come in fours and in twos and drop out.
    """
    underarms = (0, 1) if rules.seam_stitches is None else (rules.seam_stitches % 2,)
    narrower = (0, 2) if rules.narrower_front else (0,)
    return [
        (back, sleeve)
        for back, sleeve in product(_permitted(rules.back_parity), _permitted(rules.sleeve_parity))
        if any(_meets(2 * back + 2 * sleeve + less, rules.neck, 4) for less in narrower)
        and any(
            _meets(2 * back + 2 * underarm, rules.body, 4) and _meets(sleeve + underarm, rules.sleeve, 2)
            for underarm in underarms
        )
    ]


def _permitted(parity: Parity | None) -> tuple[int, ...]:
    return {None: (0, 1), "even": (0,), "odd": (1,)}[parity]


def _meets(residue: int, rule: CountRule, modulus: int) -> bool:
    """Whether some count with this residue obeys the rule."""
    return (rule.plus - residue) % gcd(rule.multiple, modulus) == 0


def _glance(of_all: Sequence[Permitted], rules: Rules, place: int, back_parity: int, sleeve_parity: int) -> _Glance:
    impossible = least = 0
    splits = [least_split(amounts, back_parity, sleeve_parity) for amounts in of_all]
    for amounts, split in zip(of_all, splits, strict=True):
        neck = least_neck(amounts, rules, back_parity, sleeve_parity)
        if neck is None or split is None:
            impossible += 1
        else:
            least += neck + split + amounts.rounds[0][0]
    return _Glance(impossible, least, place, back_parity, sleeve_parity, splits)


def _outlook(of_all: Sequence[Permitted], rules: Rules, glance: _Glance) -> _Outlook:
    shelves, least_necks, least_splits, least_rounds = [], [], [], 0
    for amounts, split in zip(of_all, glance.splits, strict=True):
        shelf = necks(amounts, rules, glance.back, glance.sleeve)
        shelves.append(shelf)
        if split is not None and (neck := shelf(1)):
            least_necks.append(neck[0][0])
            least_splits.append(split)
            least_rounds += amounts.rounds[0][0]
    least = sum(least_necks) + sum(least_splits) + least_rounds
    return _Outlook(len(of_all) - len(least_necks), least, glance.place, shelves, least_necks, least_splits)


def _beats(best: _Attempt | None, impossible: int, least: int) -> bool:
    """Whether the best attempt so far is preferred to whatever makes so many sizes impossible and costs so much."""
    if best is None:
        return False
    if best.impossible:
        return impossible > best.impossible
    # what costs as much may be preferred
    return impossible > 0 or least > best.cost


def _better(
    targets: Sequence[Targets], of_all: Sequence[Permitted], rules: Rules, outlook: _Outlook, best: _Attempt | None
) -> _Attempt | None:
    """All sizes with the parities of an outlook, or the best attempt so far where that is preferred."""
    neck_limits = split_limits = None
    if _beats(best, outlook.impossible, outlook.least):
        return best
    if best and not best.impossible:
        neck_limits = _limits(best.cost - outlook.least + 1, outlook.least_necks)
    neck = _settle(outlook.necks, NECK_WEIGHTS, neck_limits)
    if neck is None:
        return best
    if neck_limits:
        split_limits = _limits(neck_limits[-1] - neck.cost, outlook.least_splits)
    sizes = [_Size(chosen, None, None) for chosen in neck.chosen]
    splits = _settle(
        [_splits(*size, rules) for size in zip(targets, of_all, sizes, strict=True)], SPLIT_WEIGHTS, split_limits
    )
    if splits is None:
        return best
    sizes = [size._replace(split=split) for size, split in zip(sizes, splits.chosen, strict=True)]
    depths = _settle([_rounds(*size, rules) for size in zip(of_all, sizes, strict=True)], ROUNDS_WEIGHTS)
    assert depths is not None  # there is no limit
    sizes = [size._replace(rounds=depth) for size, depth in zip(sizes, depths.chosen, strict=True)]
    cost = neck.cost + splits.cost + depths.cost
    attempt = _Attempt(depths.impossible, cost, neck.impossible, neck.cost, outlook.place, tuple(sizes))
    return attempt if best is None or attempt[:5] < best[:5] else best


def _limits(spare: int, least: Sequence[int]) -> list[int]:
    """For `cheapest_chain`: below the least that all sizes cost and so much to spare.

    >>> _limits(5, [10, 20, 30])
    [15, 35, 65]
    """
    return [spare + so_far for so_far in accumulate(least)]


def _settle(shelves: Sequence[Shelf], weights: Weights, limits: Sequence[int] | None = None) -> _Settled | None:
    """The cheapest chain of the sizes that have candidates, without one that breaks it.

    With limits (see `cheapest_chain`) it is the chain of all sizes, and None where none keeps to them.
    """
    chosen: list[Candidate | None] = [None] * len(shelves)
    taking_part = [size for size, shelf in enumerate(shelves) if limits or shelf(1)]
    while True:
        chain = cheapest_chain([shelves[size] for size in taking_part], weights, limits)
        if not isinstance(chain, Broken):
            break
        taking_part = [size for place, size in enumerate(taking_part) if place not in chain.sizes]
    if chain is None:
        return None
    for size, candidate in zip(taking_part, chain.candidates, strict=True):
        chosen[size] = candidate
    return _Settled(chosen.count(None), chain.cost, chosen)


def _splits(targets: Targets, amounts: Permitted, size: _Size, rules: Rules) -> Shelf:
    if size.neck is None:
        return shelf_of(())
    return Splits(amounts, rules, size.neck.counts, floor(targets.rounds) + REACH)


def _rounds(amounts: Permitted, size: _Size, rules: Rules) -> Shelf:
    if size.neck is None or size.split is None:
        return shelf_of(())
    neck_back, neck_front, neck_sleeve = size.neck.counts
    back, sleeve, _ = size.split.counts
    front = back + 2 * amounts.front_share
    return rounds(amounts, rules, ((back - neck_back) // 2, (front - neck_front) // 2, (sleeve - neck_sleeve) // 2))


def _counts(rules: Rules, amounts: Permitted, neck: CandidateCounts, split: CandidateCounts, depth: int) -> Counts:
    back, sleeve, underarm = split
    return Counts(
        neck=Sections(*neck),
        split=Sections(back, back + 2 * amounts.front_share, sleeve),
        underarm=underarm,
        rounds=depth,
        line_to_body=rules.line_to_body,
        line_to_sleeve=rules.line_to_sleeve,
    )


def _solved(targets: Targets, rules: Rules, amounts: Permitted, size: _Size) -> Solved | None:
    neck, split, depth = size
    if neck is None or split is None or depth is None:
        return None
    counts = _counts(rules, amounts, neck.counts, split.counts, depth.counts[0])
    return Solved(counts, counts.less(targets), Fraction(neck.cost + split.cost + depth.cost, UNIT))


def _impossible(targets: Targets, rules: Rules, amounts: Permitted, size: _Size, before: Counts | None) -> Impossible:
    """Why a size has no counts, and what alone would give it some. before: of the size before it."""
    if size.neck is None:
        return _no_neck(targets, rules)
    neck = size.neck.counts
    anyhow = Splits(amounts, rules, neck, _ANY_ROUNDS)(1)
    if not anyhow:
        closer = _nearest_extra(amounts, 0, lambda eased: bool(Splits(eased, rules, neck, _ANY_ROUNDS)(1)))
        return _no_split(targets, rules, amounts, neck, closer)
    if not _splits(targets, amounts, size, rules)(1):
        counts = _counts(rules, amounts, neck, anyhow[0][1], NEAREST.round(targets.rounds))
        why = why_impossible(counts.yoke(targets.label), rules.yoke)
        closer = _nearest_extra(amounts, 0, lambda eased: bool(_splits(targets, eased, size, rules)(1)))
        return replace(why, nearest=(*why.nearest, *closer))
    if before is not None:
        least = before.split.back, before.split.sleeve, before.underarm

        def follows(eased: Permitted) -> bool:
            splits = _splits(targets, eased, size, rules)(ALL)
            return any(all(map(ge, counts, least)) for _, counts, _ in splits)

        closer = _nearest_extra(amounts, before.front_extra // 2, follows)
        if closer:
            return Impossible(ReasonCode.FRONT_EXTRA_GROWS_TOO_FAST, FRONT_EXTRA_GROWS(), closer)
    # body and sleeve rise with the size, so it is the underarm that leaves the sections less than they had
    return Impossible(
        ReasonCode.UNDERARM_GROWS_TOO_FAST,
        UNDERARM_GROWS(reach=REACH),
        () if before is None else (Nearest(("underarm",), before.underarm),),
    )


def _nearest_extra(amounts: Permitted, least: int, fits: Callable[[Permitted], bool]) -> tuple[Nearest, ...]:
    """The widest extra of the front that fits, narrower than the one asked for; none where none does.

    least: half of the narrowest one that is tried. fits: of narrower ones wherever of a wider one.
    """
    shares = range(least, amounts.front_share, 2)
    fitting = bisect_left(shares, True, key=lambda share: not fits(amounts._replace(front_share=share)))
    return (Nearest(("front_extra",), 2 * shares[fitting - 1]),) if fitting else ()


def _no_neck(targets: Targets, rules: Rules) -> Impossible:
    multiple = rules.neck.multiple
    finer = [part for part in range(1, multiple) if multiple % part == 0 and lcm(part, 4) <= 2 * REACH]
    return Impossible(
        ReasonCode.NO_PERMITTED_CAST_ON,
        NO_CAST_ON(multiple=multiple, stitches=floor(targets.neck), reach=REACH),
        (Nearest(("neck", "count_rule", "multiple"), finer[-1]),) if finer else (),
    )


def _no_split(
    targets: Targets, rules: Rules, amounts: Permitted, neck: CandidateCounts, closer: tuple[Nearest, ...]
) -> Impossible:
    """The body or the sleeve has fewer stitches than its section at the neck and the underarm need.

    closer: a narrower front that alone would do.
    """
    back, _, sleeve = neck
    underarm = NEAREST.round(targets.underarm)
    extra = 2 * amounts.front_share
    for name, target, least, saying in (
        (
            "body",
            targets.body,
            2 * back + extra + 4 * rules.line_to_body + 2 * underarm,
            BODY_EXCEEDED_BY_EXTRA if extra else BODY_EXCEEDED,
        ),
        ("sleeve", targets.sleeve, sleeve + 2 * rules.line_to_sleeve + underarm, SLEEVE_EXCEEDED),
    ):
        if target < least:
            reason = saying(stitches=floor(target), least=least)
            return Impossible(ReasonCode.NECK_TOO_WIDE, reason, (Nearest((name,), least), *closer))
    return Impossible(ReasonCode.NO_PERMITTED_COUNTS, NO_COUNTS(), closer)
