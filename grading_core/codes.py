"""The codes by which programs tell what is wrong, what is impossible and what is warned of: each with its meaning.

One code stands for what a program would treat in one way, however many sentences say it to people. A code keeps its
meaning; new ones may be added.
"""

from __future__ import annotations

from enum import StrEnum
from typing import Self


class Code(StrEnum):
    """Base of all codes: a word for programs, and what it means.

    >>> ProblemCode("duplicate_label") is ProblemCode.DUPLICATE_LABEL
    True
    """

    meaning: str

    def __new__(cls, code: str, meaning: str) -> Self:
        """A member. code: the word. meaning: a sentence."""
        member = str.__new__(cls, code)
        member._value_ = code
        member.meaning = meaning
        return member


class ProblemCode(Code):
    """How a request contradicts itself."""

    # sizes and bodies
    DUPLICATE_LABEL = "duplicate_label", "Another size has this label already."
    LABEL_NOT_IN_TABLE = "label_not_in_table", "The body table has no size of this label."
    LABELS_BESIDE_SIZES = "labels_beside_sizes", "Labels pick sizes of a table, and sizes were sent as well."
    UNKNOWN_SIZE = "unknown_size", "No size of the request has this label."
    UNKNOWN_TABLE = "unknown_table", "There is no body table of this name."
    NO_SIZES = "no_sizes", "There is no size to compute."
    MISSING_MEASUREMENT = "missing_measurement", "A size lacks a measurement that it needs."
    UNUSED_MEASUREMENT = "unused_measurement", "Ease or a rule is for a measurement that nothing here has."
    BUST_OUTSIDE_TABLE = "bust_outside_table", "A size lies beyond the table that is to complete it."
    SIZES_DO_NOT_RISE = "sizes_do_not_rise", "A body measurement of a larger size is smaller than a smaller size's."
    MEASUREMENT_FALLS = "measurement_falls", "A length that is asked makes a measurement fall from a size to a larger."
    WRONG_NUMBER_OF_VALUES = "wrong_number_of_values", "A list has another number of values than there are sizes."
    NOTHING_LEFT = "nothing_left", "What is asked leaves no width, length or stitch."
    LESS_THAN_NOTHING = "less_than_nothing", "What may be 0 or more comes to less than 0 in a size."

    # choosing a size
    MISSING_OFFER = "missing_offer", "Exactly one of finished sizes and a grading has to say which sizes there are."
    MISSING_WISH = "missing_wish", "A garment, or a body with its ease, has to say what is wanted."
    EASE_BESIDE_GARMENT = "ease_beside_garment", "A garment that fits has its ease already, and another was sent."
    MISSING_WRITTEN_GAUGE = "missing_written_gauge", "An own gauge has no written gauge to be compared with."
    GAUGES_DIFFER = "gauges_differ", "Two gauges that have to be the same are not."

    # counts, rounds and limits
    SPLIT_BELOW_NECK = "split_below_neck", "A section has fewer stitches at the split than at the neck."
    ODD_DIFFERENCE = "odd_difference", "A difference that two edges share is odd."
    NOT_A_MULTIPLE = "not_a_multiple", "A number of stitches is no multiple of what it has to be a multiple of."
    PLAIN_EXCEEDS_ROWS = "plain_exceeds_rows", "More rows are to stay plain than there are."
    ROUND_OUT_OF_RANGE = "round_out_of_range", "A round, or a number of rounds, lies outside what the part can have."
    DUPLICATE_ROUND = "duplicate_round", "A round is listed twice."
    ROUNDS_OUT_OF_ORDER = "rounds_out_of_order", "A round does not come after the one that is listed before it."
    ROUND_WITHOUT_INCREASE = "round_without_increase", "A round that is listed as an increase round has no increase."
    INCREASES_DO_NOT_ADD_UP = "increases_do_not_add_up", "The increases listed do not lead from the neck to the split."
    MISSING_ADJUSTMENT = "missing_adjustment", "Neither the size nor the request says how the yoke is to change."
    TOO_MANY_ROUNDS = "too_many_rounds", "The rounds are more than one answer holds."
    TOO_MANY_STRANDS = "too_many_strands", "The strands of all yarns are more than one answer holds."
    TOO_MANY_STITCHES = "too_many_stitches", "The stitches are more than a section or a picture can have."
    TOO_MANY_SHEETS = "too_many_sheets", "The sheets of paper are more than a picture can have."

    # charts
    NO_CHART = "no_chart", "What is asked needs a chart, and none was sent."
    EMPTY_CHART = "empty_chart", "The chart has no row or no stitch."
    UNEVEN_ROWS = "uneven_rows", "A row of the chart has another number of stitches than the first."
    UNKNOWN_SYMBOL = "unknown_symbol", "A symbol is not among the chart's colours."
    DUPLICATE_SYMBOL = "duplicate_symbol", "A symbol is listed twice."
    MOTIFS_DO_NOT_FILL_CHART = "motifs_do_not_fill_chart", "A motif's columns do not divide the chart's."
    ANCHOR_BETWEEN_HALVES = "anchor_between_halves", "An anchor is neither a whole number nor a half."
    ANCHOR_OUTSIDE_CHART = "anchor_outside_chart", "An anchor lies outside the chart's columns."
    ANCHORS_DISAGREE = "anchors_disagree", "Back and front take a whole column both, or both a half."
    HALF_STITCH_OFF_CENTRE = "half_stitch_off_centre", "A count and its anchor cannot be centred on one another."

    # parts of a pullover
    FRONT_WIDER_THAN_BACK = "front_wider_than_back", "The front is wider than the back at the neck."
    MORE_THAN_LINE_HAS = "more_than_line_has", "More stitches of a raglan line are to go to the body than it has."
    DARTS_CUT_CHART = "darts_cut_chart", "Short rows over the bust would cut a chart that runs on."
    LEVELS_OUT_OF_ORDER = "levels_out_of_order", "A level of the body does not lie below the one before it."
    CONFLICTING_RULES = "conflicting_rules", "Rules for counts cannot all be kept."
    KEEP_COUNTS_NEEDS_GAUGE = "keep_counts_needs_gauge", "Counts are to be kept, and no gauge says at which."
    RIB_OFF_COUNT_RULE = "rib_off_count_rule", "A rib does not come out even in the counts that its count rule permits."
    NOT_BESIDE_KEEP_COUNTS = "not_beside_keep_counts", "A change makes other counts, and the counts are to be kept."

    # yarn
    HALF_A_SWATCH = "half_a_swatch", "Of a swatch only the weight is known, or only the stitches."
    MAIN_COLOUR_MISSING = "main_colour_missing", "Of several colours none is told to be the pullover's own."
    MAIN_COLOUR_BESIDE_CHART = "main_colour_beside_chart", "A main colour is sent where the chart says what is plain."
    MAIN_COLOUR_CHANGED = "main_colour_changed", "A maker's yarn has another main colour than the design."
    COLOUR_WITHOUT_YARN = "colour_without_yarn", "A colour of the garment has no yarn, where each has its own."
    SWATCH_TOO_LIGHT = "swatch_too_light", "A swatch weighs less than its floats alone."
    NO_BASIS_FOR_YARN = "no_basis_for_yarn", "A yarn has neither a weighed swatch nor a gauge to be estimated from."
    FLOATS_NEED_GAUGE = "floats_need_gauge", "Floats are sent, and no gauge says how wide they are."
    UNKNOWN_YARN = "unknown_yarn", "No yarn of the request has this name."

    # proofs
    UNREADABLE_RUN = "unreadable_run", "A text is no number and no size run."
    NO_NUMBERS = "no_numbers", "A row has no numbers at all."
    DUPLICATE_ROW = "duplicate_row", "Another row has this part and item already."
    OTHER_UNIT = "other_unit", "A row is in a unit that its numbers can't have."


