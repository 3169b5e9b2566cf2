"""What a WSGI server loads: `service.wsgi:app`, configured from the environment."""

from service.app import create_app

app = create_app()
