import pytest
from flask.testing import FlaskClient

from service.app import create_app
from service.config import Config


@pytest.fixture(scope="session")
def client() -> FlaskClient:
    return create_app(Config()).test_client()
