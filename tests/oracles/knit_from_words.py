"""Random pullovers, each size knitted from the text of its pattern in every language.

    python -m tests.oracles.knit_from_words --count 1000 --seed 1
    python -m tests.oracles.knit_from_words --count 1000 --seed 1 --language de

Each request is posted to the service once for each language. A program that knows the language's sentences and nothing
of the values beside them (`word_knitter`) knits every size that can be, and of one size the pattern that is its own;
what comes of it is held against the table. Besides, every text is held against its values. What disagrees is printed
with its request, and how often each sentence was met.
"""

from __future__ import annotations

import random
import sys
from collections import Counter
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass, field
from fractions import Fraction
from typing import Any

from flask.testing import FlaskClient

from service.app import create_app
from service.config import Config
from tests.oracles import many_seeds
from tests.oracles.asked_edges import amiss
from tests.oracles.random_pullovers import random_request
from tests.oracles.sentence_reader import Reader, reader
from tests.oracles.word_knitter import PARTS, Parts, against_runs, against_table, knit
from tests.oracles.word_needle import WordsError
from tests.oracles.words_and_values import Steps, disagreements

Json = dict[str, Any]

LANGUAGES = ("en-US", "en-GB", "de")


@dataclass
class Met(many_seeds.Seen):
    """What came of some requests.

    ids: how often each sentence was in an answer, by language and id. doubts: how often something had to be guessed.
    """

    answered: int = 0
    sizes: int = 0
    own: int = 0
    impossible: int = 0
    ids: Counter[tuple[str, str]] = field(default_factory=Counter)
    doubts: Counter[str] = field(default_factory=Counter)

    def never(self, language: str) -> list[str]:
        """The sentences of a language that were in no answer."""
        return [id for id in reader(language).ids if not self.ids[language, id]]


def main() -> None:
    """Knit as many as asked, print what was met; exit code 1 where anything disagrees."""
    parser = many_seeds.arguments(__doc__, 1000)
    parser.add_argument("--language", choices=LANGUAGES, action="append")
    asked = parser.parse_args()
    met, languages = Met(), asked.language or [*LANGUAGES]
    many_seeds.knit_seeds(met, asked, _knit_seed, _start, languages)
    report(met, languages)
    sys.exit(bool(met.disagreements))


def report(met: Met, languages: Sequence[str]) -> None:
    """Print how much was knitted, how often each sentence was met, and how many disagreements there are."""
    print(f"{met.requests} requests, {met.answered} answers with instructions")
    print(f"{met.sizes} sizes knitted from all sizes' words, {met.own} from their own; {met.impossible} can't be")
    for id in reader(languages[0]).ids:
        print(f"{id:32}" + "".join(f"{met.ids[language, id]:9}" for language in languages))
    for language in languages:
        print(f"never met in {language}: {', '.join(met.never(language)) or 'none'}")
    print(f"doubts: {dict(met.doubts) or 'none'}")
    print(f"{len(met.disagreements)} disagreements: {dict(met.kinds.most_common())}")


def knit_words(client: FlaskClient, request: Json, languages: Iterable[str], choice: int) -> Met:
    """Post one request in some languages, and knit all sizes from the words of the answers.

    choice: by which the size is chosen that is knitted from its own words, too.
    """
    met = Met(requests=1)
    for language in languages:
        asked = request | {
            "include": ["table", "instructions", "size_instructions"],
            "print": request.get("print", {}) | {"language": language},
        }
        response = client.post("/v1/pullovers", json=asked)
        if response.status_code == 422:
            return met
        if response.status_code != 200:
            met.disagreements.append(("status", f"answered {response.status_code} in {language}", asked))
            continue
        assert response.json
        _compare(met, language, asked, response.json, choice)
    return met


