"""Strands, amounts, and how colours differ in lightness."""
