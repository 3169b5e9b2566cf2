"""The floor: a bare Flask application that parses the very same requests and writes the very same answers."""

import json
import os
from pathlib import Path

from flask import Flask, Response, jsonify, request

ANSWERS = "BENCHMARK_ANSWERS"
"""Names, in the environment, the file with the answers: a list in JSON."""


def create_app() -> Flask:
    """An application that answers a POST to /0, /1 ... with the first, the second ... answer."""
    answers = json.loads(Path(os.environ[ANSWERS]).read_bytes())
    app = Flask("bare")

    @app.post("/<int:place>")
    def answer(place: int) -> Response:
        request.get_json()
        return jsonify(answers[place])

    return app
