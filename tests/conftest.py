"""Settings of the whole suite."""

from hypothesis import settings

# The machine's load is no fault of the code: no generated test has a deadline. The same examples in every run, so
# that a failure is seen again.
settings.register_profile("house", deadline=None, derandomize=True)
settings.load_profile("house")
