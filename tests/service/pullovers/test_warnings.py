from tests.service.pullovers.answers import BABIES, named


def test_a_neck_that_does_not_pass_the_head_is_said(make):
    answer = make(labels=["M"], neck={"circumference": 34, "stretch": 0.2})
    (warning,) = named(answer["warnings"], "neck_does_not_pass_head")
    assert warning["size"] == "M"
    assert warning["pointer"] == "/neck"
    head = answer["sizes"][0]["neck"]["head"]
    assert not head["passes"]
    assert head["stretch_needed"] > 0.2


def test_babies_get_the_caution_about_neck_and_cords_in_every_size(make):
    answer = make(body_table="babies")
    cautions = named(answer["warnings"], "young_child_neck")
    assert [size["label"] for size in answer["sizes"]] == BABIES
    assert [caution["size"] for caution in cautions] == BABIES


def test_long_floats_in_a_babys_pullover_get_the_caution_about_fingers(make):
    far_apart = {"rows": ["#.........", ".........."]}
    codes = {one["code"] for one in make(body_table="babies", chart={"chart": far_apart})["warnings"]}
    grown = {one["code"] for one in make(chart={"chart": far_apart})["warnings"]}
    assert "float_can_catch_fingers" in codes - grown
