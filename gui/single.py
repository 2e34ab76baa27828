"""One window for each user: a second start hands its job over to the window that is open."""

from __future__ import annotations

import contextlib
import hashlib
from pathlib import Path

from PySide6.QtCore import QLockFile, QObject, Signal
from PySide6.QtNetwork import QLocalServer, QLocalSocket

WAIT_MS = 400
ANSWER_MS = 15_000
"""A window that was reached may be busy, or still being drawn: to give up early would open a second one."""
LONGEST = 4096
TURN_MS = 200
TURNS = 75
"""So often a second start looks whether the window that is being opened hears it by now: about 15 seconds."""


def name_of(settings: Path) -> str:
    """Return the name under which the window listens: one for each settings file, so for each user."""
    return f"airseam-{hashlib.sha256(str(settings.resolve()).encode()).hexdigest()[:16]}"


def enter(settings: Path, job: Path | None) -> QLockFile | None:
    """Return the lock of the only window, to be held as long as it is open; None where another window took the job.

    The lock is there before the window hears anything: who finds it taken waits until that window hears, or is gone.
    """
    name = name_of(settings)
    lock = QLockFile(str(settings.with_name("window.lock")))
    lock.setStaleLockTime(0)  # of a process that lives it is never stale
    with contextlib.suppress(OSError):
        settings.parent.mkdir(parents=True, exist_ok=True)
    for _ in range(TURNS):
        taken = hand_over(name, job)
        if taken:
            return None
        opening = not lock.tryLock(TURN_MS) and lock.error() is QLockFile.LockError.LockFailedError
        if taken is not None or not opening:
            break
    return lock


def hand_over(name: str, job: Path | None) -> bool | None:
    """Give a job to the window that is open; return whether it took it, None where no window hears anything."""
    socket = QLocalSocket()
    socket.connectToServer(name)
    if not socket.waitForConnected(WAIT_MS):
        return None
    socket.write(("" if job is None else str(job.resolve())).encode() + b"\n")
    taken = socket.waitForBytesWritten(WAIT_MS) and socket.waitForReadyRead(ANSWER_MS)
    socket.disconnectFromServer()
    return bool(taken)


class Doorbell(QObject):
    """Listens for second starts. `rung` carries the path of a job, or None."""

    rung = Signal(object)

    def __init__(self, name: str, parent: QObject) -> None:
        """Begin to listen; another window that is gone without a word is taken over."""
        super().__init__(parent)
        self._server = QLocalServer(self)
        self._server.setSocketOptions(QLocalServer.SocketOption.UserAccessOption)
        self._server.newConnection.connect(self._came)
        if not self._server.listen(name):
            QLocalServer.removeServer(name)
            self._server.listen(name)

    @property
    def listening(self) -> bool:
        """Whether second starts are heard."""
        return self._server.isListening()

    def close(self) -> None:
        """Stop listening."""
        self._server.close()

    def _came(self) -> None:
        while (socket := self._server.nextPendingConnection()) is not None:
            socket.readyRead.connect(self._read)
            socket.disconnected.connect(socket.deleteLater)
            if socket.canReadLine():
                self._take(socket)

    def _read(self) -> None:
        socket = self.sender()
        if isinstance(socket, QLocalSocket):
            self._take(socket)

    def _take(self, socket: QLocalSocket) -> None:
        if not socket.canReadLine():
            if socket.bytesAvailable() > LONGEST:
                socket.abort()
            return
        text = bytes(socket.readLine(LONGEST).data()).decode(errors="replace").strip()
        socket.write(b"taken\n")
        socket.flush()
        self.rung.emit(Path(text) if text else None)
