"""Charts drawn as PNG: the same answer as rows of characters, and files that are no chart.

Broken and hostile files are put together from chunks by hand, as the PNG specification (ISO/IEC 15948) has them.
"""

import struct
import zlib
from base64 import b64encode
from io import BytesIO

import pytest
from hypothesis import given
from hypothesis import strategies as st
from PIL import Image

PATH = "/v1/chart-placements"
ROWS = ["..#o.", ".###.", "#####"]
HEX = {".": "#f0e6d2", "#": "#203040", "o": "#b03a2e"}
COLOURS = {symbol: {"name": symbol * 3, "hex": hex} for symbol, hex in HEX.items()}
SIGNATURE = b"\x89PNG\r\n\x1a\n"


def chunk(kind, data):
    return struct.pack(">I", len(data)) + kind + data + struct.pack(">I", zlib.crc32(kind + data))


def png(width, height, scanlines, *before, bits=8, kind=2):
    """A PNG of scan lines that each begin with their filter. kind: 2 for RGB, 6 for RGBA, 0 for grey."""
    header = chunk(b"IHDR", struct.pack(">IIBBBBB", width, height, bits, kind, 0, 0, 0))
    return SIGNATURE + header + b"".join(before) + chunk(b"IDAT", zlib.compress(scanlines)) + chunk(b"IEND", b"")


def rgb(hex):
    return bytes.fromhex(hex[1:])


def drawn(rows=ROWS, hexes=HEX):
    return png(len(rows[0]), len(rows), b"".join(b"\0" + b"".join(rgb(hexes[s]) for s in row) for row in rows))


def saved(picture, **options):
    file = BytesIO()
    picture.save(file, "PNG", **options)
    return file.getvalue()


def request(chart):
    return {
        "gauge": {"stitches": 20, "rows": 30},
        "chart": chart,
        "anchor": {"back": 3, "front": 3, "sleeve": 3},
        "sizes": [{"label": "S", "rounds": 6, "neck": {"back": 5, "front": 7, "sleeve": 3}}],
    }


def in_base64(file):
    return b64encode(file).decode()


def upload(client, file):
    return client.post("/v1/charts", data=file, content_type="image/png")


def test_a_png_in_base64_is_placed_as_the_rows_that_it_shows(client):
    by_rows = client.post(PATH, json=request({"rows": ROWS, "colours": COLOURS})).json
    by_png = client.post(PATH, json=request({"png": in_base64(drawn()), "colours": COLOURS})).json
    del by_rows["meta"], by_png["meta"]
    assert by_rows == by_png


def test_an_uploaded_png_is_answered_as_the_rows_that_it_shows(client):
    response = upload(client, drawn())
    assert response.status_code == 200
    # Met from the top left, row by row: the ground, the motif, then the dot.
    assert response.json["chart"] == {
        "rows": ["AABCA", "ABBBA", "BBBBB"],
        "colours": {symbol: {"name": hex, "hex": hex} for symbol, hex in zip("ABC", HEX.values(), strict=True)},
    }


def test_the_chart_of_an_upload_can_be_placed_as_it_came(client):
    chart = upload(client, drawn()).json["chart"]
    by_upload = client.post(PATH, json=request(chart)).json
    by_png = client.post(PATH, json=request({"png": in_base64(drawn())})).json
    del by_upload["meta"], by_png["meta"]
    assert by_upload == by_png


def test_the_upload_says_what_the_chart_is_mirrored_about(client):
    mirrored = upload(client, drawn(["..#..", ".###."])).json
    assert (mirrored["symmetry"], mirrored["mirror_axes"]) == ("both", [3, 5.5])


@pytest.mark.parametrize("mode", ["RGBA", "P"])
def test_the_kind_of_png_makes_no_difference(client, mode):
    picture = Image.open(BytesIO(drawn()))
    converted = picture.convert(mode) if mode == "RGBA" else picture.quantize(3)
    assert upload(client, saved(converted)).json["chart"] == upload(client, drawn()).json["chart"]


def test_black_and_white_takes_a_bit_a_pixel(client):
    picture = Image.new("1", (3, 1), 1)
    picture.putpixel((1, 0), 0)
    chart = upload(client, saved(picture)).json["chart"]
    assert chart["rows"] == ["ABA"]
    assert [colour["hex"] for colour in chart["colours"].values()] == ["#ffffff", "#000000"]


def test_a_colour_may_be_written_in_capitals(client):
    capitals = {symbol: {**colour, "hex": colour["hex"].upper()} for symbol, colour in COLOURS.items()}
    assert client.post(PATH, json=request({"png": in_base64(drawn()), "colours": capitals})).status_code == 200


def test_text_in_the_file_is_passed_over_unread(client):
    """A compressed text of 10 MB, which a reader of comments would unpack."""
    bomb = chunk(b"zTXt", b"Comment\0\0" + zlib.compress(bytes(10_000_000)))
    file = png(1, 1, b"\0abc", bomb)
    assert upload(client, file).status_code == 200


