"""The page for the person at the leak, beside a test on the command line."""

from __future__ import annotations

import argparse
import sys
from collections.abc import Callable, Iterator
from contextlib import contextmanager

from acquisition.snapshot import Snapshot
from drivers.clock import Clock


@contextmanager
def phone_page(
    options: argparse.Namespace, clock: Clock, watch: Callable[[Snapshot], None]
) -> Iterator[Callable[[Snapshot], None]]:
    """Serve the page for the person at the leak where asked for; yields `watch` that shows it each moment too."""
    if options.phone is None:
        yield watch
        return
    import segno

    from acquisition.commands.printing import display_of
    from acquisition.phone import HelperView, PhoneServer
    from acquisition.phone.numbers import helper_numbers
    from acquisition.phone.page import page

    view, display = HelperView(clock), display_of(options.units)
    server = PhoneServer(view, clock, options.phone, page())
    try:
        segno.make(server.link).terminal(out=sys.stderr, compact=True)
        print(f"airseam: on the phone, in this network, not encrypted: {server.link}", file=sys.stderr)

        def look(shown: Snapshot) -> None:
            watch(shown)
            view.show(helper_numbers(shown, display))

        yield look
    finally:
        server.stop()
