"""The defaults of a pullover against measured people, where the published size charts are silent.

ANSUR II (US Army, 2012; 1,986 women and 4,082 men of 17 to 58 years), our computation from the public records. Lengths
are in cm, p05 and p95 percentiles.
"""

from __future__ import annotations

from fractions import Fraction
from functools import cache

import pytest

from grading_core.gauge import Gauge
from grading_core.pullover.grade import grade_pullover
from grading_core.pullover.request import Gauges, PulloverRequest, SleeveWishes

GAUGES = [(16, 22), (22, 31), (30, 42)]

# chest from, below; wrist p95; neck base mean
BY_CHEST = {
    "women": [(80, 85, 15.9, 35.4), (90, 95, 16.5, 36.91), (100, 105, 17.0, 38.25), (110, 115, 17.3, 39.99)],
    "men": [
        (85, 90, 17.5, 39.49),
        (95, 100, 18.3, 41.65),
        (105, 110, 18.7, 43.69),
        (115, 120, 19.7, 45.98),
        (125, 130, 20.6, 48.46),
    ],
}
# of all
HEAD_P95 = {"women": 59.7, "men": 60.1}
HAND_P95 = {"women": 20.2, "men": 23.0}
FOREARM_MEAN = {"women": 26.41, "men": 31.01}

everyone = pytest.mark.parametrize(("table", "gauge"), [(table, gauge) for table in BY_CHEST for gauge in GAUGES])


@cache
def knit(table, gauge, style="long"):
    stitches, rows = map(Fraction, gauge)
    request = PulloverRequest(
        gauges=Gauges(Gauge.over(stitches, rows, Fraction(10))), body_table=table, sleeve=SleeveWishes(style=style)
    )
    return [size.outcome for size in grade_pullover(request).sizes]


def measured(table, gauge, style="long"):
    """Each size whose chest is that of measured people, with their figures."""
    for size, bust in zip(knit(table, gauge, style), BUSTS[table], strict=True):
        for low, high, *figures in BY_CHEST[table]:
            if low <= bust < high:
                yield size, figures


# the charts' busts in cm: 29 in to 61 in, 35 in to 63 in, in steps of 4 in
BUSTS = {"women": [2.54 * inch for inch in range(29, 62, 4)], "men": [2.54 * inch for inch in range(35, 64, 4)]}


@everyone
def test_a_cuff_has_room_for_95_in_100_wrists_of_that_chest(table, gauge):
    compared = [(size.finished.wrist, wrist) for size, (wrist, _) in measured(table, gauge)]
    assert len(compared) >= 4
    assert all(cuff >= wrist for cuff, wrist in compared)


@everyone
def test_a_cuff_of_rib_stretches_over_95_in_100_hands(table, gauge):
    # by two fifths, as the neck does
    assert all(size.finished.wrist * 1.4 >= HAND_P95[table] for size in knit(table, gauge))


@everyone
def test_a_neck_lies_outside_the_neck_base_of_its_chest_and_within_a_quarter_of_it(table, gauge):
    # the band, an inch high, fills what lies between
    compared = [(float(size.finished.neck), base) for size, (_, base) in measured(table, gauge)]
    assert len(compared) >= 4
    assert all(base <= neck <= 1.3 * base for neck, base in compared)


@everyone
def test_a_neck_stretched_by_half_passes_95_in_100_heads(table, gauge):
    # a stretchy cast-on (common practice, no source)
    assert all(float(size.neck.edge_cm) * 1.5 >= HEAD_P95[table] for size in knit(table, gauge))


@everyone
def test_an_elbow_sleeve_holds_the_flexed_forearm_of_a_middle_size(table, gauge):
    # the forearm's widest place lies just below the elbow; the middle chest of these people is about 94 and 106 cm
    middle = {"women": 2, "men": 2}[table]
    elbow = knit(table, gauge, "elbow")[middle].finished.wrist
    assert FOREARM_MEAN[table] * 0.95 <= elbow <= FOREARM_MEAN[table] * 1.25
