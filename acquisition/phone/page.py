"""The page on the phone: huge digits, words with every colour, nothing from outside. It can only listen.

Its words are in the language of the window, its script is not: the policy names that by its digest.
"""

from __future__ import annotations

import base64
import hashlib
import html
from collections.abc import Callable

STALE_S = 2.0

Tell = Callable[[str], str]
"""Takes a finished English text."""

_STYLE = """
body{margin:0;background:#11171d;color:#e9eff5;font-family:sans-serif;font-variant-numeric:tabular-nums;padding:16px}
.quiet{color:#8fa2b4;font-size:20px}#flow{font-size:26vw;line-height:1}#change{font-size:14vw;line-height:1.1}
#pressure{font-size:9vw}#state{font-size:24px;min-height:1.5em}.stale{opacity:.25}
"""
_SCRIPT = """
const at=(id)=>document.getElementById(id);const said=document.body.dataset;let last=0,age=0;
const source=new EventSource('/stream');
source.onmessage=(event)=>{const d=JSON.parse(event.data);last=performance.now();age=d.age_s;
for(const id of ['flow','change','pressure','state','unit'])at(id).textContent=d[id];};
setInterval(()=>{const old=last?age+(performance.now()-last)/1000:Infinity;const stale=!(old<STALE);
at('all').className=stale?'stale':'';
at('age').textContent=stale?said.none:said.old.replace('{age}',old.toFixed(1).replace('.',said.mark));},200);
""".replace("STALE", f"{STALE_S:g}")


def _hash(text: str) -> str:
    return base64.b64encode(hashlib.sha256(text.encode()).digest()).decode()


POLICY = (
    f"default-src 'none'; script-src 'sha256-{_hash(_SCRIPT)}'; style-src 'sha256-{_hash(_STYLE)}'; "
    "connect-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'"
)
"""Content-Security-Policy: this script, this style, this server, and nothing else."""


def page(tell: Tell = str, tag: str = "en", decimal_mark: str = ".") -> bytes:
    """Return the page with its words as `tell` says them in the language of the `tag`."""

    def words(text: str) -> str:
        return html.escape(tell(text))

    return f"""<!doctype html><html lang="{html.escape(tag)}"><head><meta charset="utf-8">
<meta name="viewport" content="width=device-width,initial-scale=1"><title>Airseam</title><style>{_STYLE}</style></head>
<body data-none="{words("No data")}" data-old="{words("Data {age} s old")}" data-mark="{html.escape(decimal_mark)}">
<div id="all" class="stale"><div class="quiet">{words("Flow now")}, <span id="unit"></span></div>
<div id="flow">&ndash;</div><div class="quiet">{words("Change since the beginning")}</div>
<div id="change">&ndash;</div><div class="quiet">{words("Pressure")}</div><div id="pressure">&ndash;</div>
<p id="state"></p></div><p id="age" class="quiet">{words("No data")}</p>
<p class="quiet">{words("Does the screen go dark? Lengthen the time-out of the phone.")}</p>
<script>{_SCRIPT}</script></body></html>
""".encode()
