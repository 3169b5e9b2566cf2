import pytest
from flask import Flask
from flask.testing import FlaskClient

from service.app import create_app
from service.config import Config
from tests.closed_contract import closed


@pytest.fixture(scope="session")
def app() -> Flask:
    return create_app(Config())


@pytest.fixture(scope="session")
def client(app: Flask) -> FlaskClient:
    return app.test_client()


@pytest.fixture(scope="session")
def contract(client: FlaskClient) -> dict:
    return client.get("/openapi.json").json


@pytest.fixture(scope="session")
def closed_contract(contract: dict) -> dict:
    return closed(contract)
