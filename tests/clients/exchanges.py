"""What the generated clients are put through: every example of every operation, and a request that is refused."""

from dataclasses import dataclass, replace
from typing import Any

from service.config import Config
from service.examples import Example, examples_of
from service.media import JSON
from service.operation import Operation
from service.routes import operations


@dataclass(frozen=True, slots=True)
class Exchange:
    """An operation, and an example of what is sent to it and answered."""

    operation: Operation[Any, Any]
    example: Example

    @property
    def name(self) -> str:
        """What a client's answer is kept under."""
        return f"{self.operation.name}/{self.example.name}"

    @property
    def identifier(self) -> str:
        """The operation's id in the contract."""
        return self.operation.name.replace("-", "_")

    @property
    def sends_file(self) -> bool:
        """Whether a file is sent."""
        return self.operation.takes != JSON

    @property
    def answers_file(self) -> bool:
        """Whether the answer is neither JSON nor text."""
        return self.operation.media[0] != JSON and not self.operation.media[0].startswith("text/")

    @property
    def in_path(self) -> dict[str, Any]:
        """The parameters in the path."""
        return {name: value for name, value in self.example.request.items() if f"{{{name}}}" in self.operation.path}

    @property
    def in_query(self) -> dict[str, Any]:
        """The parameters in the query."""
        return {name: value for name, value in self.example.request.items() if name not in self.in_path}


EXCHANGES = [
    Exchange(operation, example) for operation in operations(Config()) for example in examples_of(operation.name)
]


def _refused() -> Exchange:
    """A request that its schema allows and that contradicts itself: its last size is sent twice."""
    for each in EXCHANGES:
        sizes = each.example.request.get("sizes", [])
        if each.operation.media[0] == JSON and any("neck" in size for size in sizes):
            request = {**each.example.request, "sizes": [*sizes, sizes[-1]]}
            return Exchange(each.operation, replace(each.example, name="a-size-twice", request=request, answer=None))
    raise LookupError("no example has sizes")


REFUSED = _refused()
