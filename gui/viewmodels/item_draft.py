"""A piece of equipment as the texts that somebody types, and back; what cannot be used has a sentence at its field."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from datetime import date
from typing import TypeVar

from acquisition.correction import Correction
from acquisition.register import Calibration, Equipment, RangeEntry
from acquisition.register.curves import Curve, Polynomial, PowerLaw, Table, check_curve
from acquisition.register.reading import LONGEST_MONTHS
from acquisition.register.records import USUAL_MONTHS
from analysis.errors import InvalidInput
from analysis.numbertext import parse_number
from gui.viewmodels.correction_draft import correction_text, read_corrections
from gui.viewmodels.errors import sentence
from gui.viewmodels.retold import retold
from gui.viewmodels.typed import day_of, figure
from gui.words import mark, say

Texts = dict[str, str]
T = TypeVar("T")
CURVE_WORDS = {
    "power": mark("Power law"),
    "polynomial": mark("Polynomial in Δp"),
    "root": mark("Polynomial in √Δp"),
    "table": mark("Table"),
}
NUMBERS_WORDS = {
    "power": mark("Coefficient in m³/(h·Paⁿ); exponent"),
    "polynomial": mark("c0; c1; c2 … in m³/h"),
    "root": mark("c0; c1; c2 … in m³/h"),
    "table": mark("Pa m³/h; Pa m³/h; …"),
}
CALIBRATION_FIELDS = ("calibrated", "due", "months", "certificate", "laboratory", "schemes")
RANGE_FIELDS = ("name", "curve", "numbers", "min_pa", "max_pa", "density", *CALIBRATION_FIELDS)
USUAL_DENSITY = "1.2041"
"""kg/m³: dry air at 20 °C and 101 325 Pa."""


def range_key(at: int, field: str) -> str:
    """Return the key of a field of a flow range."""
    return f"range.{at}.{field}"


def texts_of(item: Equipment) -> Texts:
    """Return the texts that stand in the fields of an item."""
    texts = {key: str(getattr(item, key)) for key in ("title", "kind", "serial", "profile", "note")}
    texts |= _calibration_texts(item.calibration, "")
    days = [correction.calibrated.isoformat() for correction in item.corrections[:1]]
    texts |= {"correction": correction_text(item.corrections), "corrected_on": "".join(days)}
    for at, entry in enumerate(item.ranges):
        curve, numbers = _curve_texts(entry.curve)
        texts |= {
            range_key(at, "name"): entry.name,
            range_key(at, "curve"): curve,
            range_key(at, "numbers"): numbers,
            range_key(at, "min_pa"): figure(entry.min_pa),
            range_key(at, "max_pa"): figure(entry.max_pa),
            range_key(at, "density"): figure(entry.reference_density_kg_m3),
            **_calibration_texts(entry.calibration, f"range.{at}."),
        }
    return texts


def range_count(texts: Mapping[str, str]) -> int:
    """Return how many flow ranges the texts have."""
    return sum(1 for key in texts if key.startswith("range.") and key.endswith(".name"))


def with_range(texts: Mapping[str, str], name: str) -> Texts:
    """Return the texts with one more flow range, whose numbers are still to be typed."""
    at = range_count(texts)
    fresh = {range_key(at, field): "" for field in RANGE_FIELDS}
    fresh |= {range_key(at, "name"): name, range_key(at, "curve"): "power", range_key(at, "density"): USUAL_DENSITY}
    return {**texts, **fresh}


def without_range(texts: Mapping[str, str], gone: int) -> Texts:
    """Return the texts without a flow range."""
    kept: Texts = {}
    for key, text in texts.items():
        if not key.startswith("range."):
            kept[key] = text
            continue
        _, number, field = key.split(".", 2)
        if int(number) != gone:
            kept[range_key(int(number) - (int(number) > gone), field)] = text
    return kept


def read_item(id_: str, texts: Mapping[str, str], mark: str) -> tuple[Equipment | None, dict[str, str]]:
    """Return the item that the texts say, None where some cannot be used, and the sentences by field."""
    reader = _Reader(texts, mark)
    title = reader.read("title", reader.name)
    calibration = reader.calibration("")
    corrections = reader.corrections(calibration.calibrated if calibration is not None else None)
    ranges = [reader.range(at) for at in range(range_count(texts))]
    names = [entry.name if entry is not None else "" for entry in ranges]
    for at, name in enumerate(names):
        if name and names.count(name) > 1:
            reader.wrong[range_key(at, "name")] = f"“{name}” is there twice: each name may occur once."
    if reader.wrong or title is None:
        return None, reader.wrong
    kept = tuple(entry for entry in ranges if entry is not None)
    plain = {key: " ".join(texts[key].split()) for key in ("kind", "serial", "profile", "note")}
    return Equipment(id_, title=title, calibration=calibration, ranges=kept, corrections=corrections or (), **plain), {}


class _Reader:
    """Reads texts one by one and gathers what is wrong, by field."""

    def __init__(self, texts: Mapping[str, str], mark: str) -> None:
        self.texts = texts
        self.mark = mark
        self.wrong: dict[str, str] = {}

    def read(self, key: str, one: Callable[[str], T]) -> T | None:
        """Return what a field says, None where its sentence is noted."""
        try:
            return one(self.texts[key].strip())
        except InvalidInput as error:
            self.wrong[key] = sentence(error)
            return None

    def calibration(self, stem: str) -> Calibration | None:
        """Return when it was calibrated, None when nobody says."""
        given, wrong_before = {key: self.texts[f"{stem}{key}"].strip() for key in CALIBRATION_FIELDS}, len(self.wrong)
        if not given["calibrated"] and not given["due"]:
            return None
        calibrated = self.read(f"{stem}calibrated", lambda text: day_of(text, "calibration date"))
        due = self.read(f"{stem}due", lambda text: day_of(text, "due date") if text else None)
        months = self.read(f"{stem}months", self._months)
        schemes = self.read(f"{stem}schemes", self._schemes)
        if calibrated is not None and due is not None and due < calibrated:
            self.wrong[f"{stem}due"] = say(
                "Due date is {due}: a day after the calibration is needed.", due=due.isoformat()
            )
        if calibrated is None or months is None or len(self.wrong) > wrong_before:
            return None
        laboratory = " ".join(given["laboratory"].split())
        return Calibration(calibrated, due, months, given["certificate"], laboratory, schemes or ())

    def corrections(self, usual: date | None) -> tuple[Correction, ...] | None:
        """Return how a gauge is off, None where that cannot be used; `usual` is the day where none is typed."""
        day = self.read("corrected_on", lambda text: day_of(text, "day of the correction") if text else None)
        if "corrected_on" in self.wrong:
            return None
        return self.read("correction", lambda text: read_corrections(text, day or usual, self.mark))

    def _schemes(self, text: str) -> tuple[tuple[str, int], ...]:
        """Return name and months of each scheme, such as `North 24; South 60`."""
        found: dict[str, int] = {}
        for part in filter(None, (part.strip() for part in text.split(";"))):
            name, _, months = part.rpartition(" ")
            if not name.strip():
                allowed = "a name and its months are needed, such as North 24; South 60"
                raise InvalidInput("schemes", part, allowed, shown=part)
            found[" ".join(name.split())] = self._months(months)
        return tuple(found.items())

    def range(self, at: int) -> RangeEntry | None:
        """Return a flow range."""
        before = len(self.wrong)
        name = self.read(range_key(at, "name"), self.name)
        low, high, density = (
            self.read(range_key(at, key), self._above(words))
            for key, words in (("min_pa", "lower end"), ("max_pa", "upper end"), ("density", "air density"))
        )
        curve = self.read(range_key(at, "numbers"), lambda text: self._curve(self.texts[range_key(at, "curve")], text))
        calibration = self.calibration(f"range.{at}.")
        if low is not None and high is not None and high <= low:
            self.wrong[range_key(at, "max_pa")] = say(
                "Upper end is {high} Pa: more than {low} Pa is needed.", high=f"{high:g}", low=f"{low:g}"
            )
        if name is None or low is None or high is None or density is None or curve is None or len(self.wrong) > before:
            return None
        try:
            check_curve(curve, low, high, "curve")
        except InvalidInput as error:
            words = retold(error.allowed)
            self.wrong[range_key(at, "numbers")] = say("These numbers are no calibration: {words}.", words=words)
            return None
        return RangeEntry(name, curve, low, high, density, calibration)

    def name(self, text: str) -> str:
        """Return a name."""
        if not text:
            raise InvalidInput("name", None, "a name is needed")
        return " ".join(text.split())

    def _months(self, text: str) -> int:
        months = self._number(text, "months") if text else float(USUAL_MONTHS)
        if months != int(months) or not 1 <= months <= LONGEST_MONTHS:
            raise InvalidInput("months", text, f"a whole number of 1 to {LONGEST_MONTHS} is needed", shown=text)
        return int(months)

    def _above(self, words: str) -> Callable[[str], float]:
        def above(text: str) -> float:
            number = self._number(text, words)
            if number <= 0.0:
                raise InvalidInput(words, text, "a number greater than 0 is needed", shown=text)
            return number

        return above

    def _number(self, text: str, words: str) -> float:
        return parse_number(text, words, self.mark)

    def _curve(self, kind: str, text: str) -> Curve:
        parts = [part.strip() for part in text.replace("\n", ";").split(";") if part.strip()]
        if kind == "table":
            return Table(tuple(self._pair(part) for part in parts))
        numbers = tuple(self._number(part, "calibration") for part in parts)
        if not numbers:
            raise InvalidInput("calibration", None, f"numbers are needed: {NUMBERS_WORDS[kind]}")
        if kind != "power":
            return Polynomial(numbers, of_root=kind == "root")
        if len(numbers) != 2 or numbers[0] <= 0.0 or not 0.0 < numbers[1] <= 1.0:
            raise InvalidInput("calibration", text, "coefficient; exponent of 0 to 1, such as 183; 0.5", shown=text)
        return PowerLaw(*numbers)

    def _pair(self, part: str) -> tuple[float, float]:
        both = part.split()
        if len(both) != 2:
            raise InvalidInput("calibration", part, "pairs are needed, such as 10 580; 20 820", shown=part)
        return self._number(both[0], "pressure"), self._number(both[1], "flow")


def _calibration_texts(calibration: Calibration | None, stem: str) -> Texts:
    if calibration is None:
        return {f"{stem}{key}": "" for key in CALIBRATION_FIELDS}
    return {
        f"{stem}calibrated": calibration.calibrated.isoformat(),
        f"{stem}due": calibration.due.isoformat() if calibration.due is not None else "",
        f"{stem}months": str(calibration.months),
        f"{stem}certificate": calibration.certificate,
        f"{stem}laboratory": calibration.laboratory,
        f"{stem}schemes": "; ".join(f"{name} {months}" for name, months in calibration.schemes),
    }


def _curve_texts(curve: Curve) -> tuple[str, str]:
    if isinstance(curve, PowerLaw):
        return "power", f"{figure(curve.coefficient_m3_h_pa_n)}; {figure(curve.exponent)}"
    if isinstance(curve, Table):
        return "table", "; ".join(f"{figure(pa)} {figure(flow)}" for pa, flow in curve.points)
    return "root" if curve.of_root else "polynomial", "; ".join(figure(number) for number in curve.coefficients)