class ReasonCode(Code):
    """Why what is asked cannot be knitted."""

    # shaping and yokes
    TOO_FEW_ROUNDS = "too_few_rounds", "The increases or decreases need more rounds or rows than there are."
    TOO_FEW_STITCHES = "too_few_stitches", "A row has too few stitches for its increases or decreases."
    WRITTEN_YOKE_IMPOSSIBLE = "written_yoke_impossible", "The yoke that is to be adjusted is impossible itself."
    FOR_DEEPER_YOKES = "for_deeper_yokes", "This way makes a yoke deeper, and none deeper is asked."
    FOR_SHALLOWER_YOKES = "for_shallower_yokes", "This way makes a yoke shallower, and none shallower is asked."
    YOKE_TOO_SHALLOW = "yoke_too_shallow", "This way cannot make the yoke as shallow as asked."
    NO_WAY_TO_ADJUST = "no_way_to_adjust", "No way makes the yoke as deep or as shallow as asked."

    # measurements
    NOTHING_LEFT = "nothing_left", "What is asked leaves nothing of a measurement."
    NECK_TOO_NARROW = "neck_too_narrow", "The neck has too few stitches without the raglan lines."

    # counts of all sizes
    NO_PERMITTED_CAST_ON = "no_permitted_cast_on", "No multiple of the cast-on's rule lies near enough to its width."
    NECK_TOO_WIDE = "neck_too_wide", "Neck, lines and underarm have more stitches than the body or the sleeve."
    NO_PERMITTED_COUNTS = "no_permitted_counts", "No permitted counts of body, sleeve and underarm go together."
    UNDERARM_GROWS_TOO_FAST = "underarm_grows_too_fast", "The underarm grows faster than body or sleeve."
    FRONT_EXTRA_GROWS_TOO_FAST = "front_extra_grows_too_fast", "The front's extra width takes from the back of a size."

    # parts
    FRONT_DROP_TOO_DEEP = "front_drop_too_deep", "The front drop has more rows than the yoke has rounds for."
    FRONT_TOO_NARROW = "front_too_narrow", "The front has too few stitches to be parted for a front drop."
    BACK_TOO_HIGH = "back_too_high", "The short rows that raise the back have no room for their turns."
    DARTS_WITHOUT_ROUND = "darts_without_round", "No plain round near the bust has room for short rows."
    DARTS_TOO_DEEP = "darts_too_deep", "The short rows over the bust have no room for their turns."
    BODY_TOO_SHORT = "body_too_short", "What is to happen in the body lies below its hem."
    BACK_TOO_NARROW = "back_too_narrow", "The front's extra width leaves the back too few stitches."
    SEAMS_TOO_WIDE = "seams_too_wide", "The seam stitches leave nothing of a part, or are more than the underarm."


