"""Lightness against a colour science library, a colour management library, and what references and standards print."""

from __future__ import annotations

import warnings
from itertools import combinations

import numpy as np
import pytest
from PIL import Image, ImageCms

from grading_core.chart.lightness import READS_CLEARLY, grey, lightness

with warnings.catch_warnings():
    # it tells of what isn't installed for its plots
    warnings.simplefilter("ignore")
    import colour

GREYS = [(channel, channel, channel) for channel in range(256)]
LATTICE = [(red, green, blue) for red in range(0, 256, 17) for green in range(0, 256, 17) for blue in range(0, 256, 17)]


def hex_of(channels):
    return "#" + bytes(channels).hex()


def by_library(colours):
    """CIE L* as colour-science computes it: IEC 61966-2-1 to XYZ, and CIE 1976 L*a*b* under D65."""
    return colour.XYZ_to_Lab(colour.sRGB_to_XYZ(np.array(colours) / 255))[:, 0]


@pytest.mark.parametrize("colours", [GREYS, LATTICE], ids=["every grey", "every 17th of each channel"])
def test_lightness_is_what_a_colour_science_library_computes(colours):
    found = [float(lightness(hex_of(channels))) for channels in colours]
    assert found == pytest.approx(list(by_library(colours)), abs=0.001)


def test_a_colours_grey_is_the_one_of_all_256_whose_lightness_is_nearest_by_that_library():
    greys = by_library(GREYS)
    nearest = np.abs(by_library(LATTICE)[:, None] - greys).argmin(axis=1)
    assert [grey(lightness(hex_of(channels))) for channels in LATTICE] == [hex_of(GREYS[each]) for each in nearest]


@pytest.mark.parametrize("channels", GREYS[::15])
def test_a_grey_is_its_own(channels):
    assert grey(lightness(hex_of(channels))) == hex_of(channels)


@pytest.mark.parametrize(
    ("colour", "expected"),
    [
        # L* of the sRGB primaries and secondaries under D65, as colour reference pages print them (from memory)
        ("#ff0000", 53.24),
        ("#00ff00", 87.73),
        ("#0000ff", 32.30),
        ("#ffff00", 97.14),
        ("#00ffff", 91.11),
        ("#ff00ff", 60.32),
    ],
)
def test_primaries_have_the_lightness_that_references_print(colour, expected):
    assert abs(float(lightness(colour)) - expected) < 0.01


def test_greys_have_the_lightness_that_a_colour_management_library_computes():
    # greys keep their lightness whatever the white point, so the library's D50 L* is comparable
    transform = ImageCms.buildTransform(ImageCms.createProfile("sRGB"), ImageCms.createProfile("LAB"), "RGB", "LAB")
    for channel in range(0, 256, 5):
        pixel = ImageCms.applyTransform(Image.new("RGB", (1, 1), (channel, channel, channel)), transform)
        in_255ths = pixel.getpixel((0, 0))[0]
        assert abs(float(lightness(f"{channel:02x}" * 3)) - in_255ths / 2.55) < 0.3


@pytest.mark.parametrize(("colour", "ratio"), [("#767676", 4.54), ("#777777", 4.48), ("#949494", 3.03)])
def test_a_grey_has_the_luminance_of_its_published_ratio_to_white(colour, ratio):
    # (1 + 0.05) / (luminance + 0.05) (W3C, WCAG 2); the ratios of the second and third from memory
    luminance = ((float(lightness(colour)) + 16) / 116) ** 3
    assert round(1.05 / (luminance + 0.05), 2) == ratio


def relative_luminance(channel):
    """Of a grey, by WCAG 2.2's definition (W3C)."""
    part = channel / 255
    return part / 12.92 if part <= 0.04045 else ((part + 0.055) / 1.055) ** 2.4


def test_what_reads_clearly_has_the_contrast_that_wcag_asks_of_graphics():
    """At least 3:1 (WCAG 2.2, success criterion 1.4.11), for every two greys so far apart in lightness."""
    light = [(lightness(hex_of(grey)), relative_luminance(grey[0])) for grey in GREYS]
    ratios = [
        (brighter + 0.05) / (darker + 0.05)
        for (low, darker), (high, brighter) in combinations(light, 2)
        if high - low >= READS_CLEARLY
    ]
    assert len(ratios) > 10_000
    assert min(ratios) >= 3
