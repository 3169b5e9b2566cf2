"""The body table of babies."""

from __future__ import annotations

from grading_core.standards.body import build_table, line
from grading_core.standards.sources import CYC_BABIES, NO_SOURCE, PERCENTAGES, WHO_HEADS

SIZES = ("3 months", "6 months", "12 months", "18 months", "24 months")

BABIES = build_table(
    "babies",
    "Babies, 3 to 24 months",
    [
        line("bust", SIZES, CYC_BABIES, inch="16 17 18 19 20", cm="40.5 43 45.5 48 50.5"),
        line(
            "back_neck_to_wrist",
            SIZES,
            CYC_BABIES,
            inch="10.5 11.5 12.5 14 18",
            cm="26.5 29 31.5 35.5 45.5",
            notes={"24 months": "a leap of 4 in after 18 months, as published; it meets size 2 of the children"},
        ),
        line("back_waist_length", SIZES, CYC_BABIES, inch="6 7 7.5 8 8.5", cm="15.5 17.5 19 20.5 21.5"),
        line("cross_back", SIZES, CYC_BABIES, inch="7.25 7.75 8.25 8.5 8.75", cm="18.5 19.5 21 21.5 22"),
        line("arm_length", SIZES, CYC_BABIES, inch="6 6.5 7.5 8 8.5", cm="15.5 16.5 19 20.5 21.5"),
        line("upper_arm", SIZES, CYC_BABIES, inch="5.5 6 6.5 7 7.5", cm="14 15.5 16.5 17.5 19"),
        line("armhole_depth", SIZES, CYC_BABIES, inch="3.25 3.5 3.75 4 4.25", cm="8.5 9 9.5 10 10.5"),
        line("waist", SIZES, CYC_BABIES, inch="18 19 20 20.5 21", cm="45.5 48 50.5 52 53.5"),
        line("hip", SIZES, CYC_BABIES, inch="19 20 20 21 22", cm="48 50.5 50.5 53.5 56"),
        line(
            "head",
            SIZES,
            WHO_HEADS,
            cm="39.5-40.5 42.2-43.3 44.9-46.1 46.2-47.4 47.2-48.3",
            note="medians of girls and of boys at the age that the size names; the head chart of the size "
            "charts' publisher has one range for every baby (14-16 in), which a head of 12 months exceeds",
        ),
        line(
            "wrist",
            SIZES,
            NO_SOURCE,
            cm="8.7 9.4 10.2 11.0 11.8",
            origin="estimated",
            note="0.62 x upper arm, as for children",
        ),
        line(
            "neck",
            SIZES,
            PERCENTAGES,
            cm="24.4 24.6 24.9 25.1 25.4",
            origin="estimated",
            note="60 per cent of the chest at 3 months, then along the chest to 50 per cent at 24 months",
        ),
    ],
    ["The chart has no wrist and no neck; both are estimates here: compare with a baby."],
)
