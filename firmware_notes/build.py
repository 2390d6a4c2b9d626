"""Build the reference sketch and the simulated chip with Debian's tools; standard library only.

    python3 firmware_notes/build.py sketch --out DIR
    python3 firmware_notes/build.py chip --out DIR

Each output carries a hash of its sources in its name, so an output that is there is up to date.
"""

from __future__ import annotations

import argparse
import hashlib
import os
import shutil
import subprocess
import sys
import tempfile
from collections.abc import Sequence
from concurrent.futures import ThreadPoolExecutor
from pathlib import Path
from typing import NamedTuple

HERE = Path(__file__).resolve().parent
SKETCH_SOURCES = HERE / "rack_sensor"
CHIP_SOURCES = HERE / "simulated_chip"

ARDUINO = Path("/usr/share/arduino/hardware/arduino/avr")  # where Debian's arduino-core-avr puts it
CORE = ARDUINO / "cores/arduino"
LIBRARIES = ARDUINO / "libraries"
AVR_LIBC_HEADER = Path("/usr/lib/avr/include/avr/io.h")

MCU_FLAGS = ["-mmcu=atmega328p", "-Os", "-flto"]
COMPILE_FLAGS = [
    *MCU_FLAGS,
    "-DF_CPU=16000000L",
    "-DARDUINO=10819",
    "-DARDUINO_AVR_UNO",
    "-DARDUINO_ARCH_AVR",
    "-DDECIMAL_DIG=9",  # avr-gcc 5.4 leaves it out of float.h, and the core's headers use it
    "-ffunction-sections",
    "-fdata-sections",
]
# -I and not -isystem: avr-gcc 5.4 takes system headers for plain C.
INCLUDE_FLAGS = [
    f"-I{folder}" for folder in (CORE, ARDUINO / "variants/standard", LIBRARIES / "Wire/src", LIBRARIES / "EEPROM/src")
]
LANGUAGE_FLAGS = {
    ".c": ["-std=gnu11", "-fno-fat-lto-objects"],
    ".cpp": ["-std=gnu++11", "-fno-exceptions", "-fno-threadsafe-statics"],
    ".S": ["-x", "assembler-with-cpp"],
}
# What an ATmega328P has (data sheet, "Memories"), less what must stay free.
FLASH_LIMIT_BYTES = 32768 - 2048  # the largest boot section (data sheet, "Boot Loader"): old boot loaders fill it
RAM_LIMIT_BYTES = 2048 - 512  # for the stack: assumption, five times what the simulated chip sees it take

CHIP_FLAGS = ["-std=gnu11", "-O2", "-Wall", "-Wextra"]


class BuildError(Exception):
    """A tool is missing or a compiler refused; the message is for the person at the terminal."""


class Size(NamedTuple):
    """What a sketch takes of the chip, in bytes: `ram` is the fixed part, without the stack."""

    flash: int
    ram: int

    def __str__(self) -> str:
        return (
            f"flash {self.flash} bytes of {FLASH_LIMIT_BYTES} beside a boot loader, "
            f"RAM {self.ram} bytes of {RAM_LIMIT_BYTES} beside the stack"
        )


def missing_tools() -> list[str]:
    """Name the Debian packages without which the sketch or the simulated chip cannot be built.

    Returns
    -------
    list of str
        Package names, sorted; empty when everything is there.
    """
    return sorted(_missing_for_sketch() | _missing_for_chip())


def build_sketch(out_dir: Path, sources: Path = SKETCH_SOURCES) -> Path:
    """Compile and link a sketch as the board's own package would, without an IDE.

    Parameters
    ----------
    out_dir : Path
        Folder for the result; made if it is not there.
    sources : Path
        The sketch's folder; ``NAME/NAME.ino`` and the ``.cpp`` files beside it.

    Returns
    -------
    Path
        The ELF file; a HEX file for uploading lies beside it under the same name.

    Raises
    ------
    BuildError
        If a tool is missing, the compiler refuses the code, or the sketch is too large for the chip.
    """
    _require(_missing_for_sketch())
    elf = _output_path(out_dir, name=sources.name, suffix=".elf", sources=sources)
    if elf.exists() and elf.with_suffix(".hex").exists():
        return elf
    with tempfile.TemporaryDirectory(dir=out_dir) as scratch:
        objects = _compile_sketch(sources, Path(scratch))
        linked = Path(scratch) / "linked.elf"
        _run(["avr-gcc", *MCU_FLAGS, "-fuse-linker-plugin", "-Wl,--gc-sections", *objects, "-o", linked, "-lm"])
        _require_room(measure(linked))
        image = linked.with_suffix(".hex")
        _run(["avr-objcopy", "-O", "ihex", "-R", ".eeprom", linked, image])
        image.replace(elf.with_suffix(".hex"))
        linked.replace(elf)
    return elf


def build_chip(out_dir: Path) -> Path:
    """Compile the simulated chip, a test tool that runs the sketch's machine code.

    Parameters
    ----------
    out_dir : Path
        Folder for the result; made if it is not there.

    Returns
    -------
    Path
        The program.

    Raises
    ------
    BuildError
        If a tool is missing or the compiler refuses the code.
    """
    _require(_missing_for_chip())
    program = _output_path(out_dir, name="simulated_chip", suffix="", sources=CHIP_SOURCES)
    if program.exists():
        return program
    with tempfile.TemporaryDirectory(dir=out_dir) as scratch:
        linked = Path(scratch) / "linked"
        simulator = _run(["pkg-config", "--cflags", "--libs", "simavr"]).split()
        libraries = [*simulator, "-lelf", "-lutil", "-lm"]
        _run(["gcc", *CHIP_FLAGS, *sorted(CHIP_SOURCES.glob("*.c")), "-o", linked, *libraries])
        linked.replace(program)
    return program


