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


def test_body_increases_that_end_early_are_said_with_size_rounds_and_cm(make):
    answer = make(labels=["M"], yoke={"spacing": "single_then_plain", "depth": 30})
    (warning,) = named(answer["warnings"], "increases_end_early")
    yoke = answer["sizes"][0]["yoke"]
    straight = yoke["rounds"] - max(each["round"] for each in yoke["increase_rounds"] if each["body"])
    assert straight > yoke["rounds"] / 5
    assert warning["size"] == "M"
    # 31 rounds to 10 cm
    length = f"{straight * 10 / 31:.1f}".removesuffix(".0")
    assert f"{straight} rounds ({length} cm)" in warning["message"]
    calm = make(labels=["M"], yoke={"depth": 30})
    assert not named(calm["warnings"], "increases_end_early")


def test_increases_in_many_rounds_in_a_row_are_said_for_an_asked_depth_and_for_a_change(make):
    for request in ({"yoke": {"depth": 12, "step": 1}}, {"yoke": {"depth": 24}, "changes": {"yoke": {"depth": 12}}}):
        answer = make(labels=["M"], **request)
        worked = [each["round"] for each in answer["sizes"][0]["yoke"]["increase_rounds"]]
        # the longest stretch of rounds without one missing
        streak = max(len(run) for run in "".join(".x"[n in worked] for n in range(1, max(worked) + 1)).split("."))
        (warning,) = named(answer["warnings"], "many_increase_rounds_in_a_row")
        assert streak > 8
        assert f"{streak} increase rounds" in warning["message"]


def test_what_would_leave_rules_that_contradict_each_other_is_no_cause(make):
    # with the usual shares back and front are alike: even sections and 24 line stitches aren't a multiple of 8 plus 2
    answer = make(
        labels=["L"],
        neck={"shares": {"back": 30, "front": 24, "sleeve": 9}, "count_rule": {"multiple": 8, "plus": 2}},
        yoke={"line_stitches": 6, "depth": 16, "step": 1},
        chart={"chart": {"rows": ["....", "...."]}},
    )
    (warning,) = named(answer["warnings"], "armhole_below_body")
    assert "shares" not in warning["message"]
