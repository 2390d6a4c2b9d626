"""Her language, through Qt's translations."""

from __future__ import annotations

from importlib.resources import as_file, files

from PySide6.QtCore import QCoreApplication, QLibraryInfo, QLocale, QTranslator

from studiowatch.speech.words import Translate

_CONTEXT = "studiowatch"


def translation(language: str) -> Translate | None:
    """Return what the program says in a language, "de", or None if it speaks only English there."""
    translator = QTranslator()
    with as_file(files("studiowatch.resources") / "languages" / f"{language}.qm") as path:
        if not path.is_file() or not translator.load(str(path)):
            return None

    def translate(text: str, about: str, number: int) -> str:
        return translator.translate(_CONTEXT, text, about or None, number) or ""

    return translate


def translate_dialogs(language: str, application: QCoreApplication) -> None:
    """Have Qt's own buttons and dialogs speak a language too, as far as Qt does."""
    translator = QTranslator(application)
    where = QLibraryInfo.path(QLibraryInfo.TranslationsPath)  # type: ignore[attr-defined]  # not in its stubs
    if translator.load(f"qtbase_{language}", where):
        application.installTranslator(translator)


def translate_dates(language: str) -> None:
    """Have the dates of Qt's fields and calendars speak a language too; they stay as her country writes them."""
    own, hers = QLocale.system(), QLocale(language)
    if own.language() is not hers.language() and (language, own.language()) != ("en", QLocale.Language.C):
        QLocale.setDefault(QLocale(hers.language(), own.territory()))


def computer_language() -> str:
    """Return the language of the computer, "de"."""
    return QLocale.system().uiLanguages()[0].partition("-")[0]
