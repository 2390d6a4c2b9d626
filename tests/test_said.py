"""Every sentence goes through `studiowatch.speech.words`, and every language says all of them."""

from __future__ import annotations

import ast
import importlib.util
import re
import string
import sys
from collections.abc import Iterator
from pathlib import Path
from types import ModuleType

import pytest

from studiowatch.speech.words import NO_NUMBER
from studiowatch.ui.translation import translation

ROOT = Path(__file__).resolve().parents[1]
LANGUAGES = ROOT / "resources" / "languages"
PACKAGE = ROOT / "studiowatch"
SAYING = {"say", "say_counted", "mark"}
NOT_SAID = "# not said"  # stands on the line of a text that nobody reads in the window or the terminal
WORDS = re.compile(r"[A-Za-zµ][a-zµ']+[,;:.]? +\(?[A-Za-zµ]")
OTHER_TONGUES = re.compile(
    r"^\s*(SELECT|INSERT|UPDATE|DELETE|CREATE|DROP|ALTER|PRAGMA|WITH|BEGIN|FROM|WHERE|ORDER|AND|VACUUM|ATTACH|DETACH|RELEASE"
    r"|SAVEPOINT|REPLACE|ANALYZE|<|\.|#|Q[A-Z])"
)


def _gather() -> ModuleType:
    spec = importlib.util.spec_from_file_location("gather", LANGUAGES / "gather.py")
    assert spec is not None
    assert spec.loader is not None
    module = importlib.util.module_from_spec(spec)
    sys.modules["gather"] = module
    spec.loader.exec_module(module)
    return module


gather = _gather()


class _Unsaid(ast.NodeVisitor):
    """Collects texts of two words and more that are neither said, nor docstrings, nor another tongue."""

    def __init__(self, lines: list[str]) -> None:
        self.lines = lines
        self.found: list[tuple[int, str]] = []

    def visit_Expr(self, node: ast.Expr) -> None:
        if not isinstance(node.value, ast.Constant):
            self.generic_visit(node)

    def visit_Call(self, node: ast.Call) -> None:
        if isinstance(node.func, ast.Name) and node.func.id in SAYING:
            for argument in node.keywords:
                self.visit(argument.value)
            return
        self.generic_visit(node)

    def visit_JoinedStr(self, node: ast.JoinedStr) -> None:
        text = "".join(str(part.value) if isinstance(part, ast.Constant) else "{}" for part in node.values)
        self._look(node, text)
        for part in node.values:
            if isinstance(part, ast.FormattedValue):
                self.visit(part.value)

    def visit_Constant(self, node: ast.Constant) -> None:
        if isinstance(node.value, str):
            self._look(node, node.value)

    def _look(self, node: ast.expr, text: str) -> None:
        exempt = any(NOT_SAID in line for line in self.lines[node.lineno - 1 : node.end_lineno])
        if WORDS.search(text) and not OTHER_TONGUES.match(text) and not exempt:
            self.found.append((node.lineno, text))


def unsaid(path: Path) -> Iterator[str]:
    """Yield "file:line: text" for each text of a module that the translators do not get."""
    source = path.read_text(encoding="utf-8")
    tree = ast.parse(source)
    for node in ast.walk(tree):
        if isinstance(node, ast.AnnAssign | ast.FunctionDef):
            for annotation in (getattr(node, "annotation", None), getattr(node, "returns", None)):
                if isinstance(annotation, ast.Constant):
                    annotation.value = ""
    visitor = _Unsaid(source.splitlines())
    visitor.visit(tree)
    for line, text in visitor.found:
        yield f"{path.relative_to(ROOT)}:{line}: {text}"


SAID = (
    "program",
    "speech",
    "physics",
    "coats",
    "room",
    "studio",
    "board",
    "store",
    "service",
    "cli",
    "ui",
    "ui.models",
    "ui.print",
    "ui.widgets",
)
"""The packages whose every sentence goes to the translators, by their dotted names; none stands for those within it."""


@pytest.mark.parametrize("package", SAID)
def test_that_every_sentence_goes_to_the_translators(package: str) -> None:
    folder = PACKAGE if package == "program" else PACKAGE.joinpath(*package.split("."))
    assert [line for path in sorted(folder.glob("*.py")) for line in unsaid(path)] == []


def names_in(text: str) -> list[str]:
    return sorted({name for _, name, _, _ in string.Formatter().parse(text) if name is not None})


@pytest.fixture(params=sorted(path.name for path in LANGUAGES.iterdir() if path.is_dir() and path.name[0] != "_"))
def language(request: pytest.FixtureRequest) -> str:
    return str(request.param)


@pytest.mark.parametrize("package", SAID)
def test_that_every_language_says_every_sentence(package: str, language: str) -> None:
    known = gather.translated(LANGUAGES / language)
    assert [sentence.text for sentence in gather.spoken()[package] if not known.get(sentence)] == []


def test_that_a_translation_names_the_values_of_its_sentence(language: str) -> None:
    known = gather.translated(LANGUAGES / language)
    for sentence, forms in known.items():
        for form in forms:
            if not sentence.counted or names_in(form) != [name for name in names_in(sentence.text) if name != "n"]:
                assert names_in(form) == names_in(sentence.text), form


def test_that_the_program_reads_what_the_translators_wrote(language: str) -> None:
    translate = translation(language)
    assert translate is not None
    spoken = {sentence for said in gather.spoken().values() for sentence in said}
    for sentence, forms in gather.translated(LANGUAGES / language).items():
        if forms and sentence in spoken and not sentence.counted:
            assert translate(sentence.text, sentence.about, NO_NUMBER) == forms[0]


if __name__ == "__main__":  # what is still unsaid in a folder or a file
    for argument in map(Path, sys.argv[1:]):
        for module in sorted(argument.resolve().rglob("*.py")) if argument.is_dir() else [argument.resolve()]:
            sys.stdout.writelines(f"{line}\n" for line in unsaid(module))


@pytest.mark.parametrize(
    "other",
    [r"wässrig", r"[Ll]ösungsmittel"],  # wasserbasiert and Lösemittel are said
)
def test_that_german_has_one_word_for_one_thing(other: str) -> None:
    texts = [*(LANGUAGES / "de").glob("*.ts"), *(ROOT / "resources" / "help" / "de").glob("*.html")]
    assert len(texts) > 1
    assert [path.name for path in texts if re.search(other, path.read_text("utf-8"))] == []
