import pytest

from grading_core.sizes.labels import label_ranks


@pytest.mark.parametrize(
    "labels",
    [
        ("XXS", "XS", "S", "M", "L", "XL", "XXL", "3XL"),
        ("xs", "s", "m", "l", "xl", "2x", "3x"),
        ("34", "36", "100"),
        ("3 months", "6 months", "12 months"),
        ("2-4 years", "4-6 years", "6-8 years"),
        ("8.25", "8.5", "10.0"),
    ],
)
def test_labels_rank_as_the_trade_orders_them(labels):
    ranks = label_ranks(tuple(labels))
    assert list(ranks) == sorted(set(ranks))


@pytest.mark.parametrize("labels", [("A", "B"), ("M", "38"), ("M tall", "M"), ("XM", "S"), ("#", "#")])
def test_other_labels_tell_no_order(labels):
    assert label_ranks(tuple(labels)) is None
