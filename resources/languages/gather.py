"""Gather the sentences of the program for its translators, and make of their work what the program reads.

    .venv/bin/python resources/languages/gather.py          # after a sentence was written or changed
    .venv/bin/python resources/languages/gather.py --check  # only tell what is missing; 1 if anything is

A language is a folder with a `.ts` file for each package (Qt's format, which Qt Linguist opens); beside it stands the
`.qm` that Qt's `lrelease` makes of them. A sentence that is no longer said goes; a new one comes in as unfinished; one
that another package says too takes its translation from there.
"""

from __future__ import annotations

import argparse
import ast
import subprocess
import sys
import tempfile
from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path
from xml.etree import ElementTree as ET

import PySide6

HERE = Path(__file__).resolve().parent
PACKAGE = HERE.parents[1] / "studiowatch"
CONTEXT = "studiowatch"
COUNTED_TEXTS = 3  # of say_counted: the number, one and many


@dataclass(frozen=True, slots=True)
class Sentence:
    """An English text, what it is about, and whether its form goes with a number."""

    text: str
    about: str = ""
    counted: bool = False


Translations = dict[Sentence, tuple[str, ...]]
"""From each sentence to its forms in a language: one, or as many as it has for a counted one; none if unfinished."""


def sentences(source: str, name: str) -> Iterator[Sentence]:
    """Yield what a module says. Raises ValueError for a text that is no plain literal where one has to be."""
    for node in ast.walk(ast.parse(source)):
        if isinstance(node, ast.Call) and isinstance(node.func, ast.Name):
            yield from _of_call(node, node.func.id, f"{name}:{node.lineno}")


def _of_call(call: ast.Call, name: str, place: str) -> Iterator[Sentence]:
    if name == "say_counted":
        if len(call.args) != COUNTED_TEXTS:
            raise ValueError(f"{place}: say_counted takes the number, the text for one and the text for many")
        yield Sentence(_literal(call.args[2], place), counted=True)
    elif name == "mark":
        yield Sentence(_literal(call.args[0], place))
    elif name == "say" and isinstance(call.args[0], (ast.Constant, ast.JoinedStr)):
        about = next((word.value for word in call.keywords if word.arg == "about"), None)
        yield Sentence(_literal(call.args[0], place), "" if about is None else _literal(about, place))


def _literal(node: ast.expr, place: str) -> str:
    if isinstance(node, ast.Constant) and isinstance(node.value, str):
        return node.value
    raise ValueError(f"{place}: a text for the translators has to be a plain literal")


def spoken() -> dict[str, list[Sentence]]:
    """Return the sentences of each package by its dotted name below studiowatch, in the order of their places."""
    found: dict[str, list[Sentence]] = {}
    for path in sorted(PACKAGE.rglob("*.py")):
        package = ".".join(path.relative_to(PACKAGE).parent.parts) or "program"
        of_package = found.setdefault(package, [])
        said = sentences(path.read_text(encoding="utf-8"), str(path.relative_to(PACKAGE)))
        of_package += [sentence for sentence in dict.fromkeys(said) if sentence not in of_package]
    return {package: said for package, said in found.items() if said}


def translated(folder: Path) -> Translations:
    """Return what the `.ts` files of a language say. Raises ValueError where two of them disagree."""
    known: Translations = {}
    for path in sorted(folder.glob("*.ts")):
        for message in ET.parse(path).iter("message"):  # noqa: S314 - our own file
            sentence, forms = _of_message(message)
            if known.get(sentence) and forms and known[sentence] != forms:
                raise ValueError(f"{path.name}: {sentence.text!r} is translated otherwise in another file")
            known[sentence] = forms or known.get(sentence, ())
    return known


def _of_message(message: ET.Element) -> tuple[Sentence, tuple[str, ...]]:
    counted = message.get("numerus") == "yes"
    sentence = Sentence(message.findtext("source", ""), message.findtext("comment", ""), counted)
    translation = message.find("translation")
    if translation is None or translation.get("type") == "unfinished":
        return sentence, ()
    forms = [form.text or "" for form in translation.iter("numerusform")] if counted else [translation.text or ""]
    return sentence, tuple(forms)


def document(language: str, said: list[Sentence], known: Translations) -> str:
    """Return the `.ts` file of one package."""
    root = ET.Element("TS", version="2.1", language=language, sourcelanguage="en")
    context = ET.SubElement(root, "context")
    ET.SubElement(context, "name").text = CONTEXT
    for sentence in said:
        context.append(_message(sentence, known.get(sentence, ())))
    ET.indent(root)
    body = ET.tostring(root, encoding="unicode")
    return f'<?xml version="1.0" encoding="utf-8"?>\n<!DOCTYPE TS>\n{body}\n'


def _message(sentence: Sentence, forms: tuple[str, ...]) -> ET.Element:
    message = ET.Element("message", {"numerus": "yes"} if sentence.counted else {})
    ET.SubElement(message, "source").text = sentence.text
    if sentence.about:
        ET.SubElement(message, "comment").text = sentence.about
    translation = ET.SubElement(message, "translation", {} if forms else {"type": "unfinished"})
    if sentence.counted:
        for form in forms:
            ET.SubElement(translation, "numerusform").text = form
    elif forms:
        translation.text = forms[0]
    return message


def release(language: str, known: Translations, target: Path) -> None:
    """Make the file that the program reads. Raises CalledProcessError."""
    tools = Path(PySide6.__file__).parent
    lrelease = next(
        path for path in (tools / "lrelease", tools / "lrelease.exe", tools / "Qt/libexec/lrelease") if path.exists()
    )
    with tempfile.TemporaryDirectory() as folder:
        whole = Path(folder) / "whole.ts"
        whole.write_text(document(language, list(known), known), encoding="utf-8")
        subprocess.run([lrelease, "-silent", whole, "-qm", target], check=True)  # noqa: S603 - our own file


def main() -> int:
    """Bring every language up to what is said now; return 1 if --check finds one behind."""
    asked = argparse.ArgumentParser(description=(__doc__ or "").partition("\n")[0])
    asked.add_argument("--check", action="store_true", help="change nothing, only tell what is missing")
    only_check = asked.parse_args().check
    packages, behind = spoken(), False
    for folder in sorted(path for path in HERE.iterdir() if path.is_dir() and not path.name.startswith("_")):
        known = translated(folder)
        missing = {package: [one for one in said if not known.get(one)] for package, said in packages.items()}
        for package, texts in missing.items():
            done, whole = len(packages[package]) - len(texts), len(packages[package])
            sys.stdout.write(f"{folder.name}: {package}: {done} of {whole} translated\n")
        behind |= any(missing.values())
        if not only_check:
            for path in folder.glob("*.ts"):
                if path.stem not in packages:
                    path.unlink()
            for package, said in packages.items():
                (folder / f"{package}.ts").write_text(document(folder.name, said, known), encoding="utf-8")
            kept = {one: known[one] for said in packages.values() for one in said if known.get(one)}
            release(folder.name, kept, HERE / f"{folder.name}.qm")
    return 1 if only_check and behind else 0


if __name__ == "__main__":
    sys.exit(main())
