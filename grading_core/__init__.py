"""The craft of grading hand-knitted pullovers: pure computation, standard library only.

Conventions: a length is a `fractions.Fraction` of centimetres, a count an int, a gauge exact stitches and rows
per cm (`gauge.Gauge`). Requests and results are frozen dataclasses whose field names are those of the HTTP
contract. What contradicts itself raises `errors.ContradictionError`, every wrong place at once; what cannot be
knitted is answered with an `errors.Impossible`, and the other sizes are computed.

Where to begin:

conversions.convert              lengths and counts at a gauge, and at another one
sizing.grade_sizes               body and ease to counts and finished measurements
size_choice.match_sizes          which size to choose
schedules.raglan_schedules       where every increase falls, in every size
schedules.yoke_adjustments       the same yokes deeper or shallower
shaping_plans.shaping_schedules  any increases or decreases over rows, or across a row
chart_placement.place_charts     where a colourwork chart starts, in every round, section and size
pullover.grade_pullover          the whole garment in every size
yarn_estimates.yarn_estimates    the yarn of every colour and size; yarn.held_together for strands
standards                        the published tables that are built in
"""
