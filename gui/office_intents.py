"""What is asked for about the office and about issuing reports."""

from __future__ import annotations

import json
from dataclasses import fields
from pathlib import Path

from PySide6.QtCore import QObject

from acquisition.issuing import Setting, Wish, issue, next_number
from acquisition.job import JobDetails
from acquisition.job.issues import Issue
from acquisition.kinds import TestKind
from acquisition.office import keep_logo, load_office, save_office
from acquisition.snapshot import Severity
from analysis.errors import InvalidInput
from gui.desk import ISSUE, Desk
from gui.files import Files
from gui.languages import decimal_mark
from gui.screen import Screen
from gui.settings import SettingsFile, display_of
from gui.viewmodels.errors import error_words, sentence
from gui.viewmodels.issuing import DRAFT, IssuePicture, changed_since, issue_picture, version_words
from gui.viewmodels.moment import Place
from gui.viewmodels.over import Over
from gui.viewmodels.settings_page import SettingPicture
from gui.window import Window
from gui.words import say


class OfficeIntents(QObject):
    """Keeps the office with its file; issues reports."""

    def __init__(self, desk: Desk, screen: Screen, window: Window, files: Files, settings: SettingsFile) -> None:
        """Listen."""
        super().__init__(window)
        self._desk = desk
        self._screen = screen
        self._window = window
        self._files = files
        self._settings = settings
        self.path = Path()
        panel = window.report.issue
        panel.issue_asked.connect(self.issue)
        panel.version_chosen.connect(self.show_version)
        window.settings.committed.connect(self.keep)
        window.settings.pick_asked.connect(self._pick)
        window.setup.refusal.clicked.connect(self.show_no_test)

    def open(self, path: Path) -> None:
        """Use the office that is kept there."""
        self.path = path
        try:
            self._screen.office = load_office(path)
        except InvalidInput as error:
            self._desk.tell(Severity.ATTENTION, sentence(error))
        self._screen.touch()

    def go_to(self, field: str) -> None:
        """Show a field of the Settings page."""
        self._screen.show_over(Over.SETTINGS)
        self._window.show_place(self._screen.place, keys=False, over=Over.SETTINGS)
        self._window.settings.fields[field].input.setFocus()

    def keep(self, field: str, text: str) -> None:
        """Take what was typed or chosen for a field of the Settings page, and keep it at once."""
        screen, settings = self._screen, self._settings
        office, chosen = screen.settings.typed(field, text, screen.office, settings.value)
        try:
            if office != screen.office:
                save_office(office, self.path)
                screen.office = office
        except InvalidInput as error:
            self._desk.tell(Severity.ATTENTION, sentence(error))
        if chosen != settings.value:
            settings.set(chosen)
            self._window.look.set_mode(chosen.mode)
            screen.display = display_of(chosen, decimal_mark(chosen.language))
        screen.touch()

    def pictures(self) -> tuple[SettingPicture, ...]:
        """Return the Settings page."""
        return self._screen.settings.pictures(self._screen.office, self._settings.value, self._desk.now())

    def _pick(self, field: str) -> None:
        if field == "logo":
            self._files.ask_open(say("A logo for the reports"), say("Pictures (*.png *.jpg *.jpeg)"), self._logo_picked)
        else:
            self._files.ask_folder(say("Choose a folder"), lambda folder: self.keep(field, str(folder)))

    def _logo_picked(self, path: Path) -> None:
        try:
            self.keep("logo", keep_logo(path, self.path))
        except InvalidInput as error:
            self._desk.tell(Severity.ATTENTION, sentence(error))

    def test_number(self) -> int | None:
        """Return the test that the report is about, None for the report that none was possible."""
        return None if self._screen.no_test else self._desk.showing.number()

    def issues(self) -> tuple[Issue, ...]:
        """Return what was issued of the report that is on show."""
        return self._desk.job.issues.of_test(self.test_number()) if self._desk.job is not None else ()

    def issued_in(self) -> str | None:
        """Return the language of the issued report that is on show, None for a draft."""
        shown = next((item for item in self.issues() if item.id == self._screen.version_shown), None)
        details = _details_of(shown)
        return None if details is None else details.language

    def picture(self, *, possible: bool) -> IssuePicture:
        """Return the panel."""
        job, office, issues = self._desk.job, self._screen.office, self.issues()
        details = job.details if job is not None else JobDetails("")
        number, last = "", issues[-1] if issues else None
        if job is not None and possible:
            try:
                number = next_number(job, self.test_number(), office, self._desk.now())
            except InvalidInput as error:
                number = say("(no number: {error})", error=error_words(error))
        return issue_picture(
            issues,
            self._screen.version_shown,
            number,
            kind=self._kind(),
            signer=office.signer or details.tester,
            changed=changed_since(last, _details_of(last), details),
            possible=possible,
        )

    def issue(self, signer: str, reason: str) -> None:
        """Sign and issue the report that is on show; made beside the window."""
        job, test = self._desk.job, self.test_number()
        if job is None or (test is None and not self._screen.no_test):
            return
        wish = Wish(test, signer, reason)
        setting = Setting(self._screen.office, self.path, self._screen.register.register, self._screen.display)
        now = self._desk.now()

        def done(made: Issue) -> None:
            self._screen.version_shown = made.id
            self.open(self.path)
            self._window.report.issue.issued()
            self._desk.tell(
                Severity.NOTE,
                say("Issued: {version}. Save it as PDF to hand it over.", version=version_words(made)),
                ISSUE,
            )
            self._screen.touch()

        def failed(error: Exception) -> None:
            self._desk.tell(Severity.ATTENTION, say("The report was not issued. {words}", words=sentence(error)), ISSUE)

        self._desk.errands.run(lambda: issue(job, wish, setting, now), done, failed)

    def show_version(self, issue_id: int) -> None:
        """Show the draft or an issued report."""
        self._screen.version_shown = issue_id
        self._screen.touch()

    def show_no_test(self) -> None:
        """Show the report that no test was possible."""
        self._screen.no_test, self._screen.version_shown = True, DRAFT
        self._screen.go_to(Place.REPORT)

    def _kind(self) -> TestKind:
        number = self.test_number()
        found = next((record for record in self._desk.tests() if record.id == number), None)
        return found.plan.kind if found is not None else TestKind.CODE


def _details_of(issue: Issue | None) -> JobDetails | None:
    """Return the details of the job as they were when it was issued."""
    if issue is None:
        return None
    table = json.loads(issue.document).get("details", {})
    known = {field.name for field in fields(JobDetails)}
    return JobDetails(**{name: str(value) for name, value in table.items() if name in known})
