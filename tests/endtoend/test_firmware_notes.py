"""What firmware_notes/ tells people, held against the built sketch and the vectors of the wire format."""

from __future__ import annotations

import json
import re
import subprocess
from collections.abc import Callable
from pathlib import Path
from xml.etree import ElementTree as ET

import pytest

from studiowatch.board.events import ReadingArrived
from studiowatch.board.intake import Intake
from studiowatch.room.readings import Channel

from . import chip as chip_module
from .chip import build_script, skip_reason
from .host import Host, checked

NOTES = Path(__file__).resolve().parents[2] / "firmware_notes"
VECTORS = NOTES.parent / "shared" / "wire_vectors.json"
PAGES = sorted(NOTES.glob("*.md"))
NOW_MS = 1_772_442_000_000
SIZE = re.compile(r"takes ([\d,]+) bytes of flash and ([\d,]+) bytes of RAM")
STACK = re.compile(r"deepest stack seen on the simulated board took (\d+) of the RAM")


def words_of(page: str) -> str:
    """Return the page's text on one line."""
    return " ".join((NOTES / page).read_text(encoding="utf-8").split())


def number(text: str) -> int:
    return int(text.replace(",", ""))


@pytest.mark.machine_code
def test_that_the_sketch_takes_what_the_notes_say(chip_builds: Path) -> None:
    build = build_script()
    compiler = subprocess.run(["avr-gcc", "-dumpversion"], capture_output=True, text=True, check=True).stdout.strip()
    if compiler != "5.4.0":
        pytest.skip(f"the notes speak of avr-gcc 5.4.0, here is {compiler}")
    size = build.measure(build.build_sketch(chip_builds))
    said = SIZE.search(words_of("README.md"))
    assert said is not None
    assert (size.flash, size.ram) == (number(said[1]), number(said[2]))


@pytest.mark.machine_code
def test_that_the_limits_lie_inside_the_chip(chip_builds: Path) -> None:
    # avr-libc's own description of the chip
    listed = subprocess.run(
        ["avr-gcc", "-mmcu=atmega328p", "-E", "-dM", "-include", "avr/io.h", "-x", "c", "/dev/null"],
        capture_output=True,
        text=True,
        check=True,
    ).stdout
    macro = dict(re.findall(r"^#define (FLASHEND|RAMSTART|RAMEND) \(?(0x[0-9A-Fa-f]+)", listed, flags=re.MULTILINE))
    flash = int(macro["FLASHEND"], 16) + 1
    ram = int(macro["RAMEND"], 16) + 1 - int(macro["RAMSTART"], 16)
    build = build_script()
    assert flash - 2048 == build.FLASH_LIMIT_BYTES  # the largest boot section is 1024 words: ATmega328P data sheet
    assert ram > build.RAM_LIMIT_BYTES
    size = build.measure(build.build_sketch(chip_builds))
    assert size.flash <= build.FLASH_LIMIT_BYTES
    assert size.ram <= build.RAM_LIMIT_BYTES


@pytest.mark.machine_code
def test_that_a_sketch_too_large_for_the_chip_is_refused(chip_builds: Path, tmp_path: Path) -> None:
    build = build_script()
    sketch = tmp_path / "greedy"
    sketch.mkdir()
    code = "volatile char all[1600];\nvoid setup() { all[0] = 1; }\nvoid loop() {}\n"
    (sketch / "greedy.ino").write_text(code, encoding="utf-8")
    with pytest.raises(
        build.BuildError, match=r"^The sketch is too large for an ATmega328P: flash .* RAM 1[6-9]\d\d bytes"
    ):
        build.build_sketch(chip_builds, sketch)


@pytest.mark.machine_code
def test_that_the_stack_stays_within_what_the_notes_say_whatever_fails(connect: Callable[..., Host]) -> None:
    said = STACK.search(words_of("README.md"))
    assert said is not None
    host = connect(sensor="aht20")
    host.hear(2)
    for command in ("latch 30", "crcbad 2", "stuck 1", "stuck 0", "sensor none", "sensor sht3x", "reset", "hang"):
        host.chip.tell(command)
        host.raw_lines(2.5)
    deepest = int(host.chip.tell("stack").partition(" deepest ")[2])
    assert 0 < deepest <= int(said[1])


