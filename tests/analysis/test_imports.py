"""What the analysis loads: a command line must start at once."""

from __future__ import annotations

import subprocess
import sys


def test_the_analysis_loads_neither_pint_nor_figures_nor_the_window() -> None:
    program = (
        "import sys, analysis.methods, analysis.testjson, analysis.resultjson, analysis.units, analysis.statistics\n"
        "print(*sorted({'pint', 'matplotlib', 'PySide6', 'pyqtgraph', 'pandas', 'serial'} & set(sys.modules)))\n"
        "from analysis.units import *\n"
        "to_display(1.0, Quantity.FLOW, Display())\n"
        "print('pint' in sys.modules)\n"
        "to_display(1.0, Quantity.FLOW, Display(System.US))\n"
        "print('pint' in sys.modules)\n"
    )
    done = subprocess.run([sys.executable, "-c", program], capture_output=True, text=True, check=True)
    assert done.stdout.split("\n") == ["", "False", "True", ""]
