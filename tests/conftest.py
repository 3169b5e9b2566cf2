"""Settings of the whole suite."""

from hypothesis import settings

# The machine's load is no fault of the code: no generated test has a deadline.
settings.register_profile("house", deadline=None)
settings.load_profile("house")
