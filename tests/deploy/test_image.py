"""The image and the composition of images, without a container engine."""

import re
import shutil
import subprocess
import sys
from pathlib import Path

import pytest
import yaml

from service import VERSION

DEPLOY = Path(__file__).resolve().parent.parent.parent / "deploy"
HADOLINT = shutil.which("hadolint", path=str(Path(sys.executable).parent))
COMPOSITION = yaml.safe_load((DEPLOY / "compose.yaml").read_text())


@pytest.mark.skipif(HADOLINT is None, reason="hadolint is not installed")
def test_hadolint_finds_nothing_in_the_dockerfile() -> None:
    assert HADOLINT
    found = subprocess.run([HADOLINT, DEPLOY / "Dockerfile"], stdout=subprocess.PIPE, text=True, check=False)
    assert found.stdout == ""


def test_the_image_holds_all_that_the_service_loads(tmp_path: Path) -> None:
    copied = re.findall(r"^COPY (\S+) (\S+)$", (DEPLOY / "Dockerfile").read_text(), re.MULTILINE)
    sent = set(re.findall(r"^!(\S+)$", (DEPLOY.parent / ".dockerignore").read_text(), re.MULTILINE))
    assert {source for source, _ in copied} == sent
    for source, target in copied:
        if not target.startswith("/"):
            origin, copy = DEPLOY.parent / source, tmp_path / target
            copy.parent.mkdir(exist_ok=True)
            shutil.copytree(origin, copy) if origin.is_dir() else shutil.copy(origin, copy)
    subprocess.run([sys.executable, "-c", "import service.wsgi"], cwd=tmp_path, check=True)


@pytest.mark.parametrize("name", COMPOSITION["services"])
def test_a_composed_container_can_do_no_more_than_it_has_to(name: str) -> None:
    service = COMPOSITION["services"][name]
    assert service["read_only"] is True
    assert service["cap_drop"] == ["ALL"]
    assert service["security_opt"] == ["no-new-privileges:true"]
    assert {"mem_limit", "pids_limit"} <= service.keys()


def test_the_proxy_knows_every_composed_instance_by_its_name() -> None:
    upstreams = re.findall(r"^\s+server (\S+):8000 ", (DEPLOY / "nginx.conf").read_text(), re.MULTILINE)
    assert upstreams == [name for name in COMPOSITION["services"] if name != "proxy"]


def test_the_instances_believe_the_proxy_alone() -> None:
    proxy = COMPOSITION["services"]["proxy"]["networks"]["inside"]["ipv4_address"]
    for upstream in ("app1", "app2"):
        assert COMPOSITION["services"][upstream]["environment"]["FORWARDED_ALLOW_IPS"] == proxy


def test_all_that_is_filled_in_into_the_proxys_settings_is_there() -> None:
    proxy = COMPOSITION["services"]["proxy"]
    wanted = set(re.findall(r"\$\{(\w+)\}", (DEPLOY / "nginx.conf").read_text()))
    # a doubled sign is one that compose leaves alone
    filled_in = set(re.findall(r"\$\$(\w+)", proxy["entrypoint"][-1]))
    assert wanted == filled_in == proxy["environment"].keys()


def test_the_proxy_allows_the_origins_that_the_instances_allow_and_keeps_answers_by_their_release() -> None:
    services = COMPOSITION["services"]
    assert len({services[name]["environment"]["GRADING_CORS_ORIGINS"] for name in services}) == 1
    assert str(services["proxy"]["environment"]["GRADING_RELEASE"]) == VERSION


def test_the_proxy_has_room_for_all_that_it_may_keep() -> None:
    """A megabyte of keys is about 8,000 (nginx.org, proxy_cache_path), and an answer less than half a megabyte."""
    (kib,) = re.findall(r"keys_zone=answers:(\d+)k", (DEPLOY / "nginx.conf").read_text())
    (mib,) = re.findall(r"/var/cache/answers:size=(\d+)m", str(COMPOSITION["services"]["proxy"]["tmpfs"]))
    assert int(kib) * 8 * 0.5 <= int(mib)


def test_the_image_bears_the_version_of_the_project() -> None:
    for file in ("Dockerfile", "compose.yaml", "kubernetes/deployment.yaml"):
        assert set(re.findall(r"pullover-grading:([0-9.]+)", (DEPLOY / file).read_text())) == {VERSION}
