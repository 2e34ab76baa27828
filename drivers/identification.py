"""Who is at the other end of a link: which answer can be relied upon, and whether it is the right one. Pure."""

from __future__ import annotations

from dataclasses import dataclass

from drivers.spec import Identity

ROW_WHEN_BEHIND = 4
"""Answers in a row of an instrument that was behind: more than the replies that any buffer is likely to hold."""


@dataclass(frozen=True, slots=True)
class Answer:
    """An instrument that said who it is: its serial number and the whole line."""

    serial: str
    line: str


class Identification:
    """Counts questions and answers, since an answer may come so late that it belongs to an earlier question.

    When more than one question was asked, the answers that are still on their way would be taken for replies to what is
    said next. The link is then made only when each question is answered, or when nothing has come for longer than the
    time between two questions. An instrument that was once caught answering the question before (a reply stuck in some
    buffer) has to answer several questions in a row: if it is still behind, what it says next is then no reading.
    """

    def __init__(self, identity: Identity, expected: str, quiet_ns: int) -> None:
        """`expected` is the serial number that must answer, empty for any; `quiet_ns` the silence to wait for."""
        self.expected = expected
        self.answering = ""
        self.stranger = ""
        """A line that came after the last question, if all that came was no identity and none of the usual lines."""
        self.identity = identity
        self._quiet_ns = quiet_ns
        self._open_questions = 0
        self._held: Answer | None = None
        self._until_ns = 0
        self._usual_heard = False
        self._row = 0
        self._row_needed = 1

    def reopened(self) -> None:
        """Forget what was asked before the port was opened."""
        self._open_questions = self._row = 0
        self._held = None

    def behind(self) -> None:
        """Note that an answer came that nobody waited for any more."""
        self._row_needed = ROW_WHEN_BEHIND

    def unanswered(self) -> None:
        """Note that the last question found no answer in time."""
        self._row = 0

    def asked(self) -> None:
        """Note a question."""
        self._open_questions += 1
        self._held = None
        self._usual_heard = False
        self.stranger = ""

    def recognises(self, line: str) -> Answer | None:
        """Return the identity in a line, None when it is another line."""
        found = self.identity.pattern.fullmatch(line)
        return None if found is None else Answer((found.group("serial") or "").strip(), line)

    def hear(self, line: str, now_ns: int, *, usual: bool) -> None:
        """Take a line; `usual` when it is one of the instrument's readings or replies."""
        answer = self.recognises(line)
        if answer is not None:
            self._open_questions = max(self._open_questions - 1, 0)
            self._held = answer
            self._row += 1
            self._until_ns = now_ns + self._quiet_ns
            return
        self._row = 0
        if usual:
            self._usual_heard = True
            self.stranger = ""
        elif not self._usual_heard:
            self.stranger = line

    @property
    def held(self) -> bool:
        """Whether an answer has come that cannot be relied upon yet."""
        return self._held is not None

    @property
    def asks_more(self) -> bool:
        """Whether another question has to be asked at once, and answered, before the link is made."""
        return self._held is not None and self._open_questions == 0 and self._row < self._row_needed

    def answer(self, now_ns: int, *, in_step: bool) -> Answer | None:
        """Return the answer once it can be relied upon; `in_step` when a late one would do no harm."""
        if self._held is None or not (in_step or self._open_questions == 0 or now_ns >= self._until_ns):
            return None
        if not in_step and self._row < self._row_needed:
            self._open_questions = 0
            return None
        answer, self._held = self._held, None
        self._open_questions = self._row = 0
        self.answering = answer.serial
        return answer

    def objection(self, answer: Answer) -> str:
        """Return why it is the wrong instrument, empty when it is the right one."""
        if self.expected in ("", answer.serial):
            return ""
        return f"number {answer.serial} answers, expected was {self.expected}"
