"""The application: operations, documents and error answers put together."""

from __future__ import annotations

import logging
import os

from flask import Flask
from flask_cors import CORS

from service.config import Config
from service.docs import register_docs
from service.errors import register_error_handlers
from service.example_answers import register_example_answers
from service.headers import EXPOSED, VARY, register_headers
from service.json_body import MAX_BODY_BYTES
from service.observability import register_observability
from service.operation import register_operations
from service.routes import operations
from service.start import register_start


def create_app(config: Config | None = None) -> Flask:
    """The WSGI application.

    config: the settings; read from the environment where none are given.
    """
    config = config or Config.from_environment(os.environ)
    logging.getLogger("service").setLevel(config.log_level)
    app = Flask("service", static_folder=None)
    app.config["MAX_CONTENT_LENGTH"] = MAX_BODY_BYTES
    # Otherwise an address with a doubled slash is answered by a redirect in HTML.
    app.url_map.merge_slashes = False
    register_observability(app)
    register_error_handlers(app)
    # What one origin may read and another may not depends on the origin.
    several = bool(config.cors_origins) and "*" not in config.cors_origins
    register_headers(app, f"{VARY}, Origin" if several else VARY)
    if config.cors_origins:
        CORS(
            app,
            origins=list(config.cors_origins),
            methods=["GET", "HEAD", "POST", "QUERY", "OPTIONS"],
            expose_headers=list(EXPOSED),
            max_age=86400,
            vary_header=False,
            # Exactly one origin, or a star for all: of several none is named to a client that sends none.
            send_wildcard=True,
            always_send=not several,
        )
    served = operations(config)
    register_operations(app, served)
    register_docs(app, served)
    register_example_answers(app, served)
    register_start(app, served)
    return app
