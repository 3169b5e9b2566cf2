"""Bodies, ease, grading, and choosing a size."""
