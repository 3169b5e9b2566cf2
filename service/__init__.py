"""The HTTP service: it validates, calls `grading_core` and writes the answer. It knows no arithmetic."""

VERSION = "1.0.0"
"""The service's version, in every answer, the contract and the package."""
