"""A trainer in a process of its own, at the real window: does what a pipe tells, by pressing what is there."""

from __future__ import annotations

import os
from multiprocessing.connection import Connection
from pathlib import Path


def sit_down(pipe: Connection, folder: str, factor: float, port: int) -> None:
    """Open the trainer's window, and obey until told to end."""
    os.environ["QT_QPA_PLATFORM"] = "offscreen"
    from PySide6.QtCore import QCoreApplication

    from drivers.clock import ScaledClock
    from gui.app import application
    from gui.classroom.trainer import Trainer
    from gui.classroom.window import CLASS, FAULTS, HOUSE, ClassWindow
    from gui.look import Look
    from gui.theme import Mode

    look = Look(application(), Mode.DARK)
    window = ClassWindow(look, Trainer(ScaledClock(factor)), Path(folder))
    look.put_on()
    window.resize(1280, 800)
    window.show()

    def draw() -> None:
        for _ in range(3):
            window.tick()
            QCoreApplication.processEvents()

    def obey(order: str, value: str) -> object:
        if order == "open":
            window.choose_page(CLASS)
            window.room.students.setValue(2)
            window.room.port.setValue(port)
            window.room.open_button.click()
            server = window.trainer.server
            return window.trainer.said if server is None else "{}:{}".format(*server.address)
        if order == "throw":
            window.choose_page(FAULTS)
            draw()
            names = [fault.words for fault in window.trainer.faults()]
            window.faults.lines[names.index(value)][1].click()
            return window.trainer.said
        if order == "seats":
            return [(line.student, line.connected) for line in window.trainer.seats()]
        if order == "picture":
            window.choose_page(HOUSE)
            draw()
            return window.grab().save(value)
        if order == "mark":
            window.mark_beside(Path(value))
            window.choose_page(CLASS)
            draw()
            return [(line.points, line.of, line.found) for item in window.trainer.markings for line in item.lines]
        return window.grab().save(value)

    while True:
        if not pipe.poll(0.05):
            draw()
            continue
        order, value = pipe.recv()
        if order == "end":
            break
        pipe.send(obey(order, value))
    window.close()
    look.take_off()
    pipe.send("ended")
