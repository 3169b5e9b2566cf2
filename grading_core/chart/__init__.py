"""A colourwork chart, and where it lies on a garment."""
