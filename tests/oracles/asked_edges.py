"""What a request asks of ribs, of the colours of edges, and of seams, and whether a piece knitted from words has it."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator
from typing import Any

from tests.oracles.pullover_answer import band_rule, edge_rule, seam_of
from tests.oracles.word_needle import Piece

Json = dict[str, Any]

USUAL = {2: (1, 1), 4: (2, 2), 6: (3, 3)}
"""The knit and purl stitches of ribs that nobody asks for, by multiple; others have 1 purl stitch."""


def amiss(piece: Piece, request: Json) -> Iterator[str]:
    """Where ribs, colours or seams aren't as asked."""
    yield from _ribs(piece, request)
    told, asked = piece.colours, colours_of(piece, request)
    if told != asked:
        yield f"colours {told} told, {asked} asked"
    yield from _seams(piece, request)


def _ribs(piece: Piece, request: Json) -> Iterator[str]:
    designed, changed = request.get("band", {}), request.get("changes", {}).get("band", {})
    # another multiple of a maker's leaves the design's rib behind
    kept = designed.get("rib") if "multiple" not in changed.get("count_rule", {}) else None
    edges = {
        "body": (edge := request.get("body", {}).get("hem", {}), edge_rule(edge), edge.get("rib")),
        "sleeve": (edge := request.get("sleeve", {}).get("cuff", {}), edge_rule(edge), edge.get("rib")),
        "band": (designed, band_rule(designed, changed), changed.get("rib", kept)),
    }
    for part, (_, rule, rib) in edges.items():
        tube, multiple = piece.tubes[part], rule.get("multiple", 1)
        over = rule.get("plus", 0) % multiple
        usual = None if multiple == 1 or over else USUAL.get(multiple, (multiple - 1, 1))
        wanted = (rib["knit"], rib["purl"]) if rib else usual
        # a rib of one round may be all adjusting
        if tube.ribs and tube.rib != wanted:
            yield f"rib {tube.rib} of the {part}, {wanted} asked"
        if tube.rest not in (0, over):
            yield f"{tube.rest} stitches beyond the rib's repeats, {part}"


def colours_of(piece: Piece, request: Json) -> dict[str, str]:
    """The name of the colour of each part that has to be told; none where the pullover has but one."""
    chart, yarns = request.get("chart", {}), request.get("yarn", {}).get("colours", {})
    drawn = chart.get("chart", {"rows": []})
    named = {symbol: drawn.get("colours", {}).get(symbol, {}).get("name", symbol) for symbol in "".join(drawn["rows"])}
    named |= {symbol: colour.get("name", symbol) for symbol, colour in drawn.get("colours", {}).items()}
    names = {symbol: yarn.get("name") or symbol for symbol, yarn in yarns.items()} | named
    if len(names) < 2:
        return {}
    edges = {
        "hem": request.get("body", {}).get("hem", {}).get("colour"),
        "cuff": request.get("sleeve", {}).get("cuff", {}).get("colour"),
        "band": request.get("changes", {}).get("band", {}).get("colour") or request.get("band", {}).get("colour"),
    }
    plain, below = _plain(request) if chart else (_main(request),) * 2
    symbols = {"plain": plain, "hem": edges["hem"] or below, "cuff": edges["cuff"] or below}
    symbols["band"] = edges["band"] or plain
    if below != plain and chart.get("first_round", 1) + len(drawn["rows"]) - 1 <= piece.rounds:
        symbols["underarm"] = below
    return {part: names[symbol] for part, symbol in symbols.items()}


def _plain(request: Json) -> tuple[str, str]:
    """The colours of what is plain above and below a chart."""
    chart = request["chart"]
    others = dict(zip(exchange := chart.get("exchange", []), reversed(exchange), strict=True))
    rows = chart["chart"]["rows"]
    rows = rows if chart["chart"].get("first_row", "bottom") == "top" else rows[::-1]
    worked = [others.get(symbol, symbol) for row in rows for symbol in row[::-1]]
    # of colours with as many stitches the one that is worked first
    plain = chart.get("plain_colour") or Counter(worked).most_common(1)[0][0]
    once = chart["chart"].get("repeat", "rows") == "once"
    return plain, chart.get("below_colour", plain) if once else plain


def _main(request: Json) -> str:
    """The colour of a pullover without a chart: as asked, else the one that no edge has."""
    yarn, changed = request["yarn"], request.get("changes", {}).get("band", {})
    edges = (request.get("body", {}).get("hem", {}), request.get("sleeve", {}).get("cuff", {}))
    taken = {edge.get("colour") for edge in (*edges, request.get("band", {}), changed)}
    return yarn.get("main_colour") or next(symbol for symbol in yarn["colours"] if symbol not in taken)


def _seams(piece: Piece, request: Json) -> Iterator[str]:
    asked = seam_of(request, piece.underarms[0])
    purled = {"body", "sleeve"} if asked and request.get("yoke", {}).get("seam") == "purl" else set()
    if piece.purled != purled:
        yield f"seams purled in {piece.purled}, {purled} asked"
    if (piece.seam or 0) != asked:
        yield f"{piece.seam} seam stitches told, {asked} asked"
