"""Proofreading: what contradicts itself in the numbers that a pattern prints."""
