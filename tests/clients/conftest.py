"""The clients, generated once, and what they were answered by the service as it is and as it may become."""

import sys
from pathlib import Path

import pytest
import requests

from tests.clients.exchanges import EXCHANGES, REFUSED
from tests.clients.later_version import later_version
from tests.clients.python_clients import AttrsClient, PydanticClient
from tests.clients.typescript_clients import FetchClient, FunctionsClient
from tests.served import served

CLIENTS = (AttrsClient(), PydanticClient(), FetchClient(), FunctionsClient())


@pytest.fixture(scope="session")
def server(tmp_path_factory):
    """The address of a gunicorn that serves the application."""
    with served(tmp_path_factory.mktemp("served")) as address:
        yield address


@pytest.fixture(scope="session")
def contract_file(server, tmp_path_factory) -> Path:
    """The contract as a client's author gets it."""
    file = tmp_path_factory.mktemp("contract") / "openapi.json"
    file.write_bytes(requests.get(f"{server}/openapi.json", timeout=30).content)
    return file


@pytest.fixture(scope="session", params=CLIENTS, ids=lambda client: client.name)
def client(request):
    """A kind of client."""
    return request.param


@pytest.fixture(scope="session")
def generated(client, contract_file, tmp_path_factory):
    """Where a client was generated, and what its generator printed."""
    directory = tmp_path_factory.mktemp("client")
    printed = client.generate(contract_file, directory)
    yield directory, printed
    if str(directory) in sys.path:
        sys.path.remove(str(directory))


@pytest.fixture(scope="session")
def answers(client, generated, server):
    """What a client gives for every exchange with the service."""
    return client.answers(generated[0], server, [*EXCHANGES, REFUSED])


@pytest.fixture(scope="session")
def later_server(server, contract_file):
    """The address of the service as a later version may answer."""
    with later_version(server, contract_file) as address:
        yield address


@pytest.fixture(scope="session")
def later_answers(client, generated, later_server):
    """What a client gives for every exchange with a later version."""
    return client.answers(generated[0], later_server, EXCHANGES)
