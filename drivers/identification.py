"""Who is at the other end of a link: which answer can be relied upon, and whether it is the right one. Pure."""

from __future__ import annotations

from dataclasses import dataclass

from drivers.spec import Identity


@dataclass(frozen=True, slots=True)
class Answer:
    """An instrument that said who it is: its serial number and the whole line."""

    serial: str
    line: str


class Identification:
    """Counts questions and answers, since an answer may come so late that it belongs to an earlier question.

    When more than one question was asked, the answers that are still on their way would be taken for replies to what is
    said next. The link is then made only when each question is answered, or when nothing has come for longer than the
    time between two questions.
    """

    def __init__(self, identity: Identity, expected: str, quiet_ns: int) -> None:
        """`expected` is the serial number that must answer, empty for any; `quiet_ns` the silence to wait for."""
        self.expected = expected
        self.answering = ""
        self.stranger = ""
        """A line of the last answer that is no identity and none of the instrument's usual lines."""
        self.identity = identity
        self._quiet_ns = quiet_ns
        self._open_questions = 0
        self._held: Answer | None = None
        self._until_ns = 0

    def reopened(self) -> None:
        """Forget what was asked before the port was opened."""
        self._open_questions = 0
        self._held = None

    def asked(self) -> None:
        """Note a question."""
        self._open_questions += 1
        self._held = None
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
            self._until_ns = now_ns + self._quiet_ns
        elif not usual:
            self.stranger = line

    @property
    def held(self) -> bool:
        """Whether an answer has come that cannot be relied upon yet."""
        return self._held is not None

    def answer(self, now_ns: int, *, in_step: bool) -> Answer | None:
        """Return the answer once it can be relied upon; `in_step` when a late one would do no harm."""
        if self._held is None or not (in_step or self._open_questions == 0 or now_ns >= self._until_ns):
            return None
        answer, self._held = self._held, None
        self._open_questions = 0
        self.answering = answer.serial
        return answer

    def objection(self, answer: Answer) -> str:
        """Return why it is the wrong instrument, empty when it is the right one."""
        if self.expected in ("", answer.serial):
            return ""
        return f"number {answer.serial} answers, expected was {self.expected}"
