"""A pullover's front as it will look."""
