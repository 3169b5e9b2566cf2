"""Pictures of pullovers, read by a general XML parser."""

from xml.etree import ElementTree

SVG = "{http://www.w3.org/2000/svg}"


def picture(client, kind, request):
    """The root of a picture of a request."""
    response = client.post(f"/v1/pullovers/{kind}", json=request)
    assert response.status_code == 200, response.text
    return ElementTree.fromstring(response.get_data())


def classed(root, name):
    """The elements of a class."""
    return [element for element in root.iter() if name in element.get("class", "").split()]


def points(line):
    """Of a polyline."""
    numbers = [float(number) for number in line.get("points").replace(",", " ").split()]
    return [*zip(numbers[::2], numbers[1::2], strict=True)]


def texts(root):
    """Every text, in the order of the file."""
    return [element.text for element in root.iter(f"{SVG}text")]
