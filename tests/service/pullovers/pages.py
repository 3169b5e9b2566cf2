"""A page of HTML read back by a parser of its own."""

from dataclasses import dataclass

from lxml import html

Page = html.HtmlElement

DASH = "\N{EN DASH}"


def read(text: str) -> Page:
    """The page's tree."""
    assert text.startswith("<!doctype html>")
    return html.document_fromstring(text)


def words(element: Page) -> str:
    """What an element says, without what only lines it up."""
    return " ".join(element.text_content().replace("\N{NO-BREAK SPACE}", " ").split())


def section(page: Page, title: str) -> Page:
    """The part of a page below a heading."""
    (found,) = [each for each in page.iter("section") if words(each.find("h2")) == title]
    return found


@dataclass(frozen=True)
class Line:
    """A round of a worksheet. cells: without its boxes."""

    round: int
    boxes: int
    cells: tuple[str, ...]


def rounds(part: Page) -> list[list[Line]]:
    """The rounds of each group of a worksheet's table, those of one line apart again."""
    return [[*_lines(group)] for group in part.iter("tbody")]


def _lines(group: Page):
    for row in group.iter("tr"):
        number = row.find("th[@scope='row']")
        if number is None:
            continue
        first, _, last = words(number).partition(DASH)
        cells = [words(cell) for cell in row.findall("td") if cell.get("class") != "ticks"]
        boxes = {len(cell.findall(".//i")) for cell in row.findall("td[@class='ticks']")}
        many = int(last or first) - int(first) + 1
        assert boxes == {many}
        for place in range(many):
            yield Line(int(first) + place, len(row.findall("td[@class='ticks']")), (*_spread(cells, place, many),))


def _spread(cells, place, many):
    """The cells of one of several rounds: of a span of chart rows its own row."""
    for cell in cells:
        first, dash, last = cell.partition(DASH)
        if dash and first:
            assert int(last) - int(first) + 1 == many
            yield str(int(first) + place)
        else:
            yield cell
