"""Settings of the whole suite."""

import os

from hypothesis import settings

# Servers and clients meet on this machine, whatever proxy the world outside is reached through.
os.environ["no_proxy"] = os.environ["NO_PROXY"] = "127.0.0.1"

# The machine's load is no fault of the code: no generated test has a deadline. The same examples in every run, so
# that a failure is seen again.
settings.register_profile("house", deadline=None, derandomize=True)
settings.load_profile("house")
