"""What the person at the screen chose to see, and the sheets under edit. Plain Python."""

from __future__ import annotations

from dataclasses import dataclass, field

from acquisition.office import Office
from acquisition.office.catalogue import Catalogue
from analysis.records import Direction
from analysis.units import Display
from gui.report_pages import ReportPages
from gui.viewmodels.by_hand import ByHandModel
from gui.viewmodels.details import Detail
from gui.viewmodels.field_check import FieldCheckModel
from gui.viewmodels.hunt import HuntChoices
from gui.viewmodels.issuing import DRAFT
from gui.viewmodels.job_place import JobSheetModel
from gui.viewmodels.leak_sheet import LeakSheet
from gui.viewmodels.moment import Place
from gui.viewmodels.over import Over
from gui.viewmodels.prompt import Prompt
from gui.viewmodels.register import RegisterModel
from gui.viewmodels.rig_sheet import RigSheetModel
from gui.viewmodels.rooms import RoomsModel
from gui.viewmodels.scan import ScanModel
from gui.viewmodels.settings_page import SettingsModel
from gui.viewmodels.shown import Reading
from gui.viewmodels.teach import TeachModel
from gui.viewmodels.trace import TraceScale
from gui.viewmodels.typed_page import TypedModel
from gui.viewmodels.zone_walk import ZoneWalk


@dataclass(slots=True, weakref_slot=True)
class Screen:
    """Belongs to the thread of the window. `version` counts up with everything that a picture depends on."""

    pages: ReportPages
    place: Place = Place.TEST
    display: Display = field(default_factory=Display)
    direction: Direction | None = None
    strike: Prompt | None = None
    asking_to_close: bool = False
    closing: bool = False
    keys_shown: bool = False
    sheet: JobSheetModel | None = None
    sheet_of_job: int = -1
    rooms: RoomsModel | None = None
    rooms_shown: bool = False
    rig: RigSheetModel = field(default_factory=RigSheetModel)
    scale: TraceScale = field(default_factory=TraceScale)
    teach: TeachModel = field(default_factory=TeachModel)
    scan: ScanModel = field(default_factory=ScanModel)
    register: RegisterModel = field(default_factory=RegisterModel)
    check: FieldCheckModel = field(default_factory=FieldCheckModel)
    office: Office = field(default_factory=Office)
    version_shown: int = DRAFT
    no_test: bool = False
    """Whether the Report place shows why no test was possible."""
    by_hand: ByHandModel = field(default_factory=ByHandModel)
    detail: Detail = Detail.CHECKS
    corrections: bool = False
    hunt: HuntChoices = field(default_factory=HuntChoices)
    leaks: LeakSheet = field(default_factory=LeakSheet)
    zones: ZoneWalk = field(default_factory=ZoneWalk)
    reading: Reading = field(default_factory=Reading)
    over: Over | None = None
    """A page that lies over the place."""
    catalogue: Catalogue = field(default_factory=Catalogue)
    typed: TypedModel = field(default_factory=TypedModel)
    settings: SettingsModel = field(default_factory=SettingsModel)
    version: int = 0

    def touch(self) -> None:
        """Have everything drawn anew."""
        self.version += 1

    def go_to(self, place: Place) -> None:
        """Show a place."""
        self.place, self.keys_shown, self.over = place, False, None
        self.touch()

    def show_over(self, page: Over) -> None:
        """Show a page over the place."""
        self.over, self.keys_shown = page, False
        self.touch()
