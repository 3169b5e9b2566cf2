"""The body table of children and youths."""

from __future__ import annotations

from grading_core.standards.body import build_table, line
from grading_core.standards.sources import CYC_CHILDREN, CYC_HEADS, NO_SOURCE, PERCENTAGES, WHO_HEADS

SIZES = ("2", "4", "6", "8", "10", "12", "14", "16")

_TWEEN = (
    "the chart's range for tweens; its range for children (18-20 in) is smaller than the median head of "
    "five years in the WHO standards (50.3 cm), so sizes 6 to 10 take this one too"
)

CHILDREN = build_table(
    "children",
    "Children and youths, 2 to 16",
    [
        line(
            "bust",
            SIZES,
            CYC_CHILDREN,
            inch="21 23   25   26.5 28 30 31.5 32.5",
            cm="  53 58.5 63.5 67   71 76 80   82.5",
        ),
        line(
            "back_neck_to_wrist",
            SIZES,
            CYC_CHILDREN,
            inch="18   19.5 20.5 22 24 26 27   28",
            cm="  45.5 49.5 52   56 61 66 68.5 71",
        ),
        line(
            "back_waist_length",
            SIZES,
            CYC_CHILDREN,
            inch="8.5  9.5 10.5 12.5 14   15 15.5 16",
            cm="  21.5 24  26.5 31.5 35.5 38 39.5 40.5",
        ),
        line(
            "cross_back",
            SIZES,
            CYC_CHILDREN,
            inch="9.25 9.75 10.25 10.75 11.25 12   12.25 13",
            cm="  23.5 25   26    27    28.5  30.5 31    33",
        ),
        line(
            "arm_length",
            SIZES,
            CYC_CHILDREN,
            inch="8.5  10.5 11.5 12.5 13.5 15 16   16.5",
            cm="  21.5 26.5 29   31.5 34.5 38 40.5 42",
        ),
        line(
            "upper_arm",
            SIZES,
            CYC_CHILDREN,
            inch="7    7.5 8    8.5  8.75 9  9.25 9.5",
            cm="  17.5 19  20.5 21.5 22   23 23.5 24",
        ),
        line(
            "armhole_depth",
            SIZES,
            CYC_CHILDREN,
            inch="4.25 4.75 5    5.5 6    6.5  7    7.5",
            cm="  10.5 12   12.5 14  15.5 16.5 17.5 19",
        ),
        line(
            "waist",
            SIZES,
            CYC_CHILDREN,
            inch="21   21.5 22.5 23.5 24.5 25   26.5 27.5",
            cm="  53.5 54.5 57   59.5 62   63.5 67.5 69.5",
        ),
        line(
            "hip",
            SIZES,
            CYC_CHILDREN,
            inch="22 23.5 25   28 29.5 31.5 33   35.5",
            cm="  56 59.5 63.5 71 75   80   83.5 90",
        ),
        line(
            "head",
            SIZES[:2],
            WHO_HEADS,
            cm="47.2-48.3 49.3-50.2",
            note="medians of girls and of boys at the age that the size names",
        )
        + line("head", SIZES[2:], CYC_HEADS, inch="20-22 20-22 20-22 20-22 20-22 20-22", note=_TWEEN),
        line(
            "wrist",
            SIZES,
            NO_SOURCE,
            cm="11.0 11.8 12.6 13.4 13.8 14.2 14.6 15.0",
            origin="estimated",
            note="0.62 x upper arm, the share at which size 16 meets the line of women at the same chest",
        ),
        line(
            "neck",
            SIZES,
            PERCENTAGES,
            cm="26.7 28.2 29.6 30.8 31.9 33.4 34.5 35.2",
            origin="estimated",
            note="50 per cent of the chest at size 2, then along the chest to the line of women at size 16",
        ),
    ],
    ["The chart has no wrist and no neck; both are estimates here: compare with a child."],
)
