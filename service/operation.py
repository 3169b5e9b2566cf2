"""An operation of the service: declared once, it validates, runs, negotiates and documents itself."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping, Sequence
from dataclasses import dataclass, field
from functools import cached_property
from itertools import chain
from types import MappingProxyType
from typing import Any, Generic, Literal, TypeVar

from flask import Flask, Response, request

from grading_core.errors import Problem
from grading_core.printing import printed_as
from grading_core.units import USUAL_INCH_CONVENTION, USUAL_UNIT, InchConvention, Unit
from service import VERSION
from service.caching import KEPT_BRIEFLY, NEVER_KEPT, answer_tag, digest, is_known
from service.errors import NOT_FOUND, Refusal, Wrong
from service.flaws import FormError
from service.json_body import canonical, read_file, read_json
from service.language import ENGLISH, LANGUAGES, USUAL_LANGUAGE, Language, spoken
from service.lengths import ExactLengths, LengthWriter, lengths_in
from service.media import JSON, MEDIA, Medium
from service.negotiation import accepted_language, negotiate
from service.origin import made_from
from service.printing import PrintSettings
from service.retirement import Retirement
from service.schemas.base import StrictSchema
from service.wrong_places import unknown_parameters, wrong_in_body, wrong_parameters

Request = TypeVar("Request")
Result = TypeVar("Result")

DRAWN_POLICY = "default-src 'none'; img-src data:; style-src 'unsafe-inline'; frame-ancestors 'none'"
"""What a browser may load for a picture or a page: nothing, but it may be styled."""

NO_PARAMETERS: Mapping[str, str] = MappingProxyType({})


@dataclass(frozen=True)
class Asked(Generic[Request]):
    """What an operation is asked, and how it is to be answered.

    loaded: what its `call` takes. unit, inch_convention: of lengths in request and answer. settings: of print.
    """

    loaded: Request
    unit: Unit
    inch_convention: InchConvention
    settings: PrintSettings

    @cached_property
    def digest(self) -> str:
        """That tells this request from every other."""
        return self.digest_of(self.loaded)

    def digest_of(self, part: Any) -> str:
        """That of a request that asks for no more than a part of this one's."""
        return digest(part, self.unit, self.inch_convention, self.settings)


