"""Colours and floats of rounds that are written out."""

from grading_core.chart.fabric import Stretch, Windows, survey


def ring(stitches):
    """A round whose every stitch is drawn."""
    each = tuple(Stretch(1, None, colour) for colour in stitches)
    half = len(each) // 2
    return None, each[:half], each[half:]


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


def test_a_float_lies_between_the_halves_of_a_round_that_repeats_itself():
    assert longest("..#..#") == [(2, "#")]


def test_a_float_over_the_start_of_a_round_follows_one_that_repeats_itself():
    assert longest("..#..#", "#.....") == [(2, "#"), (2, ".")]


def test_of_floats_as_long_the_first_one_met_names_the_colour_of_a_round_that_repeats_itself():
    assert longest("#.#.") == [(1, "#")]


def test_both_halves_of_a_round_that_repeats_itself_are_counted():
    found = survey(Windows([]), [ring("..#..#")])
    assert (found.colours, found.stitches, found.carried) == ([2], {".": 4, "#": 2}, {".": 1, "#": 2})


def test_rows_that_are_alike_have_the_same_windows():
    windows = Windows(["..#", "#..", "..#"])
    assert windows[0] is windows[2]
    assert windows[0] is not windows[1]