class WarningCode(Code):
    """What deserves a word beside a right answer."""

    # gauge and sizes
    GAUGE_FAR_FROM_PATTERN = "gauge_far_from_pattern", "The gauge is further off than other needles can bring it."
    COUNT_OFF_RULE = "count_off_rule", "A written count is not one that its rule permits."
    ROUNDED_TO_NOTHING = "rounded_to_nothing", "A length is so short that no stitch or row is left."
    NOTHING_TO_KNIT = "nothing_to_knit", "A measurement rounds to no stitch or row at all."
    ESTIMATED_BODY = "estimated_body", "A body measurement is an estimate, since no published table reaches it."
    EASE_BELOW_PUBLISHED_FITS = "ease_below_published_fits", "The ease is below the closest published fit."
    BELOW_EVERY_SIZE = "below_every_size", "The smallest size is still larger than wanted."
    ABOVE_EVERY_SIZE = "above_every_size", "The largest size is still smaller than wanted."

    # yokes
    INCREASES_END_EARLY = "increases_end_early", "The last body increase lies far above the split."
    MANY_INCREASE_ROUNDS_IN_A_ROW = (
        "many_increase_rounds_in_a_row",
        "Many increase rounds follow one another without a round between.",
    )
    DOUBLE_BODY_EQUALS_CLOSER = "double_body_equals_closer", "Two ways to adjust a yoke come to the same schedule."
    YOKE_DEEPER_THAN_USUAL = "yoke_deeper_than_usual", "The yoke is much deeper than it usually is for this size."
    YOKE_SHALLOWER_THAN_USUAL = (
        "yoke_shallower_than_usual",
        "The yoke is much shallower than it usually is for this size.",
    )

    # charts
    HALF_STITCH_OFF_CENTRE = "half_stitch_off_centre", "A section's centre lies half a stitch before its anchor."
    ANCHOR_OFF_MIRROR_AXIS = ("anchor_off_mirror_axis", "A section is not centred on a mirror axis of the chart.")
    BODY_CUTS_CHART = "body_cuts_chart", "The body ends before the chart does."
    SLEEVE_CUTS_CHART = "sleeve_cuts_chart", "The sleeve ends before the chart does."
    BODY_LONGER_FOR_CHART = "body_longer_for_chart", "The body is made longer so that its chart is finished."
    SLEEVE_LONGER_FOR_CHART = "sleeve_longer_for_chart", "The sleeve is made longer so that its chart is finished."
    SLEEVE_PLAIN_AGAIN = "sleeve_plain_again", "The sleeve becomes too narrow for the motif further down."
    MORE_THAN_TWO_COLOURS = "more_than_two_colours", "Some rounds use more than two colours at once."
    LONG_FLOAT = "long_float", "A float is longer than the limit."
    FLOAT_CAN_CATCH_FINGERS = "float_can_catch_fingers", "A float inside a child's garment can catch fingers."
    LOW_CONTRAST = "low_contrast", "Two colours that meet are about equally light, and hardly read apart."
    CHART_STARTS_BEFORE_BACK = "chart_starts_before_back", "Floats over the start of the round lie elsewhere."

    # fit
    FAR_FROM_WANTED = "far_from_wanted", "A measurement comes out far from what is wanted."
    GIRTH_BELOW_BODY = "girth_below_body", "A girth is smaller than the body's: it is worn stretched."
    ARMHOLE_BELOW_BODY = "armhole_below_body", "The armhole is less deep than the body's."
    CUFF_TOO_TIGHT_FOR_HAND = "cuff_too_tight_for_hand", "The cuff does not stretch over the hand."
    CUFF_BINDS = "cuff_binds", "The cuff is narrower than the arm where it ends."
    NECK_WIDER_THAN_SHOULDERS = "neck_wider_than_shoulders", "The neck is so wide that it may slip off the shoulders."
    NECK_DOES_NOT_PASS_HEAD = "neck_does_not_pass_head", "The neck does not stretch over the head."
    YOUNG_CHILD_NECK = "young_child_neck", "The neck is a young child's: nothing may tighten round it."
    TOTAL_LENGTH_FALLS = "total_length_falls", "The total length falls from a size to a larger one."
    TOTAL_LENGTH_JUMPS = "total_length_jumps", "The total length grows much from a size to the next."
    YOKE_TOO_DEEP_AT_OWN_GAUGE = (
        "yoke_too_deep_at_own_gauge",
        "At the maker's gauge the yoke stays deeper than designed.",
    )
    BODY_TOO_LONG_AT_OWN_GAUGE = (
        "body_too_long_at_own_gauge",
        "At the maker's gauge the body stays longer than designed.",
    )
    SLEEVE_TOO_LONG_AT_OWN_GAUGE = (
        "sleeve_too_long_at_own_gauge",
        "At the maker's gauge the sleeve stays longer than designed.",
    )

    # words
    TOLD_SIZE_BY_SIZE = "told_size_by_size", "A part is told size by size, since the sizes are too unlike."
    MANY_SENTENCES = "many_sentences", "A part takes more sentences than a knitter keeps in view."

    # yarn
    SWATCH_DECIDES = "swatch_decides", "Whether another yarn gives the pattern's gauge, only a swatch decides."
    OTHER_YARN_CATEGORY = "other_yarn_category", "By every chart the yarn is of another category than the pattern's."
    CATEGORY_NOT_CHARTED = "category_not_charted", "No chart says how thick the yarn of the wanted category is."
    ESTIMATED_YARN = "estimated_yarn", "The yarn is estimated without a weighed swatch."

    # proofs
    MANY_FINDINGS = "many_findings", "More doesn't add up than is named."


