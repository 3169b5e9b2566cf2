"""Yokes at random, the same in every run."""

import random
from fractions import Fraction

from grading_core.gauge import Gauge
from grading_core.sections import Increases, Sections
from grading_core.shaping import Spacing
from grading_core.yoke.request import Options, Yoke
from grading_core.yoke.result import Schedule
from grading_core.yoke.schedule import schedule

GAUGE = Gauge.over(Fraction(22), Fraction(31), Fraction(10))
NECK = Sections(34, 36, 11)
SPACINGS: tuple[Spacing, ...] = ("closest_first", "widest_first", "even", "single_then_plain", "plain_then_single")


def yoke_of(rounds: int, increases: Increases, neck: Sections = NECK) -> Yoke:
    return Yoke("S", rounds, neck, neck.after(increases))


def random_options(generator: random.Random) -> Options:
    step = generator.choice((1, 2))
    return Options(
        line_stitches=generator.randint(0, 8),
        step=step,
        first_increase_round=generator.choice((None, None, 1, 2, 3, 6)),
        plain_rounds_at_end=generator.choice((0, 0, 1, 2, 5)),
        spacing=generator.choice(SPACINGS),
        fewer_edge=generator.choice(("early", "even", "late")),
        double_body=generator.choice(("never", "if_needed")),
        double_where=generator.choice(("early", "even", "late")),
    )


def random_case(generator: random.Random) -> tuple[Yoke, Options]:
    rounds = generator.randint(1, 40)
    body = generator.randint(0, rounds)
    front = body if generator.random() < 0.7 else max(0, body - generator.randint(0, 3))
    sleeve = generator.randint(0, max(1, rounds // 2))
    return yoke_of(rounds, (body, front, sleeve)), random_options(generator)


def random_cases(seed: int, many: int) -> list[tuple[Yoke, Options]]:
    generator = random.Random(seed)
    return [random_case(generator) for _ in range(many)]


def random_schedules(seed: int, many: int) -> list[tuple[Options, Schedule]]:
    """The schedules of random yokes: six in ten, nearly all with increases and one in twenty with doubled ones."""
    made = [(options, schedule(yoke, options, GAUGE)) for yoke, options in random_cases(seed, many)]
    schedules = [(options, found) for options, found in made if isinstance(found, Schedule)]
    assert 10 * len(schedules) >= 6 * many
    assert 10 * sum(bool(found.increase_rounds) for _, found in schedules) >= 9 * len(schedules)
    doubled = [found for _, found in schedules if any(max(each.increases) == 2 for each in found.increase_rounds)]
    assert 20 * len(doubled) >= many
    return schedules
