"""Requests for pullovers over HTTP, and places in their answers."""

GAUGE = {"stitches": 22, "rows": 31}

WOMEN = ["XS", "S", "M", "L", "XL", "2X", "3X", "4X", "5X"]

BABIES = ["3 months", "6 months", "12 months", "18 months", "24 months"]
DIAMOND = {"rows": ["..#..", ".###.", "#####", ".###."]}
"""Mirrored about its middle column, the third."""

CHARTED = {
    "by default": {"chart": {"chart": DIAMOND, "first_round": 3}},
    "anchored": {
        "chart": {"chart": DIAMOND, "anchor": {"back": 3, "front": 1, "sleeve": 2.5}, "first_round": 9},
        "yoke": {"line_stitches": 3, "line_to_body": 0, "seam_stitches": 1},
    },
    "on a front wider than the back": {
        "chart": {"chart": DIAMOND, "anchor": {"back": 3, "front": 1, "sleeve": 3}, "first_round": 3},
        "body": {"front_extra": {"from": 2, "to": 9}},
    },
    "once, plain where narrow": {
        "chart": {
            "chart": {**DIAMOND, "repeat": "once"},
            "minimum_width": {"body": 40, "sleeve": 20},
            "anchor": {"back": 0.5, "front": 2.5, "sleeve": 3},
        },
        "body": {"levels": [{"measurement": "waist", "below": 14}]},
    },
}


def row(answer, part, item="stitches"):
    (found,) = [one for one in answer["table"] if (one["part"], one["item"]) == (part, item)]
    return found["values"]


def numbers(answer):
    """The table by row: its numbers by size."""
    labels = [size["label"] for size in answer["sizes"]]
    return {(one["part"], one["item"]): dict(zip(labels, one["values"], strict=True)) for one in answer["table"]}


def named(warnings, code):
    return [warning for warning in warnings if warning["code"] == code]
