"""The manifests: valid by Kubernetes' own schemas, hardened, and in step with the server's settings."""

import re
from pathlib import Path

import kubernetes_validate
import pytest
import yaml

DEPLOY = Path(__file__).resolve().parent.parent.parent / "deploy"
MANIFESTS = {path.name: yaml.safe_load(path.read_text()) for path in (DEPLOY / "kubernetes").glob("*.yaml")}
KUSTOMIZATION = MANIFESTS.pop("kustomization.yaml")
POD = MANIFESTS["deployment.yaml"]["spec"]["template"]["spec"]
CONTAINER = POD["containers"][0]


@pytest.mark.parametrize("name", MANIFESTS)
def test_a_manifest_is_valid(name: str) -> None:
    kubernetes_validate.validate(MANIFESTS[name], "1.37", strict=True)


def test_the_kustomization_takes_every_manifest() -> None:
    assert sorted(KUSTOMIZATION["resources"]) == sorted(MANIFESTS)


@pytest.mark.parametrize(
    ("name", "where"),
    [
        ("deployment.yaml", ("spec", "selector", "matchLabels")),
        ("service.yaml", ("spec", "selector")),
        ("poddisruptionbudget.yaml", ("spec", "selector", "matchLabels")),
        ("networkpolicy.yaml", ("spec", "podSelector", "matchLabels")),
    ],
)
def test_a_selector_finds_the_pods(name: str, where: tuple[str, ...]) -> None:
    selector = MANIFESTS[name]
    for step in where:
        selector = selector[step]
    labels = MANIFESTS["deployment.yaml"]["spec"]["template"]["metadata"]["labels"]
    assert selector.items() <= labels.items()


def test_the_pods_meet_the_restricted_security_standard() -> None:
    # Pod Security Standards, profile "restricted" (kubernetes.io/docs/concepts/security/pod-security-standards).
    assert POD["securityContext"]["runAsNonRoot"] is True
    assert POD["securityContext"]["seccompProfile"]["type"] == "RuntimeDefault"
    assert CONTAINER["securityContext"]["allowPrivilegeEscalation"] is False
    assert CONTAINER["securityContext"]["capabilities"]["drop"] == ["ALL"]


def test_the_pods_write_nowhere_but_to_tmp_and_hold_no_token() -> None:
    assert CONTAINER["securityContext"]["readOnlyRootFilesystem"] is True
    assert [mount["mountPath"] for mount in CONTAINER["volumeMounts"]] == ["/tmp"]
    assert POD["automountServiceAccountToken"] is False


def test_pods_and_image_agree_on_user_and_port() -> None:
    dockerfile = (DEPLOY / "Dockerfile").read_text()
    user = POD["securityContext"]["runAsUser"]
    port = CONTAINER["ports"][0]["containerPort"]
    assert f"USER {user}:{POD['securityContext']['runAsGroup']}\n" in dockerfile
    assert f"EXPOSE {port}\n" in dockerfile
    assert f'BIND="0.0.0.0:{port}"' in dockerfile


def test_a_pod_has_time_to_finish_what_it_has_begun() -> None:
    settings = (DEPLOY / "gunicorn.conf.py").read_text()
    (graceful,) = re.findall(r"^graceful_timeout = (\d+)$", settings, re.MULTILINE)
    waiting = CONTAINER["lifecycle"]["preStop"]["sleep"]["seconds"]
    assert POD["terminationGracePeriodSeconds"] > waiting + int(graceful)
