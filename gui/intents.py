"""What the person at the screen asks for, handed to whoever does it."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

from PySide6.QtCore import QObject, Signal
from PySide6.QtWidgets import QApplication

from acquisition.job import SUFFIX
from acquisition.languages import ENGLISH
from acquisition.snapshot import Severity
from gui.actions import Actions
from gui.desk import Desk
from gui.file_intents import FileIntents
from gui.files import Files
from gui.hand_intents import HandIntents
from gui.house_intents import HouseIntents
from gui.hunt_intents import HuntIntents
from gui.hunt_page_intents import HuntPageIntents
from gui.leak_intents import LeakIntents
from gui.look_intents import LookIntents
from gui.office_intents import OfficeIntents
from gui.reading_intents import ReadingIntents
from gui.register_intents import RegisterIntents
from gui.repair_intents import RepairIntents
from gui.replay_intents import ReplayIntents
from gui.rig_intents import RigIntents
from gui.screen import Screen
from gui.settings import SettingsFile
from gui.support_intents import SupportIntents
from gui.teach_intents import TeachIntents
from gui.viewmodels.moment import Moment, Place
from gui.viewmodels.next_step import NextStep, Verb
from gui.viewmodels.prompt import (
    ACCEPT,
    CLOSE,
    CLOSE_ANYWAY,
    END_TEST,
    Prompt,
    PromptKind,
)
from gui.viewmodels.published import ticked_text
from gui.viewmodels.register import RegisterModel
from gui.viewmodels.report_place import OF_OFFICE
from gui.viewmodels.rig_sheet import RigSheetModel
from gui.viewmodels.shown import Reading
from gui.views.palette import Palette
from gui.views.rig_place import EQUIPMENT
from gui.window import RIG_SUFFIX, Window
from gui.words import mark, say
from gui.worst_case_intents import WorstCaseIntents

JOB_PATTERN = mark("Jobs (*.airseam)")


class Intents(QObject):
    """Hears the views and calls the desk. `gone` tells that everything is closed and the window may go."""

    gone = Signal()

    def __init__(self, desk: Desk, screen: Screen, window: Window, actions: Actions, settings: SettingsFile) -> None:
        """Listen to all views."""
        super().__init__(window)
        self._desk = desk
        self._screen = screen
        self._window = window
        self._actions = actions
        self._settings = settings
        self._shown_choices: object = None
        self.files = Files(desk, screen, window)
        self.rig = RigIntents(desk, screen, window, settings, self.files)
        self.teach = TeachIntents(desk, screen, window, self.files)
        self.house = HouseIntents(desk, screen, window, self.files)
        self.hunt = HuntIntents(desk, screen, window, actions)
        self.hunt_pages = HuntPageIntents(desk, screen, window)
        self.leaks = LeakIntents(desk, screen, window, actions, self.files)
        self.register = RegisterIntents(desk, screen, window, self.files)
        self.hand = HandIntents(desk, screen, window)
        self.office = OfficeIntents(desk, screen, window, self.files, settings)
        self.jobs = FileIntents(desk, screen, window, actions, self.files, self.office)
        self.jobs.open_asked.connect(self.opened)
        self.support = SupportIntents(desk, window, actions, self.files, settings)
        self.worst_case = WorstCaseIntents(desk, screen, window, actions)
        self.repair = RepairIntents(desk, screen, window, actions, self.go_to)
        self.replay = ReplayIntents(desk, screen, window, actions, self.files, self.remember)
        self.reading = ReadingIntents(desk, screen, window, actions, self.office.show_no_test)
        self.look = LookIntents(screen, window, actions, settings, self.finish_typing, self.hunt.toggle_afar)
        self._connect_frame()
        self._connect_places()
        self._connect_actions()

    # --- what the menus show

    def refresh(self, moment: Moment) -> None:
        """Keep menus and title with the moment."""
        screen, settings = self._screen, self._settings.value
        comma = screen.display.decimal_mark == ","
        choices = (settings.mode, screen.display, moment.place, settings.recent, moment.job and moment.job.path)
        if choices == self._shown_choices:
            return
        self._shown_choices = choices
        self._actions.show_choices(settings.mode, screen.display.system, moment.place, comma=comma)
        self._actions.show_recent(settings.recent)
        name = moment.job.details.name if moment.job is not None else ""
        self._window.setWindowTitle(f"{name} – Airseam" if name else "Airseam")

    # --- what is asked

    def press(self, step: NextStep) -> None:
        """Do what the big button says."""
        self.finish_typing()
        match step.verb:
            case Verb.CONNECT:
                self.rig.connect_last()
            case Verb.GO_TO_RIG:
                self.go_to(Place.RIG)
            case Verb.NEW_JOB:
                self.new_job()
            case Verb.GO_TO_VOLUME:
                self.go_to_field("volume")
            case Verb.GO_TO_TEST:
                self.go_to(Place.TEST)
            case Verb.GO_TO_SETUP:
                self.go_to(Place.SETUP)
            case Verb.SHOW_NO_TEST:
                self.office.show_no_test()
            case Verb.OPEN_REPORT:
                self.go_to(Place.REPORT)
            case Verb.SAVE_REPORT:
                self.files.save_report()
            case _:
                self._steer(step)
        self._screen.touch()

    def _steer(self, step: NextStep) -> None:
        """Do what concerns the test itself."""
        match step.verb:
            case Verb.START:
                self._screen.reading = Reading()
                self.start_test()
            case Verb.ANSWER:
                self._desk.answer(step.ask_id, step.choice)
            case Verb.PAUSE:
                self._desk.pause()
            case Verb.GO_ON:
                self._desk.go_on()
            case Verb.HOLD:
                self.hunt.begin()
            case Verb.SEAL_STARTS:
                self.hunt.seal_starts()
            case Verb.SEAL_DONE:
                self.hunt.seal_done()
            case Verb.RESUME:
                self.repair.resume_test()
            case Verb.END_HOLD:
                self._desk.hunting.end_hold()

    def finish_typing(self) -> None:
        """Take what is still being typed."""
        focus = QApplication.focusWidget()
        typed_in = (self._window.job, self._window.settings, self._window.rig, self._window.hunt)
        if focus is not None and any(place.isAncestorOf(focus) for place in typed_in):
            focus.clearFocus()

    def stop_fan(self) -> None:
        """Stop the fan."""
        self._desk.stop_fan()

    def start_test(self) -> None:
        """Begin a test and show it."""
        self._screen.direction, self._screen.strike = None, None
        self._window.test.trace.touched = False
        self._window.test.flow.touched = False
        if self._desk.start_test():
            self.go_to(Place.TEST)

    def go_to(self, place: Place) -> None:
        """Show a place."""
        self.finish_typing()
        self._screen.go_to(place)

    def go_to_field(self, field: str) -> None:
        """Show a field of the job sheet, or of the Settings page."""
        if field.startswith(OF_OFFICE):
            self.office.go_to(field.removeprefix(OF_OFFICE))
            return
        self.go_to(Place.JOB)
        self._screen.rooms_shown = False
        self._window.job.show_page(rooms=False)
        self._window.show_place(Place.JOB, keys=False)
        self._window.job.go_to(field)

    def new_job(self) -> None:
        """Ask where a new job is to be kept, and make it."""
        self.files.ask_save(
            say("New job: where is it kept?"), self.files.folder / f"New job{SUFFIX}", JOB_PATTERN, self._made
        )

    def open_job(self) -> None:
        """Ask for a job, and open it."""
        self.files.ask_open(say("Open a job"), JOB_PATTERN, self.opened)

    def opened(self, path: Path) -> None:
        """Open a job."""
        if self._desk.open_job(path):
            self.remember(path)

    def take_dropped(self, path: Path) -> None:
        """Open a job, or put the rig of a file on the sheet, that was dropped on the window."""
        if path.suffix.lower() == RIG_SUFFIX:
            self.rig.load(path)
            self.go_to(Place.RIG)
        else:
            self.opened(path)
        self._screen.touch()

    def _made(self, path: Path) -> None:
        if self._desk.new_job(path, path.stem):
            self.remember(path)
            self.go_to_field("name")

    def remember(self, path: Path) -> None:
        """Remember a job among the recent ones."""
        self._settings.set(self._settings.value.with_recent(path.resolve()))
        self._screen.touch()

    def edit(self, field: str, text: str) -> None:
        """Take what was typed into a field of the job sheet."""
        sheet = self._screen.sheet
        if sheet is not None:
            if sheet.commit(field, text, self._screen.display):
                self._desk.edit(sheet.sheet)
            self._screen.touch()

    def _look_in(self, place: str) -> None:
        self.edit("place", place)

    def _look_in_zone(self, zone: str) -> None:
        self.edit("zone", zone)

    def _speak(self, language: str) -> None:
        self.edit("language", "" if language == ENGLISH.tag else language)

    def _tick_limit(self, limit_id: str, on: bool) -> None:
        sheet = self._screen.sheet
        if sheet is not None:
            self.edit("published", ticked_text(sheet.sheet.plan.published, limit_id, on=on))

    def undo(self) -> None:
        """Take the last edit back: of the rig in its place, else of the job sheet."""
        if self._screen.place is Place.RIG:
            self._edited_in_rig().undo()
        elif self._screen.place is Place.HUNT:
            self._desk.hunting.undo()
        elif self._screen.place is Place.TEST and self._desk.repairs.undo():
            pass
        elif self.house.typing_rooms:
            self.house.undo()
        elif self._screen.sheet is not None and self._screen.sheet.undo():
            self._desk.edit(self._screen.sheet.sheet)
        self._screen.touch()

    def redo(self) -> None:
        """Do the edit again that was taken back last."""
        if self._screen.place is Place.RIG:
            self._edited_in_rig().redo()
        elif self._screen.place is Place.TEST and self._desk.repairs.redo():
            pass
        elif self.house.typing_rooms:
            self.house.redo()
        elif self._screen.sheet is not None and self._screen.sheet.redo():
            self._desk.edit(self._screen.sheet.sheet)
        self._screen.touch()

    def _edited_in_rig(self) -> RigSheetModel | RegisterModel:
        in_register = self._window.rig.pages.currentIndex() == EQUIPMENT
        return self._screen.register if in_register else self._screen.rig

    def prompted(self, prompt: Prompt, choice: str, reason: str) -> None:
        """Take the answer to a question."""
        if self.repair.prompted(prompt, choice, reason):
            self._screen.touch()
            return
        match prompt.kind:
            case PromptKind.ASK:
                self._answered(prompt, choice)
            case PromptKind.PAUSED:
                self._after_pause(choice)
            case PromptKind.OWED:
                if choice != CLOSE_ANYWAY:
                    self._screen.asking_to_close = False
                    self.go_to(Place.SETUP)
                elif self.house.leave(reason):
                    self._screen.asking_to_close = False
                    self._close()
            case PromptKind.CLOSE:
                self._screen.asking_to_close = False
                if choice == CLOSE:
                    self._close()
        self._screen.touch()

    def close(self) -> None:
        """Close the window: at once, or after a question while a test is under way."""
        self.finish_typing()
        if self._screen.closing:
            return
        job = self._desk.job_moment()
        if self._desk.busy or (job is not None and job.owed):
            self._screen.asking_to_close = True
            self._screen.touch()
        else:
            self._close()

    def _close(self) -> None:
        self._screen.closing = True
        self._screen.teach.close()
        self._screen.scan.close()
        self._screen.touch()
        size = self._window.size()
        self._settings.set(replace(self._settings.value, width=size.width(), height=size.height()))
        self._desk.clear(self._all_closed)

    def _all_closed(self) -> None:
        self._window.may_close = True
        self.gone.emit()
        self._window.close()

    def _answered(self, prompt: Prompt, choice: str) -> None:
        """Take the answer to a question of the test, or end the test at it."""
        snapshot = self._desk.snapshot()
        ask = snapshot.ask if snapshot is not None else None
        if choice == END_TEST and (ask is None or choice not in ask.choices):
            self._desk.end_test()
        else:
            self._desk.answer(prompt.id, choice)

    def _after_pause(self, choice: str) -> None:
        if choice == END_TEST:
            self._desk.end_test()
        elif choice == ACCEPT:
            snapshot = self._desk.snapshot()
            for link in snapshot.links if snapshot is not None else ():
                self._desk.connection.accept_identity(link.name)
        else:
            self._desk.go_on()

    def find_command(self) -> None:
        """Let the person find a command by its words."""
        self.finish_typing()
        actions = self._actions
        commands = [action for action in actions.commands if action is not actions.palette]
        Palette(self._window, commands).show()

    # --- wiring

    def _connect_frame(self) -> None:
        window = self._window
        window.ribbon.stop.clicked.connect(self.stop_fan)
        window.next_bar.pressed.connect(self.press)
        window.rail.asked.connect(self.go_to)
        window.close_asked.connect(self.close)
        window.dropped.connect(self.take_dropped)
        window.close_prompt.chosen.connect(self.prompted)

    def _connect_places(self) -> None:
        window = self._window
        window.job.committed.connect(self.edit)
        window.job.limits.place_chosen.connect(self._look_in)
        window.job.limits.zone_chosen.connect(self._look_in_zone)
        window.job.limits.ticked.connect(self._tick_limit)
        window.job.new.clicked.connect(self.new_job)
        window.job.open.clicked.connect(self.open_job)
        window.job.undo.clicked.connect(self.undo)
        window.job.redo.clicked.connect(self.redo)
        window.test.prompt.chosen.connect(self.prompted)
        window.hunt.prompt.chosen.connect(self.prompted)
        window.report.language_asked.connect(self._speak)
        window.report.missing.jump_asked.connect(self.go_to_field)
        window.report.save.clicked.connect(self.files.save_report)
        window.report.csv.clicked.connect(self.files.export_csv)
        window.report.json.clicked.connect(self.files.export_json)
        hunt, stages = window.hunt.trace, window.stages.plot
        for plot in (window.test.flow, window.test.residuals, window.test.trace, hunt, stages):
            plot.save_asked.connect(self.files.save_plot)

    def _connect_actions(self) -> None:
        actions, window = self._actions, self._window
        actions.primary.triggered.connect(window.next_bar.press)
        for action, call in (
            (actions.new, self.new_job),
            (actions.open, self.open_job),
            (actions.undo, self.undo),
            (actions.redo, self.redo),
            (actions.save, self.files.save_report),
            (actions.csv, self.files.export_csv),
            (actions.json, self.files.export_json),
            (actions.palette, self.find_command),
        ):
            action.triggered.connect(call)
        actions.quit.triggered.connect(window.close)
        actions.place_chosen.connect(self.go_to)
        actions.recent_chosen.connect(self._open_recent)

    def _open_recent(self, text: str) -> None:
        self.opened(Path(text))

    def failed(self, sentence: str, trace: str) -> None:
        """Show an error that nobody caught."""
        self._desk.tell(Severity.ALARM, sentence)
        self.support.show_trouble(sentence, trace)
