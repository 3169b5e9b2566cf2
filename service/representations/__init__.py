"""Answers in their clothes: from the core's values to plain dicts, and on to CSV and Markdown."""
