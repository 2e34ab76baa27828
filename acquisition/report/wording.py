"""The fixed sentences of the report, and the words for what the records name by an id."""

from __future__ import annotations

from acquisition.languages import Language
from analysis.methods import method_of
from analysis.records import Direction

PROGRAM = "Airseam"
TITLE = "Air leakage test"
SIMULATED = "Simulated house, invented data"
TYPED = "Typed from a hand-written record"
TYPED_GAP = (
    "Pressures and flows were typed from a hand-written record: there are no readings behind them, and nobody "
    "knows how they scattered."
)
FINDING = "Made to find leaks: not to be quoted"
DRAFT = "Draft, not issued"
CERTIFICATE, FINDING_REPORT = "Certificate of an air leakage test", "Report on finding leaks"
EDITS = "Readings, points and inputs of a test are never edited; a point is struck with its reason."
NOT_RECORDED = "not recorded"
NO_NAME = "Building without a name"
NO_INTERVAL = "No interval: too few points"
NO_LIMIT = "No limit set for this stage"

REASONS = "reasons"
"""Chapter of the catalogues for why the program strikes a point; a person may have typed another one."""
DIRECTIONS = {Direction.DEPRESSURIZE: "Depressurize", Direction.PRESSURIZE: "Pressurize"}

ZERO_SIDES = "In brackets: means of the negative and of the positive readings."
BY_ALTITUDE = "Air pressure by the altitude."

VERDICTS = {
    "meets": ("good", "Meets the limit"),
    "does not meet": ("bad", "Does not meet the limit"),
    "cannot tell": ("open", "Cannot tell today"),
}
"""Tone and word of each verdict."""

STATES = {
    "stopped": "The test was stopped by a person before its end.",
    "faulted": "The test ended by a fault before its end.",
    "interrupted": "The program or the machine went down during the test; what had been read by then is used.",
    "recording": "The test is still being recorded.",
}

AREAS = (
    "ELA4: leakage area at 4 Pa with discharge coefficient 1. "
    "EqLA10: equivalent leakage area at 10 Pa with discharge coefficient 0.611."
)
COEFFICIENTS = (
    "C env: leakage coefficient at the air of the test; C L, and what follows from it: at 20 °C and 101 325 Pa. "
    "n: flow exponent."
)

_STATE_OF_THE_DAY = "The result describes the building as it stood, in the state in which it was tested, on that day."
_LOCAL_CODE = (
    "The local code and the authority that applies it decide the limit, the edition of the method, what is sealed or "
    "closed, and who may test."
)
_LICENSED_PRACTICE = (
    "Heating appliances, flues, gas, asbestos and electrical work are matters for those who are licensed for them: "
    "have every appliance put back and proved before the building is used."
)
CAUTIONS = (_STATE_OF_THE_DAY, _LOCAL_CODE, _LICENSED_PRACTICE)


def checked_sentence(method: str, language: Language) -> str:
    """Say what the checks are worth."""
    return language.say(
        "Checked: the items listed, against {method} as remembered by this program; not a certificate of compliance.",
        method=method_of(method).title,
    )