@pytest.mark.machine_code
def test_that_the_small_sketch_of_the_notes_sends_what_the_program_reads(
    connect: Callable[..., Host], tmp_path: Path
) -> None:
    text = (NOTES / "wire-format.md").read_text(encoding="utf-8")
    (code,) = re.findall(r"^```cpp\n(.*?)^```$", text, flags=re.DOTALL | re.MULTILINE)
    sketch = tmp_path / "small"
    sketch.mkdir()
    (sketch / "small.ino").write_text(code, encoding="utf-8")
    host = connect(sketch=sketch)
    host.chip.tell("air 900")
    host.chip.tell("noise 0")
    raw = host.raw_lines(3.5)
    host.port.write(b"?")
    raw += host.raw_lines(0.3)
    assert all(checked(line) for line in raw if line.strip())

    intake = Intake()
    events = intake.feed(b"".join(raw), NOW_MS)
    arrived = [event.reading for event in events if isinstance(event, ReadingArrived)]
    assert len(arrived) == 4
    assert (intake.counts.faulty, intake.counts.lost) == (0, 0)
    assert intake.counts.good == len(arrived) + 2  # a hello at the start, and one that was asked for
    for reading in arrived:
        # one step of a 10-bit converter at 5 V: ATmega328P data sheet
        assert reading.air_signal_mV == pytest.approx(900, abs=5000 / 1024)
        codes = {fault.channel: fault.code for fault in reading.faults}
        assert codes == {Channel.TEMPERATURE: "none", Channel.HUMIDITY: "none"}


def test_that_a_machine_without_the_tools_names_the_packages(monkeypatch: pytest.MonkeyPatch, tmp_path: Path) -> None:
    monkeypatch.setenv("PATH", str(tmp_path))
    monkeypatch.setattr(chip_module.sys, "platform", "linux")
    reason = skip_reason()
    assert reason is not None
    assert {"gcc-avr", "binutils-avr", "build-essential", "pkg-config", "libsimavr-dev"} <= set(reason.split())


def test_that_the_notes_show_every_vector_of_the_wire_format() -> None:
    vectors = json.loads(VECTORS.read_text(encoding="utf-8"))
    text = (NOTES / "wire-format.md").read_text(encoding="utf-8")
    shown = re.findall(r"^(\$.*\*[0-9A-F]{4})$", text, flags=re.MULTILINE)
    assert shown == [vector["line"].rstrip() for vector in vectors["accepted"]]
    rows = dict(re.findall(r"^\| (none|`\w+`) \| ([0-9A-F]{4}) \|$", text, flags=re.MULTILINE))
    assert rows == {(f"`{vector['bytes']}`" if vector["bytes"] else "none"): vector["crc"] for vector in vectors["crc"]}


@pytest.mark.parametrize("page", PAGES, ids=lambda page: page.name)
def test_that_every_line_and_every_link_in_the_notes_is_right(page: Path) -> None:
    text = page.read_text(encoding="utf-8")
    lines = re.findall(r"^\$[HDE] .*$", text, flags=re.MULTILINE)
    assert None not in [checked(line.encode()) for line in lines]
    links = re.findall(r"\]\(([^)#]+)\)", text)
    assert [link for link in links if not (NOTES / link).is_file()] == []


@pytest.mark.parametrize("drawing", sorted(NOTES.glob("*.svg")), ids=lambda drawing: drawing.name)
def test_that_a_drawing_has_words_for_those_who_do_not_see_it(drawing: Path) -> None:
    root = ET.parse(drawing).getroot()  # noqa: S314 - a file of our own
    names = {element.get("id"): (element.text or "").strip() for element in root.iter() if element.get("id")}
    labels = root.get("aria-labelledby", "").split()
    assert len(labels) == 2
    assert all(names[label] for label in labels)
