"""The sizes that are answered of those that are sent, in every operation that answers per size."""

import pytest

from service.config import Config
from service.examples import examples_of
from service.media import CSV
from service.routes import operations

PER_SIZE = [
    pytest.param(operation, example, id=f"{operation.name}-{example.name}")
    for operation in operations(Config())
    if CSV in operation.media and operation.method == "POST" and operation.name != "proofs"
    for example in examples_of(operation.name)
]


@pytest.mark.parametrize(("operation", "example"), PER_SIZE)
def test_each_size_is_answered_alone_as_among_the_others(client, operation, example):
    sizes = client.post(operation.path, json=example.request).json["sizes"]
    for size in (sizes[0], sizes[-1]):
        one = client.post(operation.path, json={**example.request, "answer_sizes": [size["label"]]})
        assert one.json["sizes"] == [size]


@pytest.mark.parametrize(("operation", "example"), PER_SIZE)
def test_a_size_that_is_not_there_is_refused(client, operation, example):
    answer = client.post(operation.path, json={**example.request, "answer_sizes": ["nobody"]})
    assert answer.status_code == 422
    assert [error["pointer"] for error in answer.json["errors"]] == ["/answer_sizes/0"]
