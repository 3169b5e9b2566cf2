"""What is told of something that will go: the contract marks it, and an operation's answers say so."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import UTC, date, datetime, time, timedelta
from email.utils import format_datetime
from typing import Any

LEAST = timedelta(days=365)
"""So long what is deprecated stays at least, as README.md promises."""


@dataclass(frozen=True, slots=True)
class Retirement:
    """The end of an operation or a field.

    since: the day from which it is deprecated. sunset: the day from which it may be gone, at least a year later. Both
    begin at midnight UTC.

    Raises ValueError where the sunset comes sooner than clients were promised.
    """

    since: date
    sunset: date

    def __post_init__(self) -> None:
        if self.sunset - self.since < LEAST:
            raise ValueError(f"Clients have {LEAST.days} days to follow, and these have {self.sunset - self.since}.")

    def headers(self) -> dict[str, str]:
        """What each answer of the operation says: `Deprecation` (RFC 9745) and `Sunset` (RFC 8594).

        >>> Retirement(date(2027, 3, 1), date(2028, 9, 1)).headers()
        {'Deprecation': '@1803859200', 'Sunset': 'Fri, 01 Sep 2028 00:00:00 GMT'}
        """
        since, sunset = (datetime.combine(day, time(), UTC) for day in (self.since, self.sunset))
        return {"Deprecation": f"@{since.timestamp():.0f}", "Sunset": format_datetime(sunset, usegmt=True)}

    def contract(self, description: str) -> dict[str, Any]:
        """What the contract says of it. description: what it says beside."""
        ending = f"Deprecated since {self.since}; may be gone from {self.sunset}."
        return {"deprecated": True, "description": f"{description} {ending}".strip()}
