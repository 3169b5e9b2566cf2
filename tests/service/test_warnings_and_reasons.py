"""Every warning and every reason that many requests meet, in every language."""

import re

import pytest

from grading_core.codes import ReasonCode, WarningCode
from grading_core.sentences import SAYINGS
from service.config import Config
from service.examples import examples_of
from service.language import LANGUAGES, Language
from service.routes import operations
from tests.oracles.random_pullovers import random_request

SPOKEN = ("warning", "reason", "cause", "why")
"""What ids begin with that are met here."""

REQUESTS = 150

_GAUGE = {"stitches": 22, "rows": 31}
_NECK = {"back": 34, "front": 34, "sleeve": 12}


def _yoke(rounds, body, sleeve, **rest):
    split = {"back": 34 + 2 * body, "front": 34 + 2 * body, "sleeve": 12 + 2 * sleeve}
    return {"gauge": _GAUGE, "sizes": [{"label": "S", "rounds": rounds, "neck": _NECK, "split": split}], **rest}


def _shaping(**plan):
    return ("shaping-schedules", {"plans": [{"name": "side", **plan}]})


def _match(garment, own=None):
    sizes = [{"label": "S", "bust": 100}, {"label": "M", "bust": 110}]
    gauges = {"written_gauge": _GAUGE, "own_gauge": own} if own else {}
    return ("size-matches", {"finished": sizes, "garment": garment, **gauges})


OTHERS = (
    *(("yoke-adjustments", _yoke(60, 24, 19, adjust={"rounds": rounds})) for rounds in (10, 30, 42, 50, 60, 62, 100)),
    *(("yoke-adjustments", _yoke(60, *each, adjust={"rounds": 31})) for each in ((15, 0), (30, 30), (20, 10))),
    ("yoke-adjustments", _yoke(20, 24, 19, adjust={"rounds": 30})),
    ("raglan-schedules", _yoke(20, 24, 19)),
    ("raglan-schedules", _yoke(20, 24, 19, double_body="if_needed")),
    _shaping(stitches=60, to=40, rows=8),
    _shaping(stitches=60, to=40, rows=8, step=2),
    _shaping(stitches=10, across=8, change="decrease"),
    _shaping(stitches=10, across=12, change="increase", worked="flat"),
    _match(90),
    _match(130),
    _match(90, {"stitches": 20, "rows": 28}),
    (
        "gauge-conversions",
        {
            "gauge": {"stitches": 28, "rows": 40},
            "pattern_gauge": _GAUGE,
            "items": [{"stitches": 97, "count_rule": {"multiple": 4, "plus": 2}}, {"across": 0.1}, {"along": 0.1}],
        },
    ),
    (
        "size-gradings",
        {
            "gauge": _GAUGE,
            "sizes": [{"label": "S", "bust": 90, "wrist": 15}],
            "ease": {"bust": -20},
            "count_rules": {"wrist": {"multiple": 100}},
        },
    ),
)
"""Operations beside the pullover, asked for what they warn of or can't do."""

UNFINISHED = re.compile(r"[{}$]|\bNone\b|  | [,.;:]|\.\.|\(\)")
NAMES = re.compile('"[^"]*"|„[^“]*“')
"""UNFINISHED: a placeholder that was left, a value that is missing, or what stays where a part of a sentence is empty.
NAMES: what is quoted as it was sent."""


@pytest.fixture(scope="module")
def met(client):
    """By id, what was said in each language, in the answers to all these requests, the examples' among them."""
    said: dict[str, set[tuple[str, str]]] = {}
    in_one_language = Language.text

    def in_all(self, sentence):
        if sentence.id.partition(".")[0] in SPOKEN:
            for language in LANGUAGES.values():
                said.setdefault(sentence.id, set()).add((language.tag, in_one_language(language, sentence)))
        return in_one_language(self, sentence)

    with pytest.MonkeyPatch.context() as patched:
        patched.setattr(Language, "text", in_all)
        for operation in operations(Config()):
            for example in examples_of(operation.name):
                if operation.method == "POST":
                    client.post(operation.path, json=example.request)
        for operation, request in OTHERS:
            assert client.post(f"/v1/{operation}", json=request).status_code == 200, (operation, request)
        for seed in range(REQUESTS):
            client.post("/v1/pullovers", json=random_request(seed))
    return said


def test_every_warning_and_reason_is_a_whole_sentence_in_every_language(met):
    wrong = [
        (id, *each) for id, texts in met.items() for each in texts if UNFINISHED.search(NAMES.sub("name", each[1]))
    ]
    assert wrong == []
    # causes are parts of sentences
    whole = {id: texts for id, texts in met.items() if not id.startswith(("cause.", "warning.length_steps"))}
    assert [text for texts in whole.values() for _, text in texts if text[-1] != "."] == []


def test_no_language_says_what_another_says(met):
    for language in ("en-US", "en-GB"):
        english = {text for texts in met.values() for tag, text in texts if tag == language}
        assert not english & {text for texts in met.values() for tag, text in texts if tag == "de"}


def test_two_thirds_of_what_can_be_said_are_met(met):
    declared = {id for id in SAYINGS if id.partition(".")[0] in SPOKEN}
    assert 3 * len(met) > 2 * len(declared), sorted(declared - {*met})


@pytest.mark.parametrize(
    ("begin", "codes", "otherwise"),
    # that no way leads to a yoke is the reason given by what recommends one
    [("warning", WarningCode, []), ("reason", ReasonCode, ["no_way_to_adjust"])],
)
def test_what_is_said_beside_a_code_begins_with_it(begin, codes, otherwise):
    ids = [id.partition(".")[2] for id in SAYINGS if id.startswith(f"{begin}.")]
    assert [code.value for code in codes if not any(id.startswith(code.value) for id in ids)] == otherwise
