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


def test_the_image_bears_the_version_of_the_project() -> None:
    for file in ("Dockerfile", "compose.yaml", "kubernetes/deployment.yaml"):
        assert set(re.findall(r"pullover-grading:([0-9.]+)", (DEPLOY / file).read_text())) == {VERSION}
