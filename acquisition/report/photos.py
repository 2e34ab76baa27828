"""Photos for a page: small enough, upright, without what a camera writes about place and owner."""

from __future__ import annotations

import base64
import io

from PIL import Image, ImageOps, UnidentifiedImageError

from analysis.errors import InvalidInput

MOST_PIXELS = 1200
QUALITY = 82


def shrunk(content: bytes) -> bytes:
    """Return a picture as JPEG, or PNG where it has clear parts, of at most `MOST_PIXELS` a side.

    The same content gives the same bytes. Raises `InvalidInput` for what cannot be read.
    """
    try:
        with Image.open(io.BytesIO(content)) as opened:
            picture = ImageOps.exif_transpose(opened)
            clear = picture.mode in ("RGBA", "LA", "P")
            picture = picture.convert("RGBA" if clear else "RGB")
            picture.thumbnail((MOST_PIXELS, MOST_PIXELS))
            bare = Image.new(picture.mode, picture.size)
            bare.paste(picture)
    except (UnidentifiedImageError, OSError, ValueError, Image.DecompressionBombError) as error:
        raise InvalidInput("photo", "unreadable", f"a whole PNG or JPEG picture is needed ({error})") from error
    made = io.BytesIO()
    if clear:
        bare.save(made, "PNG", optimize=True)
        return made.getvalue()
    bare.save(made, "JPEG", quality=QUALITY)
    return made.getvalue()


def wrapped(content: bytes) -> bytes:
    """Return a PNG or JPEG as SVG: the typesetter takes its files as texts."""
    with Image.open(io.BytesIO(content)) as opened:
        (width, height), kind = opened.size, opened.format
    data = base64.b64encode(content).decode()
    head = f'<svg xmlns="http://www.w3.org/2000/svg" width="{width}" height="{height}" viewBox="0 0 {width} {height}">'
    href = f"data:image/{str(kind).lower()};base64,{data}"
    return f'{head}<image width="{width}" height="{height}" href="{href}"/></svg>'.encode()
