"""How much room text takes: an estimate on the safe side, since a picture is drawn in whatever sans-serif there is."""

from __future__ import annotations

_DIGIT, _NARROW, _CAPITAL, _WIDE, _OTHER = 0.64, 0.36, 0.74, 0.95, 0.61
"""Parts of the size that characters are wide, as in the wider ones of usual fonts."""

_NARROW_ONES = frozenset(" .,:;!|'()[]/ijlftrI-\u2060")
_WIDE_ONES = frozenset("mwMWQ@%")


def width_of(written: str, size: float) -> float:
    """The width of a line of text in pixels, rather too much than too little.

    size: of the font, in pixels.

    >>> round(width_of("36 1/2", 10), 1)
    32.8
    """
    return size * sum(map(_part, written))


def wrapped(written: str, room: float, size: float) -> list[str]:
    """Text in as many lines as it needs; a word that is too long for one is parted.

    room: the width of a line in pixels. size: of the font, in pixels.

    >>> wrapped("92.5 (97, 101.5)", 70, 10)
    ['92.5 (97,', '101.5)']
    """
    lines: list[str] = []
    line = ""
    for word in written.split():
        longer = f"{line} {word}" if line else word
        if width_of(longer, size) <= room:
            line = longer
            continue
        if line:
            lines.append(line)
        while width_of(word, size) > room and len(word) > 1:
            fit = next((n for n in range(len(word) - 1, 1, -1) if width_of(word[:n], size) <= room), 1)
            lines.append(word[:fit])
            word = word[fit:]
        line = word
    return [*lines, line] if line or not lines else lines


def _part(character: str) -> float:
    if character.isdigit():
        return _DIGIT
    if character in _NARROW_ONES:
        return _NARROW
    if character in _WIDE_ONES or ord(character) > 0x2E7F:
        return _WIDE
    return _CAPITAL if character.isupper() else _OTHER
