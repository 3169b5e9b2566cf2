"""The locked requirements and the bill of materials that goes with them."""

import json
import re
import tomllib
from pathlib import Path

import pytest
from packaging.utils import canonicalize_name

DEPLOY = Path(__file__).resolve().parent.parent.parent / "deploy"
CLIENTS = DEPLOY.parent / "tests" / "clients"
LOCKS = ("requirements.lock", "requirements-test.lock")


def locked(name: str) -> dict[str, str]:
    """The packages of a lock file with their versions."""
    return dict(re.findall(r"^([A-Za-z0-9._-]+)==([^ ;]+)", (DEPLOY / name).read_text(), re.MULTILINE))


@pytest.mark.parametrize("name", LOCKS)
def test_every_locked_package_has_a_hash(name: str) -> None:
    entries = re.split(r"^(?=\S+==)", (DEPLOY / name).read_text(), flags=re.MULTILINE)[1:]
    assert len(entries) == len(locked(name))
    assert [entry for entry in entries if not re.search(r"--hash=sha256:[0-9a-f]{64}", entry)] == []


@pytest.mark.parametrize("name", LOCKS)
def test_a_lock_names_no_address(name: str) -> None:
    assert re.findall(r"://|--index-url|--extra-index-url|--find-links", (DEPLOY / name).read_text()) == []


def test_the_lock_of_npm_packages_names_no_registry_and_has_a_hash_for_each() -> None:
    """`resolved` would name the registry of whoever wrote the lock; npm leaves it out by tests/clients/.npmrc."""
    packages = json.loads((CLIENTS / "package-lock.json").read_text())["packages"]
    asked = json.loads((CLIENTS / "package.json").read_text())["dependencies"]
    assert packages.pop("")["dependencies"] == asked
    assert {f"node_modules/{name}" for name in asked} <= packages.keys()
    assert [name for name, package in packages.items() if "resolved" in package] == []
    assert [name for name, package in packages.items() if not package["integrity"].startswith("sha512-")] == []


def test_tests_run_on_what_is_deployed() -> None:
    assert locked("requirements.lock").items() <= locked("requirements-test.lock").items()


@pytest.mark.parametrize(("asked", "lock"), [("requirements.in", LOCKS[0]), ("requirements-test.in", LOCKS[1])])
def test_every_asked_package_is_locked(asked: str, lock: str) -> None:
    names = re.findall(r"^[A-Za-z][A-Za-z0-9._-]*", (DEPLOY / asked).read_text(), re.MULTILINE)
    assert names
    assert {canonicalize_name(name) for name in names} <= set(map(canonicalize_name, locked(lock)))


def test_the_project_depends_on_exactly_what_the_lock_was_asked_for() -> None:
    project = tomllib.loads((DEPLOY.parent / "pyproject.toml").read_text())["project"]
    asked = re.findall(r"^[A-Za-z][A-Za-z0-9._-]*", (DEPLOY / "requirements.in").read_text(), re.MULTILINE)
    assert sorted(project["dependencies"]) == sorted(asked)


def test_the_bill_of_materials_lists_exactly_what_is_deployed_with_licences() -> None:
    components = json.loads((DEPLOY / "sbom.json").read_text())["components"]
    listed = {canonicalize_name(component["name"]): component["version"] for component in components}
    assert listed == {canonicalize_name(name): version for name, version in locked("requirements.lock").items()}
    assert [component["name"] for component in components if not component.get("licenses")] == []
