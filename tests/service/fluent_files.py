"""The files of words as they are written: read by Project Fluent's own parser, which the service doesn't use itself."""

from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path

from fluent.syntax import FluentParser, ast

WORDS = Path(__file__).parents[2] / "service" / "words"


def members(tree: ast.Resource) -> Iterator[tuple[str, ast.Pattern]]:
    """Every message and attribute with its id, in the order of the file."""
    for message in tree.body:
        if isinstance(message, ast.Message):
            if message.value:
                yield message.id.name, message.value
            for attribute in message.attributes:
                yield f"{message.id.name}.{attribute.id.name}", attribute.value


@dataclass(frozen=True)
class Words:
    """The words of a language. patterns: by the id of a message or attribute."""

    tag: str
    text: str
    tree: ast.Resource
    patterns: dict[str, ast.Pattern]

    def nodes(self, id: str) -> Iterator[ast.BaseNode]:
        """All that a message is made of, and what it refers to."""
        for node in nodes(self.patterns[id]):
            yield node
            if isinstance(node, ast.MessageReference):
                yield from self.nodes(referred(node))

    def variables(self, id: str) -> set[str]:
        """The names of all values that a message knows of."""
        return {node.id.name for node in self.nodes(id) if isinstance(node, ast.VariableReference)}

    def choices(self, id: str) -> Iterator[tuple[str, list[str]]]:
        """What a message chooses by, and what it chooses from; an empty name where it is no variable."""
        for node in self.nodes(id):
            if isinstance(node, ast.SelectExpression):
                name = node.selector.id.name if isinstance(node.selector, ast.VariableReference) else ""
                yield name, [key(variant) for variant in node.variants]

    def group(self, name: str) -> set[str]:
        """The words of a group."""
        return {id.partition(".")[2] for id in self.patterns if id.partition(".")[0] == name}


def key(variant: ast.Variant) -> str:
    """What a variant is chosen by."""
    return variant.key.name if isinstance(variant.key, ast.Identifier) else variant.key.value


def referred(node: ast.MessageReference) -> str:
    """The id that is referred to."""
    return f"{node.id.name}.{node.attribute.name}" if node.attribute else node.id.name


def nodes(node: object) -> Iterator[ast.BaseNode]:
    """A part of a file with all of its own parts."""
    if isinstance(node, ast.BaseNode):
        yield node
        for below in vars(node).values():
            yield from nodes(below)
    elif isinstance(node, list):
        for below in node:
            yield from nodes(below)


def read(path: Path) -> Words:
    """A file of words."""
    text = path.read_text(encoding="utf-8")
    tree = FluentParser(with_spans=False).parse(text)
    return Words(path.stem, text, tree, dict(members(tree)))


LANGUAGES = [read(path) for path in sorted(WORDS.glob("*.ftl"))]
