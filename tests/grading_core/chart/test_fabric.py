"""Colours and floats of rounds that are written out."""

from grading_core.chart.fabric import Stretch, Windows, survey


def ring(stitches):
    """A round whose every stitch is drawn."""
    return None, tuple(Stretch(1, None, colour) for colour in stitches)


def longest(*rounds):
    found = survey(Windows([]), map(ring, rounds))
    return [*zip(found.floats, found.float_colours, strict=True)]


def test_a_float_lies_between_two_stitches_of_its_colour():
    assert longest("..#....#...") == [(4, "#")]


def test_one_stitch_of_a_colour_carries_no_float_in_its_round():
    assert longest("......#....") == [(1, ".")]


def test_a_round_of_one_colour_has_no_float():
    assert longest("........") == [(0, None)]


def test_a_float_over_the_rounds_start_joins_both_ends_and_counts_for_the_later_round():
    assert longest("..#.....", "....#...") == [(1, "."), (9, "#")]


def test_no_float_passes_a_round_that_does_not_use_the_colour():
    assert longest("..#.....", "........", "....#...") == [(1, "."), (0, None), (1, ".")]
