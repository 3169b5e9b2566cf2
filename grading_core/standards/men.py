"""The body table of men."""

from __future__ import annotations

from grading_core.standards.body import build_table, chest_line_notes, line
from grading_core.standards.sources import ANSUR, CYC_HEADS, CYC_MEN

SIZES = ("S", "M", "L", "XL", "2X", "3X", "4X", "5X")

_HIP_LENGTH = (
    "the web edition calls this row back waist length, the booklet of 2018 back hip length; the figures "
    "are hip lengths and are kept as such"
)
_BEYOND = ("3X", "4X", "5X")
_MEASURED = "85 to 130 cm"

MEN = build_table(
    "men",
    "Men, S to 5X",
    [
        line(
            "bust",
            SIZES,
            CYC_MEN,
            inch="34-36   38-40      42-44       46-48     50-52   54-56   58-60     62-64",
            cm="  86-91.5 96.5-101.5 106.5-111.5 116.5-122 127-132 137-142 147.5-152 157.5-162.5",
        ),
        line(
            "back_neck_to_wrist",
            SIZES,
            CYC_MEN,
            inch="32-32.5 33-33.5 34-34.5   35-35.5 36-36.5   37-37.5 38-38.5   39-39.5",
            cm="  81-82.5 83.5-85 86.5-87.5 89-90   91.5-92.5 94-95   96.5-97.5 99-100.5",
        ),
        line(
            "back_hip_length",
            SIZES,
            CYC_MEN,
            inch="23-24   25-26   26-27   28 29   30 30 31",
            cm="  58.5-61 63.5-66 66-68.5 71 73.5 76 76 79",
            note=_HIP_LENGTH,
        ),
        line(
            "back_waist_length",
            SIZES,
            ANSUR,
            cm="44.7-45.5 46.3-47.1 47.9-48.7 49.5-50.3 51.1-51.9 52.7-53.5 54.3-55.1 55.9-56.7",
            origin="derived",
            estimated=_BEYOND,
            notes=chest_line_notes("to the waist at the navel: 31.03 cm + 0.158 x chest", SIZES, _BEYOND, _MEASURED),
        ),
        line(
            "cross_back",
            SIZES,
            CYC_MEN,
            inch="15.5-16   16.5-17 17.5-18   18-18.5 19-20 20-21 21-21.5 22-22.5",
            cm="  39.5-40.5 42-43   44.5-45.5 45.5-47 48-51 48-51 51-54.5 56-57",
            notes={
                "3X": "the centimetres repeat those of 2X; 20-21 in is 51-53.5 cm; the inches count",
                "4X": "21 in is 53.5 cm; 51 is printed; the inches count",
            },
        ),
        line(
            "arm_length",
            SIZES,
            CYC_MEN,
            inch="18   18.5 19.5 20   20.5 20.5 21   21.5",
            cm="  45.5 47   49.5 50.5 52   52   49.5 53.5-54.5",
            notes={
                "4X": "21 in is 53.5 cm; 49.5 is printed; the inches count",
                "5X": "a range in cm beside one figure in inches (21.5 in is 54.5 cm); the inches count",
            },
        ),
        line(
            "upper_arm",
            SIZES,
            CYC_MEN,
            inch="12   13 15 15.5 16.5 17.5 18.5 20",
            cm="  30.5 33 38 39.5 42   44.5 47   48",
            notes={"5X": "20 in is 51 cm; 48 is printed; the inches count"},
        ),
        line(
            "armhole_depth",
            SIZES,
            CYC_MEN,
            inch="8.5-9   9-9.5 9.5-10  10-10.5 11 11.5 12   12.5",
            cm="  21.5-23 23-24 24-25.5 25.5-26 28 29   30.5 32",
            notes={"XL": "10.5 in is 26.5 cm; 26 is printed; the inches count"},
        ),
        line(
            "waist",
            SIZES,
            CYC_MEN,
            inch="28-30 32-34     36-38     42-44     46-48   50-52   54-56   58-60",
            cm="  71-76 81.5-86.5 91.5-96.5 106.5-112 117-122 127-132 137-142 147.5-152.5",
        ),
        line(
            "hip",
            SIZES,
            CYC_MEN,
            inch="35-37 39-41  43-45   47-49     51-53   54-56   56-58     58-60",
            cm="  89-94 99-104 109-114 119-124.5 129-134 137-142 142-147.5 147.5-152.5",
            notes={"2X": "51-53 in is 129.5-134.5 cm; 129-134 is printed; the inches count"},
        ),
        line(
            "head",
            SIZES,
            CYC_HEADS,
            inch=" ".join(["22-24"] * len(SIZES)),
            note="one range is printed for every adult man; no centimetres were seen",
        ),
        line(
            "wrist",
            SIZES,
            ANSUR,
            cm="16.4-16.7 17.0-17.3 17.6-18.0 18.3-18.6 18.9-19.2 19.5-19.8 20.2-20.5 20.8-21.1",
            origin="derived",
            estimated=_BEYOND,
            notes=chest_line_notes("11.03 cm + 0.062 x chest", SIZES, _BEYOND, _MEASURED),
        ),
        line(
            "neck",
            SIZES,
            ANSUR,
            cm="39.2-40.3 41.4-42.5 43.6-44.7 45.9-47.0 48.1-49.2 50.3-51.5 52.6-53.7 54.8-55.9",
            origin="derived",
            estimated=_BEYOND,
            notes=chest_line_notes("neck base: 20.16 cm + 0.220 x chest", SIZES, _BEYOND, _MEASURED),
        ),
    ],
    [
        "A chest between two columns (37, 41, 45 ... in) belongs to no size as published.",
        "The chart has no wrist, neck and back waist length: they come from another survey, of soldiers.",
        "The waist rises 6 in from L to XL and 4 in elsewhere, as published.",
    ],
)
