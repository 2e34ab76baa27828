"""The pages of a PDF as pictures: what a preview shows is the very file that is saved."""

from __future__ import annotations

import io
import threading

import pypdfium2

POINTS_PER_INCH = 72.0
_ONE_AT_A_TIME = threading.Lock()
"""The library draws for one thread only."""


def pdf_pages(pdf: bytes, ppi: float = 110.0) -> list[bytes]:
    """Return the pages of a PDF as PNG, with `ppi` pixels per inch; raises `pypdfium2.PdfiumError` if it is none."""
    with _ONE_AT_A_TIME, pypdfium2.PdfDocument(pdf) as document:
        return [_png(page, ppi) for page in document]


def _png(page: pypdfium2.PdfPage, ppi: float) -> bytes:
    file = io.BytesIO()
    page.render(scale=ppi / POINTS_PER_INCH).to_pil().save(file, "PNG", compress_level=1)
    return file.getvalue()
