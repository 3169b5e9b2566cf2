"""The whole choice of counts as a model for a general solver of integer programmes.

An independent statement of the problem that `grading_core.counts.solver` solves: the identities, rules and bounds as
constraints on all sizes at once, the documented cost as the objective. Needs ortools.
"""

from __future__ import annotations

from fractions import Fraction
from math import ceil, floor, lcm

from ortools.sat.python import cp_model

from grading_core.counts.request import Rules, Targets

REACH = 6
WEIGHTS = {
    "neck": 2,
    "neck_back": 1,
    "neck_front": 1,
    "neck_sleeve": 2,
    "body": 1,
    "sleeve": 3,
    "underarm": 1,
    "rounds": 2,
}
PARITY = {"even": 0, "odd": 1}
_RISING = ("neck_back", "neck_front", "neck_sleeve", "back_split", "front_split", "sleeve_split", "underarm")


def least_cost(targets: list[Targets], rules: Rules) -> Fraction | None:
    """The cost of the optimum over all sizes, None where there is none."""
    model = cp_model.CpModel()
    back_parity, sleeve_parity = model.new_bool_var(""), model.new_bool_var("")
    for demanded, parity in ((rules.back_parity, back_parity), (rules.sleeve_parity, sleeve_parity)):
        if demanded:
            model.add(parity == PARITY[demanded])
    differences, cost, before = [], [], None
    for wanted in targets:
        size = _size(model, wanted, rules, back_parity, sleeve_parity)
        for name in (*_RISING, "rounds"):
            if before is not None:
                model.add(size[name] >= before[name])
        before = size
        differences.append(
            {name: 100 * size[name] - floor(getattr(wanted, name) * 100 + Fraction(1, 2)) for name in WEIGHTS}
        )
    for index, here in enumerate(differences):
        for name, weight in WEIGHTS.items():
            cost.append(2 * weight * _square(model, here[name]))
            if index:
                cost.append(weight * _square(model, here[name] - differences[index - 1][name]))
    model.minimize(sum(cost))
    solver = cp_model.CpSolver()
    solver.parameters.num_workers = 2
    status = solver.solve(model)
    if status == cp_model.INFEASIBLE:
        return None
    assert status == cp_model.OPTIMAL
    return Fraction(round(solver.objective_value), 20_000)


def _size(model, wanted, rules, back_parity, sleeve_parity):
    def count(name, rule=None):
        target, reach = getattr(wanted, name), max(REACH, lcm(rule.multiple, 4) if rule else 1)
        least = ceil(target) if rule and rule.rounding == "up" else ceil(target - reach)
        most = floor(target) if rule and rule.rounding == "down" else floor(target + reach)
        # a section of the neck has a stitch at least
        variable = model.new_int_var(max(int(name.startswith("neck_")), least), most, "")
        if rule:
            times = model.new_int_var(-1, 10_000, "")
            model.add(variable == rule.multiple * times + rule.plus % rule.multiple)
        return variable

    size = {
        "neck": count("neck", rules.neck),
        "neck_back": count("neck_back"),
        "neck_front": count("neck_front"),
        "neck_sleeve": count("neck_sleeve"),
        "body": count("body", rules.body),
        "sleeve": count("sleeve", rules.sleeve),
        "underarm": count("underarm"),
        "rounds": count("rounds"),
        "back_split": model.new_int_var(0, 10_000, ""),
        "front_split": model.new_int_var(0, 10_000, ""),
        "sleeve_split": model.new_int_var(0, 10_000, ""),
    }
    lines, to_body = rules.yoke.line_stitches, rules.line_to_body
    model.add(size["neck"] == size["neck_back"] + size["neck_front"] + 2 * size["neck_sleeve"] + 4 * lines)
    model.add(size["body"] == size["back_split"] + size["front_split"] + 4 * to_body + 2 * size["underarm"])
    # of the multiples of 4 the nearest to the extra wanted, the wider of two
    wider = min(range(0, 4 * ceil(wanted.front_extra) + 8, 4), key=lambda many: (abs(many - wanted.front_extra), -many))
    model.add(size["front_split"] == size["back_split"] + wider)
    model.add(size["sleeve"] == size["sleeve_split"] + 2 * (lines - to_body) + size["underarm"])
    if rules.narrower_front:
        model.add(size["neck_front"] <= size["neck_back"])
    else:
        model.add(size["neck_front"] == size["neck_back"])
    for name, parity in (("neck_back", back_parity), ("neck_front", back_parity), ("neck_sleeve", sleeve_parity)):
        model.add(size[name] == 2 * model.new_int_var(0, 10_000, "") + parity)
    if rules.seam_stitches is not None:
        model.add(size["underarm"] == 2 * model.new_int_var(-50, 10_000, "") + rules.seam_stitches)
    # increases at each edge, and rounds of the grid
    increases = {}
    for name, split, neck in (
        ("back", "back_split", "neck_back"),
        ("front", "front_split", "neck_front"),
        ("sleeve", "sleeve_split", "neck_sleeve"),
    ):
        increases[name] = model.new_int_var(0, 10_000, "")
        model.add(size[split] == size[neck] + 2 * increases[name])
    room = model.new_int_var(0, 10_000, "")
    yoke = rules.yoke
    model.add(yoke.first + yoke.step * (room - 1) + yoke.plain_rounds_at_end <= size["rounds"])
    twice = 2 if yoke.double_body == "if_needed" else 1
    model.add(increases["back"] <= twice * room)
    model.add(increases["front"] <= twice * room)
    model.add(increases["sleeve"] <= room)
    return size


def _square(model, expression):
    square = model.new_int_var(0, 10**9, "")
    difference = model.new_int_var(-30_000, 30_000, "")
    model.add(difference == expression)
    model.add_multiplication_equality(square, [difference, difference])
    return square