class ProofCode(Code):
    """What does not hold between the numbers that a pattern prints."""

    # one row by itself
    RUN_LENGTH = "run_length", "A run has another number of values than the pattern has sizes."
    PRINTED_DIFFERS = "printed_differs", "A printed run says something else than the values sent beside it."
    BELOW_ONE = "below_one", "A count is less than 1 where there has to be something."
    NOT_WHOLE = "not_whole", "A count is no whole number."
    FALLS = "falls", "A number falls from a size to a larger one where none should."
    COUNT_RULE = "count_rule", "A count is not on its multiple."
    CHART_PARITY = "chart_parity", "A section is odd or even where the chart's anchor needs the other."
    INCHES = "inches", "Inches and centimetres of a length are not the same."

    # stitches
    CAST_ON = "cast_on", "What is cast on is not what the neck has."
    SECTION_SUM = "section_sum", "Back, front, sleeves and raglan lines do not make up the stitches of the round."
    SPLIT_FROM_NECK = "split_from_neck", "A section and its increases do not make up what it has at the split."
    BODY_FROM_SPLIT = "body_from_split", "Back, front and underarms do not make up the body."
    SLEEVE_FROM_SPLIT = "sleeve_from_split", "A sleeve's section and its underarm do not make up the sleeve."
    YOKE_FROM_NECK = "yoke_from_neck", "The neck and all increases do not make up the stitches of the yoke."
    SPLIT_CLOSES = "split_closes", "Body and sleeves do not have the stitches of the yoke and of the underarms."
    DECREASES_TO_CUFF = "decreases_to_cuff", "The decreases do not lead from the sleeve to the cuff."
    PICK_UP = "pick_up", "The neckband has another number of stitches than the edge that it is picked up from."

    # rounds
    INCREASE_ROUNDS = "increase_rounds", "The increase rounds are not as many as the increases take."
    INCREASES_EXCEED_ROUNDS = "increases_exceed_rounds", "The increases need more rounds than the yoke has."
    DECREASES_EXCEED_ROUNDS = "decreases_exceed_rounds", "The decreases need more rounds than the sleeve has."

    # lengths
    WIDTH = "width", "A width is not what its stitches come to at the gauge."
    HEIGHT = "height", "A length is not what its rounds come to at the gauge."
    TOTAL_LENGTH = "total_length", "A length is not the sum of its parts."
    EASE = "ease", "The finished bust is not that of the body and the ease."
    REACH = "reach", "The length from the centre back to the cuff is not the sum of its parts."

    # yarn
    YARDS = "yards", "Yards and metres of a yarn are not the same."
    YARN_FALLS = "yarn_falls", "A larger size takes less yarn though nothing of it is smaller."


class CauseCode(Code):
    """What a wrong number is likely to be."""

    DIGITS_SWAPPED = "digits_swapped", "Two digits have changed places."
    SIZES_SHIFTED = "sizes_shifted", "The numbers of a row stand one size too far to one side."
    NEIGHBOURING_SIZE = "neighbouring_size", "It is the number of the size beside it."
    NOMINAL_INCHES = "nominal_inches", "Inches were converted at 10 cm for 4 in where others are exact, or the reverse."
    UNDERARM_FORGOTTEN = "underarm_forgotten", "The underarm was left out."
    RAGLAN_STITCHES_FORGOTTEN = "raglan_stitches_forgotten", "The stitches of raglan lines were left out."
    EDGES_COUNTED_ONCE = "edges_counted_once", "Increases at two edges were counted as one."
