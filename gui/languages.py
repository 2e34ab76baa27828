"""Which language the window speaks, and the translation files that it is read from."""

from __future__ import annotations

from functools import cache
from pathlib import Path

from PySide6.QtCore import QCoreApplication, QLibraryInfo, QLocale, QTranslator

from gui.words import Language, speak

FOLDER = Path(__file__).parent / "translations"
TRANSLATED = (Language.GERMAN, Language.FRENCH)


def system_language() -> Language:
    """Return the first language of the operating system that the window speaks, else English."""
    spoken = {item.value: item for item in (Language.ENGLISH, *TRANSLATED)}
    codes = (name.partition("-")[0] for name in QLocale.system().uiLanguages())
    return next((spoken[code] for code in codes if code in spoken), Language.ENGLISH)


def decimal_mark(language: Language) -> str:
    """Return the decimal mark of a language, or that of the operating system."""
    return QLocale.system().decimalPoint() if language is Language.SYSTEM else QLocale(language.value).decimalPoint()


def put_on(app: QCoreApplication, chosen: Language) -> None:
    """Have the window and the dialogs of Qt speak a language; windows that are there already keep theirs."""
    language = system_language() if chosen is Language.SYSTEM else chosen
    for old in app.findChildren(QTranslator):
        app.removeTranslator(old)
        old.deleteLater()
    QLocale.setDefault(QLocale(language.value) if language in TRANSLATED else QLocale.system())
    if language not in TRANSLATED:
        speak(Language.ENGLISH)
        return
    dialogs, own = QTranslator(app), QTranslator(app)
    if dialogs.load(f"qtbase_{language}", QLibraryInfo.path(QLibraryInfo.LibraryPath.TranslationsPath)):
        app.installTranslator(dialogs)
    if not own.load(str(FOLDER / f"airseam_{language}.qm")):
        speak(Language.ENGLISH)
        return
    speak(language, cache(lambda text: own.translate("", text) or text))
