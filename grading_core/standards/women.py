"""The body table of women."""

from __future__ import annotations

from grading_core.standards.body import build_table, chest_line_notes, line
from grading_core.standards.sources import ANSUR, CYC_HEADS, CYC_WOMEN

SIZES = ("XS", "S", "M", "L", "XL", "2X", "3X", "4X", "5X")

_COPIED = (
    "cross back, back waist length and arm length are printed alike for 2X to 5X, which looks like a "
    "copied row; use with care"
)
_BEYOND = ("XS", "2X", "3X", "4X", "5X")
_MEASURED = "75 to 120 cm"

WOMEN = build_table(
    "women",
    "Women, XS to 5X",
    [
        line(
            "bust",
            SIZES,
            CYC_WOMEN,
            inch="28-30 32-34 36-38    40-42       44-46     48-50   52-54   56-58   60-62",
            cm="  71-76 81-86 91.5-96.5 101.5-106.5 111.5-117 122-127 132-137 142-147 152-158",
            notes={"5X": "62 in is 157.5 cm; 158 is printed; the inches count"},
        ),
        line(
            "back_neck_to_wrist",
            SIZES,
            CYC_WOMEN,
            inch="26-26.5 27-27.5 28-28.5 29-29.5 29-29.5 30-30.5   30.5-31 31.5-32 31.5-32",
            cm="  66-68.5 68.5-70 71-72.5 73.5-75 73.5-75 76.5-77.5 77.5-79 80-81.5 80-81.5",
            notes={"XS": "26.5 in is 67.5 cm; 68.5 is printed; the inches count"},
        ),
        line(
            "back_waist_length",
            SIZES,
            CYC_WOMEN,
            inch="16.5 17 17.25 17.5 17.75 18   18   18.5 18.5",
            cm="  42   43 43.5  44.5 45    45.5 45.5 47   47",
        ),
        line(
            "cross_back",
            SIZES,
            CYC_WOMEN,
            inch="14-14.5 14.5-15 15.5-16   16.5-17 17.5 18   18   18.5 18.5",
            cm="  35.5-37 37-38   39.5-40.5 42-43   44.5 45.5 45.5 47   47",
            notes=dict.fromkeys(("2X", "3X", "4X", "5X"), _COPIED),
        ),
        line(
            "arm_length",
            SIZES,
            CYC_WOMEN,
            inch="16.5 17 17 17.5 17.5 18   18   18.5 18.5",
            cm="  42   43 43 44.5 44.5 45.5 45.5 47   47",
        ),
        line(
            "upper_arm",
            SIZES,
            CYC_WOMEN,
            inch="9.75 10.25 11 12   13.5 15.5 17 18.5 19.5",
            cm="  25   26    28 30.5 34.5 39.5 43 47   49.5",
            notes={
                "5X": "the web edition prints 18.5 in, as for 4X, beside 49.5 cm; the booklet of 2018 prints "
                "19.5 in, which is 49.5 cm; the booklet's inches count"
            },
        ),
        line(
            "armhole_depth",
            SIZES,
            CYC_WOMEN,
            inch="6-6.5     6.5-7     7-7.5   7.5-8   8-8.5     8.5-9   9-9.5 9.5-10  10-10.5",
            cm="  15.5-16.5 16.5-17.5 17.5-19 19-20.5 20.5-21.5 21.5-23 23-24 24-25.5 25.5-26.5",
        ),
        line(
            "waist",
            SIZES,
            CYC_WOMEN,
            inch="23-24   25-26.5   28-30 32-34     36-38     40-42       44-45     46-47     49-50",
            cm="  58.5-61 63.5-67.5 71-76 81.5-86.5 91.5-96.5 101.5-106.5 111.5-114 116.5-119 124-127",
        ),
        line(
            "hip",
            SIZES,
            CYC_WOMEN,
            inch="33-34   35-36   38-40      42-44       46-48     52-53     54-55     56-57     61-62",
            cm="  83.5-86 89-91.5 96.5-101.5 106.5-111.5 116.5-122 132-134.5 137-139.5 142-144.5 155-157",
        ),
        line(
            "head",
            SIZES,
            CYC_HEADS,
            inch=" ".join(["21-23"] * len(SIZES)),
            note="one range is printed for every adult woman; no centimetres were seen",
        ),
        line(
            "wrist",
            SIZES,
            ANSUR,
            cm="14.3-14.6 14.8-15.1 15.4-15.6 15.9-16.1 16.4-16.6 16.9-17.1 17.4-17.6 17.9-18.1 18.4-18.7",
            origin="derived",
            estimated=_BEYOND,
            notes=chest_line_notes("10.78 cm + 0.050 x chest", SIZES, _BEYOND, _MEASURED),
        ),
        line(
            "neck",
            SIZES,
            ANSUR,
            cm="33.4-34.2 35.0-35.8 36.6-37.4 38.2-39.0 39.8-40.6 41.3-42.1 42.9-43.7 44.5-45.3 46.1-46.9",
            origin="derived",
            estimated=_BEYOND,
            notes=chest_line_notes("neck base: 22.33 cm + 0.156 x chest", SIZES, _BEYOND, _MEASURED),
        ),
    ],
    [
        "A bust between two columns (31, 35, 39 ... in) belongs to no size as published.",
        "The chart has no wrist and no neck: both come from another survey, of soldiers.",
        "Hip steps are uneven as published (2, 3, 4, 4, 6, 2, 2, 5 in from XS to 5X).",
    ],
)