def animated():
    frames = [Image.new("RGB", (2, 2), colour) for colour in ("red", "blue")]
    return saved(frames[0], save_all=True, append_images=frames[1:])


HOSTILE = {
    "not a PNG": (b"GIF89a" + bytes(40), "is not a PNG file."),
    "a signature alone": (SIGNATURE, "is not a PNG file."),
    "cut off": (drawn()[:-30], "is broken"),
    "pixels damaged": (drawn().replace(b"IDAT", b"IDAT\0", 1), "is broken"),
    "a wrong checksum": (drawn()[:-14] + b"\0\0" + drawn()[-12:], "is broken"),
    "a bomb by its size": (png(100_000, 100_000, b""), "is 100000 x 100000 pixels"),
    "no pixels": (png(0, 5, b""), "is 0 x 5 pixels"),
    "one column too many": (png(801, 1, b"\0" + bytes(2403)), "is 801 x 1 pixels"),
    "one row too many": (png(1, 401, b"\0abc" * 401), "is 1 x 401 pixels"),
    "animated": (animated(), "is animated"),
    "16 bits": (png(1, 1, b"\0aabbcc", bits=16), "has 16 bits a sample"),
    "transparent": (png(2, 1, b"\0abc\xffabc\x80", kind=6), "is transparent in pixel 2 from the left of row 1"),
    "a transparent colour": (
        png(1, 1, b"\0\7", chunk(b"tRNS", b"\0\7"), kind=0),
        "is transparent in pixel 1 from the left of row 1",
    ),
    "63 colours": (png(63, 1, b"\0" + bytes(range(63 * 3))), "has more than 62 colours"),
    "too many bytes": (drawn() + bytes(512 * 1024), "is larger than 512 KiB"),
}


@pytest.mark.parametrize(("file", "why"), HOSTILE.values(), ids=HOSTILE)
def test_a_file_that_is_no_chart_is_refused_with_the_reason(client, file, why):
    uploaded = upload(client, file)
    assert uploaded.status_code == 422
    [error] = uploaded.json["errors"]
    assert error["pointer"] == ""
    assert error["detail"].startswith(why)
    if len(file) <= 512 * 1024:
        sent = client.post(PATH, json=request({"png": in_base64(file)}))
        assert (sent.status_code, sent.json["errors"]) == (422, [error | {"pointer": "/chart/png"}])


@given(st.integers(8, len(drawn()) - 1), st.integers(1, 255), st.booleans())
def test_a_damaged_file_is_never_a_fault(client, place, change, cut):
    damaged = bytearray(drawn())
    damaged[place] ^= change
    assert upload(client, bytes(damaged[: place + 1] if cut else damaged)).status_code in (200, 422)


def test_a_pixel_of_no_given_colour_is_refused(client):
    known = {symbol: COLOURS[symbol] for symbol in ".#"}
    response = client.post(PATH, json=request({"png": in_base64(drawn()), "colours": known}))
    assert response.json["errors"] == [
        {
            "pointer": "/chart/png",
            "code": "unknown_colour",
            "detail": "has colours that are no hex of `colours`: #b03a2e.",
        }
    ]


def test_two_symbols_for_one_hex_cannot_be_told_apart(client):
    twice = {**COLOURS, "x": {"name": "x", "hex": HEX["#"]}}
    response = client.post(PATH, json=request({"png": in_base64(drawn()), "colours": twice}))
    assert [error["pointer"] for error in response.json["errors"]] == ["/chart/colours/x/hex"]


def test_in_a_pullover_the_same_is_said_of_the_same_places(client):
    twice = {**COLOURS, "x": {"name": "x", "hex": HEX["#"]}}
    known = {symbol: twice[symbol] for symbol in ".#x"}
    for colours, wrong in ((twice, ["colours/x/hex"]), (known, ["colours/x/hex", "png"])):
        chart = {"png": in_base64(drawn()), "colours": colours}
        response = client.post("/v1/pullovers", json={"gauge": {"stitches": 20, "rows": 30}, "chart": {"chart": chart}})
        assert response.status_code == 422
        assert [error["pointer"] for error in response.json["errors"]] == [f"/chart/chart/{place}" for place in wrong]


@pytest.mark.parametrize("text", ["AAA", "AA==AAAA", "data:image/png;base64,AAAA", "AAAA\nAAAA"])
def test_what_is_not_base64_is_refused(client, text):
    response = client.post(PATH, json=request({"png": text}))
    assert [error["pointer"] for error in response.json["errors"]] == ["/chart/png"]


def test_a_chart_is_rows_or_a_png(client):
    response = client.post(PATH, json=request({"png": in_base64(drawn()), "rows": ROWS, "colours": COLOURS}))
    assert [error["pointer"] for error in response.json["errors"]] == ["/chart"]


def test_an_upload_is_sent_as_image_png(client):
    response = client.post("/v1/charts", json={"png": in_base64(drawn())})
    assert response.status_code == 415
    assert response.headers["Accept"] == "image/png"


def test_an_upload_of_more_than_a_body_may_hold_is_refused(client):
    assert upload(client, drawn() + bytes(1024 * 1024)).status_code == 413
