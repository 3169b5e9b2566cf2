"""A pullover's outline with its measurements."""