def measure(elf: Path) -> Size:
    """Measure what a linked sketch takes of the chip, section by section as avr-size lists them."""
    listed = _run(["avr-size", "--format=sysv", elf])
    rows = (line.split() for line in listed.splitlines() if line.startswith("."))
    taken = {name: int(size) for name, size, *_ in rows}
    return Size(
        flash=taken[".text"] + taken.get(".data", 0),  # what .data begins with is kept in the flash
        ram=taken.get(".data", 0) + taken.get(".bss", 0) + taken.get(".noinit", 0),
    )


def _missing_for_sketch() -> set[str]:
    packages = _missing_programs({"avr-gcc": "gcc-avr", "avr-objcopy": "binutils-avr", "avr-size": "binutils-avr"})
    if not AVR_LIBC_HEADER.exists():
        packages.add("avr-libc")
    if not (CORE / "Arduino.h").exists():
        packages.add("arduino-core-avr")
    return packages


def _missing_for_chip() -> set[str]:
    packages = _missing_programs({"gcc": "build-essential", "pkg-config": "pkg-config"})
    if not Path("/usr/include/libelf.h").exists():
        packages.add("libelf-dev")
    if "pkg-config" in packages or subprocess.run(["pkg-config", "--exists", "simavr"], check=False).returncode:
        packages.add("libsimavr-dev")
    return packages


def _missing_programs(package_of: dict[str, str]) -> set[str]:
    return {package for program, package in package_of.items() if shutil.which(program) is None}


def _require(missing: set[str]) -> None:
    if missing:
        packages = " ".join(sorted(missing))
        raise BuildError(f"The build needs Debian packages that are not installed here: apt install {packages}")


def _require_room(size: Size) -> None:
    if size.flash > FLASH_LIMIT_BYTES or size.ram > RAM_LIMIT_BYTES:
        raise BuildError(f"The sketch is too large for an ATmega328P: {size}. Shorten it.")


def _output_path(out_dir: Path, *, name: str, suffix: str, sources: Path) -> Path:
    out_dir.mkdir(parents=True, exist_ok=True)
    digest = hashlib.sha256(Path(__file__).read_bytes())
    for source in sorted(path for path in sources.iterdir() if path.is_file()):
        digest.update(source.name.encode() + b"\0" + source.read_bytes())
    return out_dir / f"{name}-{digest.hexdigest()[:12]}{suffix}"


def _compile_sketch(sources: Path, scratch: Path) -> list[Path]:
    """Compile the sketch, the two-wire library and the core; return the objects."""
    sketch = sources / f"{sources.name}.ino"
    main_file = scratch / f"{sketch.name}.cpp"  # what an IDE makes of the .ino before it compiles
    main_file.write_text(f'#include <Arduino.h>\n#line 1 "{sketch}"\n{sketch.read_text()}')

    own_code = [main_file, *sorted(sources.glob("*.cpp"))]
    wire = [LIBRARIES / "Wire/src/Wire.cpp", LIBRARIES / "Wire/src/utility/twi.c"]
    core = sorted(path for path in CORE.iterdir() if path.suffix in LANGUAGE_FLAGS)
    jobs = [
        *((source, ["-Wall", "-Wextra", f"-I{sources}"]) for source in own_code),
        *((source, ["-w", "-fpermissive"]) for source in [*wire, *core]),
    ]
    with ThreadPoolExecutor(os.cpu_count()) as compilers:
        return list(compilers.map(lambda job: _compile(*job, into=scratch), jobs))


def _compile(source: Path, flags: Sequence[str], *, into: Path) -> Path:
    compiled = into / f"{source.name}.o"
    _run(
        [
            "avr-gcc",
            *COMPILE_FLAGS,
            *INCLUDE_FLAGS,
            *LANGUAGE_FLAGS[source.suffix],
            *flags,
            "-c",
            source,
            "-o",
            compiled,
        ]
    )
    return compiled


def _run(command: Sequence[str | os.PathLike[str]]) -> str:
    """Run one tool; show its warnings, and stop with its own words if it refuses."""
    done = subprocess.run(command, check=False, capture_output=True, text=True)
    if done.returncode != 0:
        raise BuildError(f"{os.fspath(command[0])} refused:\n{done.stderr}")
    sys.stderr.write(done.stderr)
    return done.stdout


def main() -> int:
    """Build what the command line names and print where it lies."""
    parser = argparse.ArgumentParser(description="Build the reference sketch or the simulated chip.")
    parser.add_argument("what", choices=["sketch", "chip"])
    parser.add_argument("--out", type=Path, required=True, metavar="DIR", help="folder for the result")
    arguments = parser.parse_args()
    try:
        if arguments.what == "chip":
            print(build_chip(arguments.out))
        else:
            elf = build_sketch(arguments.out)
            print(elf)
            print(measure(elf))
    except BuildError as error:
        print(error, file=sys.stderr)
        return 1
    return 0


if __name__ == "__main__":
    sys.exit(main())