@dataclass(frozen=True, eq=False, kw_only=True)
class Operation(Generic[Request, Result]):
    """One operation: everything that the service and the contract know about it.

    path: with parameters in braces. name: its examples' directory and operation id. tag: its chapter
    in the docs. summary, description: for the contract. request: the schema of the body, or of the
    parameters of a GET; it loads what `call` takes. answer: the schema of the JSON answer, which writes the result.
    call: the computation. check: what contradicts itself in what `call` takes, asked where the form of a request is
    wrong: unknown values stand in it (see `grading_core.unknown`). represent: writes the result where no schema
    does, with a writer for lengths. media: what it answers as, the default first. takes: the media type of its body;
    `call` takes a file as it is. reads: other media types of a body in JSON, each with what makes that JSON of it.
    tabled: what `call` takes where the answer is a table, as much as that needs. kept:
    how long its answers hold, as `Cache-Control` says it. saved_as: the words of the name under which a browser saves
    the answer to a request; None where it has none. drawn_of: the part of what `call` takes whose digest a picture
    shows, which is that of the same numbers as JSON; all of it unless given. english: whether its answers are in
    English whatever is asked, as published tables are. retirement: where it will go.
    """

    path: str
    name: str
    tag: str
    summary: str
    description: str
    request: type[StrictSchema]
    answer: type[StrictSchema] | None
    call: Callable[[Request], Result]
    check: Callable[[Request], Iterable[Problem]] = lambda _: ()
    represent: Callable[[Result, LengthWriter], Any] | None = None
    method: Literal["GET", "POST"] = "POST"
    media: tuple[str, ...] = (JSON,)
    takes: str = JSON
    reads: Mapping[str, Callable[[bytes], dict[str, Any]]] = field(default_factory=dict)
    tabled: Callable[[Request], Request] = lambda loaded: loaded
    kept: str = KEPT_BRIEFLY
    saved_as: Callable[[Request], Iterable[str | None]] | None = None
    drawn_of: Callable[[Request], Any] | None = None
    english: bool = False
    retirement: Retirement | None = None

    @property
    def id(self) -> str:
        """Its `operationId` in the contract."""
        return self.name.replace("-", "_")

    @cached_property
    def schema(self) -> StrictSchema:
        """The request schema, built once."""
        return self.request()

    def prepare(self) -> None:
        """Make what loads and what writes now, where a request should not wait for it."""
        self.schema  # noqa: B018
        self._write  # noqa: B018

    def respond(self, **path_parameters: str) -> Response:
        """Answer the current HTTP request."""
        media = negotiate(request, self.media)
        data: dict[str, Any] = {}
        loaded: Any
        if self.method == "GET":
            data = {**request.args.to_dict(), **path_parameters}
            loaded = self.load(data, path_parameters)
        elif self.takes == JSON:
            read = self.reads.get(request.mimetype)
            data = canonical(read(read_file(request, request.mimetype))) if read else read_json(request, self.reads)
            loaded = self.load(data, wrong=_stray_parameters())
        else:
            loaded = read_file(request, self.takes)
            if wrong := _stray_parameters():
                raise Refusal.unprocessable(wrong)
        asked = self.asked(loaded, data)
        language = self._language(asked.settings)
        tag = None
        if request.method != "POST" and self.kept != NEVER_KEPT:
            tag = answer_tag(asked.digest, media, language.tag)
            if is_known(tag):
                return self._told(Response(status=304), tag)
        return self._told(self.answered(asked, MEDIA[media], language), tag)

    def asked(self, loaded: Request, data: Mapping[str, Any]) -> Asked[Request]:
        """What is asked, and how it is to be answered.

        loaded: what `call` takes. data: what it was loaded from.
        """
        unit, inch_convention = data.get("unit", USUAL_UNIT), data.get("inch_convention", USUAL_INCH_CONVENTION)
        return Asked(loaded, unit, inch_convention, self.schema.print_settings(data))

    def answered(self, asked: Asked[Request], medium: Medium, language: Language) -> Response:
        """The answer with all that its headers say of its content.

        medium: what it is written as. language: what it is written in.
        """
        response = Response(self.written(asked, medium, language), content_type=medium.content_type)
        response.headers.add("Content-Language", ENGLISH if self.english else language.tag)
        if self.saved_as and medium.ending:
            response.headers.add("Content-Disposition", medium.disposition(self.saved_as(asked.loaded)))
            response.headers.add("Content-Security-Policy", DRAWN_POLICY)
        return response

    def written(self, asked: Asked[Request], medium: Medium, language: Language) -> str | bytes:
        """The answer as it is written in a language. medium: what writes it."""
        loaded, settings = asked.loaded, asked.settings
        length = (ExactLengths if medium.table else LengthWriter)(asked.inch_convention)
        source = asked.digest if self.drawn_of is None else asked.digest_of(self.drawn_of(loaded))
        with lengths_in(asked.unit), printed_as(settings.printed_in(language)), spoken(language), made_from(source):
            answer = self._write(self.call(self.tabled(loaded) if medium.table else loaded), length)
            if self.answer is not None:
                answer["meta"] = {"version": VERSION, "input_digest": asked.digest}
            return medium.write(answer, settings)

    def _told(self, response: Response, tag: str | None) -> Response:
        """The response with how long it holds, its tag if it has one, and the operation's end if that is known."""
        response.headers.add("Cache-Control", self.kept)
        if tag:
            # Weak, since one tag stands for the plain and the compressed form (RFC 9110, section 8.8.1).
            response.set_etag(tag, weak=True)
        if self.retirement:
            response.headers.extend(self.retirement.headers())
        return response

    def _language(self, settings: PrintSettings) -> Language:
        """What the answer is written in: as its request has it, as the client accepts it, or the usual one."""
        if self.english:
            return LANGUAGES[USUAL_LANGUAGE]
        return LANGUAGES[settings.language] if settings.language else accepted_language(request)

    @cached_property
    def _write(self) -> Callable[[Result, LengthWriter], Any]:
        if self.represent is not None:
            return self.represent
        assert self.answer is not None
        return self.answer().writer

    def load(
        self, data: dict[str, Any], path_parameters: Mapping[str, str] = NO_PARAMETERS, wrong: Sequence[Wrong] = ()
    ) -> Request:
        """What `call` takes, from what was sent.

        data: the body, or all parameters of a GET. path_parameters: those of them that are part of the
        path, of which an unknown one is an unknown address. wrong: what is wrong already.

        Raises Refusal: 404, or 422 with every wrong place that can be told beside the others.
        """
        try:
            loaded = self._loaded(data)
        except FormError as error:
            if self.method == "POST":
                body = wrong_in_body(error, data, self._loaded, self.check)
                raise Refusal.unprocessable(chain(wrong, body)) from None
            parameters = [*wrong_parameters(error, data)]
            for each in parameters:
                if each.parameter in path_parameters:
                    raise Refusal(NOT_FOUND, f"The {each.parameter} in the address {each.detail}") from None
            raise Refusal.unprocessable(parameters) from None
        if wrong:
            raise Refusal.unprocessable(chain(wrong, map(Wrong.of, self.check(loaded))))
        return loaded

    def _loaded(self, data: dict[str, Any]) -> Request:
        with lengths_in(data.get("unit")):
            loaded: Request = self.schema.load(data)
        return loaded


def _stray_parameters() -> Sequence[Wrong]:
    """What is wrong with query parameters beside a body; they are not even parsed where none were sent."""
    return unknown_parameters(request.args) if request.query_string else ()


def register_operations(app: Flask, operations: Iterable[Operation[Any, Any]]) -> None:
    """Make an application answer operations, each POST on QUERY (RFC 10008) too."""
    for operation in operations:
        methods = ["POST", "QUERY"] if operation.method == "POST" else ["GET"]
        rule = operation.path.replace("{", "<").replace("}", ">")
        app.add_url_rule(rule, operation.name, operation.respond, methods=methods)