def _compare(met: Met, language: str, request: Json, answer: Json, choice: int) -> None:
    settings = request["print"]
    words = reader(language, settings.get("missing", "\u2013"))
    labels = answer["labels"]

    def disagree(kind: str, detail: str) -> None:
        met.disagreements.append((kind, f"{language}: {detail}", request))

    steps = Steps(Fraction(str(settings.get("cm_step", 0.5))), Fraction(str(settings.get("inch_step", 0.25))))
    impossible = [size["label"] for size in answer["sizes"] if not size["feasible"]]
    sentences = [sentence for part in answer["instructions"] for sentence in part["sentences"]]
    met.answered += bool(sentences)
    met.ids.update((language, sentence["id"]) for sentence in sentences)
    for sentence in sentences:
        for detail in disagreements(words, sentence, labels, steps, impossible):
            disagree("values", f"{sentence['id']}: {detail}. {sentence['text']!r}")
    parts = [(part["part"], [each["text"] for each in part["sentences"]]) for part in answer["instructions"]]
    feasible = [place for place, size in enumerate(answer["sizes"]) if size["feasible"]]
    met.impossible += len(impossible)
    for place in feasible:
        met.sizes += 1
        for kind, detail in _knitted(met, words, parts, answer, place, request):
            disagree(kind, f"{labels[place]}: {detail}")
    if feasible:
        place = feasible[choice % len(feasible)]
        met.own += 1
        own = list(own_sentences(answer["sizes"][place]))
        met.ids.update((language, sentence["id"]) for _, sentence in own)
        for _, sentence in own:
            for detail in disagreements(words, sentence, [labels[place]], steps):
                disagree("own values", f"{sentence['id']}: {detail}. {sentence['text']!r}")
        for kind, detail in _knitted(met, words, with_own(answer, own), answer, place, request):
            disagree(f"own {kind}", f"{labels[place]}: {detail}")


def _knitted(
    met: Met, words: Reader, parts: Parts, answer: Json, place: int, request: Json
) -> Iterator[tuple[str, str]]:
    """What disagrees between one size's knitting and the table."""
    try:
        piece, heard = knit(parts, answer["labels"], answer["labels"][place], words)
    except WordsError as error:
        yield "knitting", str(error)
        return

    met.doubts.update(piece.doubts)

    def printed(item: str) -> tuple[str | None, str | None]:
        row = next(row for row in answer["table"] if (row["part"], row["item"]) == ("finished", item))
        runs = (words.figures(row["run"]), words.figures(row["run_inch"]))
        return tuple(run[place if len(run) > 1 else 0] for run in runs)  # type: ignore[return-value]

    values = {(row["part"], row["item"]): row["values"][place] for row in answer["table"]}
    for detail in against_table(piece, values):
        yield "table", detail
    for detail in against_runs(heard, printed, bool(piece.drop_rows)):
        yield "length", detail
    for detail in amiss(piece, request):
        yield "edges", detail


def own_sentences(size: Json) -> Iterator[tuple[str, Json]]:
    """The sentences of one size, with their part."""
    for part in PARTS:
        for sentence in size.get(part, {}).get("instructions", ()):
            yield part, sentence


WHOLE = ("neck.colour", "sleeve.return")
"""Sentences of a part with own ones that only the whole pattern has; how the pullover is divided is a part alone."""


def with_own(answer: Json, own: Sequence[tuple[str, Json]]) -> Parts:
    """A pattern in which one size's own sentences stand for those of all sizes."""
    parts_of_own = {part for part, _ in own}
    made = []
    for part in answer["instructions"]:
        name, sentences = part["part"], part["sentences"]
        if name in parts_of_own:
            kept = [each for each in sentences if each["id"] in WHOLE]
            sentences = [*kept, *(each for of, each in own if of == name)]
        made.append((name, [each["text"] for each in sentences]))
    return made


_client: list[FlaskClient] = []
_languages: list[str] = []


def _start(languages: Sequence[str]) -> None:
    _client.append(create_app(Config()).test_client())
    _languages.extend(languages)


def _knit_seed(seed: int) -> Met:
    return knit_words(_client[0], random_request(seed), _languages, random.Random(seed).randrange(1000))


if __name__ == "__main__":
    main()
