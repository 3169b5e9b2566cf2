"""What the variables of a language's messages stand for, and how each is printed: all that a reader is told besides."""

GROUPED = {"once": "edges", "twice": "edges", "parts": "section", "sections": "chart_section", "places": "plain_place"}
"""Variables that are words of a group, or several of them."""

NESTED = {"steps": ("step", "across"), "rib": ("ribbing",)}
"""Variables that are sentences of groups, or several of them."""

LISTS = {
    "yoke.cycle": "cycle",
    "yoke.rounds_cycle": "cycle",
    "yoke.rounds_listed": "rounds",
    "body.decrease_cycle": "cycle",
    "body.increase_cycle": "cycle",
    "sleeve.decrease_cycle": "cycle",
}
"""Messages of which a variable is a list of whole numbers, and which."""

KNITTED = ("neck", "yoke", "split", "body", "sleeve", "rib", "band", "finishing")
"""Groups of the sentences that are followed."""

NAMES = frozenset(("colour",))
"""Variables that are names, which may be anything."""

COUNTED = frozenset((*KNITTED, "chart", "span", "times", "increases", "step", "across", "ribbing", "shape"))
"""Groups of which all other variables are whole numbers or lengths; elsewhere they may be anything."""

ONLY = "sizes.only"
"""Round a sentence that is for some sizes."""

APART = frozenset(
    (
        "span",
        "edges",
        "section",
        "chart_section",
        "plain_place",
        "measure",
        "measured",
        "times",
        "ribbing",
        "increases",
        "step",
        "across",
        "shape",
    )
)
"""Groups of what only stands in other sentences."""

WITHIN = frozenset((ONLY, "split.underarm", "gauge.counts", "own_gauge.rounds", "yarn.whose", "yarn.strand"))
"""Messages of other groups that only stand in others."""

NO_INSTRUCTIONS = frozenset(
    ("warning", "reason", "cause", "why", "title", "picture", "workbook", "shaping", "advice", "counted")
)
"""Groups of what is said elsewhere than in a pattern."""

COUNT = r"[0-9]+"

LENGTH = (
    r"-?(?:[0-9]+(?:[.,][0-9]+)?(?: [0-9]+/[0-9]+)?|[0-9]+/[0-9]+"
    r"|[0-9]*[\u00bd\u00bc\u00be\u215b\u215c\u215d\u215e]|[0-9]*[\u2070-\u2079\u00b9\u00b2\u00b3]+\u2044[\u2080-\u2089]+)"
)
"""A decimal, or a whole with a fraction: in figures, in one character, or in raised and lowered figures."""

AND = r"(?:, (?:and |und )?| and | und )"
"""Between the members of a list."""


def is_sentence(id: str) -> bool:
    """Whether a message is a sentence of a pattern by itself."""
    return id not in WITHIN and id.partition(".")[0] not in APART | NO_INSTRUCTIONS


def is_counted(id: str) -> bool:
    """Whether all that is known of a message's variables is told here."""
    return id.partition(".")[0] in COUNTED


def is_run(id: str, name: str) -> bool:
    """Whether a variable of a message is a run of numbers.

    >>> is_run("yoke.plain", "rounds"), is_run("yoke.rounds_listed", "rounds"), is_run("neck.marker", "parts")
    (True, False, False)
    """
    if name.endswith(("_cm", "_inch")):
        return True
    return is_counted(id) and name not in {*GROUPED, *NESTED, *NAMES} and LISTS.get(id) != name
