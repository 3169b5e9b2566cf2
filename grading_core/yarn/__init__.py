"""Strands, amounts, and a yarn in place of another."""
