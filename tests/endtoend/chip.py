"""The reference sketch's machine code on the simulated chip, for tests."""

from __future__ import annotations

import importlib.util
import subprocess
import sys
from pathlib import Path
from types import ModuleType, TracebackType
from typing import Self

BUILD_SCRIPT = Path(__file__).resolve().parents[2] / "firmware_notes" / "build.py"
STOP_WITHIN_S = 5


class ChipError(Exception):
    """The simulated chip did not start, refused a command, or is gone."""


def skip_reason() -> str | None:
    """Say why the machine code cannot run on this machine, or None when it can."""
    if not sys.platform.startswith("linux"):
        return f"the simulated chip runs on Linux only, not on {sys.platform}"
    missing = build_script().missing_tools()
    return f"the simulated chip needs these Debian packages: {' '.join(missing)}" if missing else None


class Chip:
    """A powered board whose serial port is the pseudo-terminal at `pty`; a context manager.

    Parameters
    ----------
    build_dir : Path
        Folder outside the source tree where the sketch and the simulated chip are built, or found already built.
    speed : float or None
        Chip seconds for each real second; 0 is as fast as it can; None holds the chip until ``tell("run SECONDS")``.
    seed : int
        Of the random numbers (noise of the bead, bytes dropped and flipped): the same seed gives the same run.
    link : Path or None
        A name for the port that stays the same when the board is unplugged and put back: then `pty` is this link.
    sketch : Path or None
        Folder of another sketch than the reference.
    """

    pty: str

    def __init__(
        self,
        build_dir: Path,
        *,
        speed: float | None = 1,
        seed: int = 1,
        link: Path | None = None,
        sketch: Path | None = None,
    ) -> None:
        script = build_script()
        elf = script.build_sketch(build_dir, *[sketch] if sketch else [])
        pace = ["--hold"] if speed is None else ["--speed", str(speed)]
        name = ["--link", str(link)] if link else []
        self._command = [script.build_chip(build_dir), elf, "--seed", str(seed), *pace, *name]
        self._link = link
        self._process: subprocess.Popen[str] | None = None

    def __enter__(self) -> Self:
        self._process = subprocess.Popen(
            self._command, stdin=subprocess.PIPE, stdout=subprocess.PIPE, text=True, bufsize=1
        )
        greeting = self._next_answer()
        kind, _, self.pty = greeting.partition(" ")
        if kind != "PTY":
            self._stop()
            raise ChipError(f'the simulated chip began with "{greeting}" instead of its port')
        if self._link:
            self.pty = str(self._link)
        return self

    def __exit__(
        self, kind: type[BaseException] | None, error: BaseException | None, trace: TracebackType | None
    ) -> None:
        self._stop()

    def tell(self, command: str) -> str:
        """Give one command and return its answer, such as ``OK air 700 at 12.345000`` (chip time in seconds).

        Raises
        ------
        ChipError
            If the chip refuses the command or is gone; the message is its own.
        """
        stdin = self._running().stdin
        assert stdin is not None
        stdin.write(f"{command}\n")
        stdin.flush()
        answer = self._next_answer()
        if not answer.startswith("OK "):
            raise ChipError(answer or f'the simulated chip is gone; it was told "{command}"')
        return answer

    def _next_answer(self) -> str:
        stdout = self._running().stdout
        assert stdout is not None
        return stdout.readline().rstrip("\n")

    def _running(self) -> subprocess.Popen[str]:
        if self._process is None:
            raise ChipError("the simulated chip is not running: use it in a with statement")
        return self._process

    def _stop(self) -> None:
        process, self._process = self._process, None
        if process is None:
            return
        try:
            process.communicate("quit\n", timeout=STOP_WITHIN_S)
        except subprocess.TimeoutExpired:
            process.kill()
            process.communicate()
            raise ChipError(f"the simulated chip did not stop within {STOP_WITHIN_S} s") from None


def time_of(answer: str) -> float:
    """Take the chip time, in seconds, from an answer such as ``OK air 700 at 12.345000``."""
    return float(answer.partition(" at ")[2].split()[0])


def build_script() -> ModuleType:
    """Load firmware_notes/build.py, a script beside the package and not part of it."""
    spec = importlib.util.spec_from_file_location("firmware_build", BUILD_SCRIPT)
    assert spec is not None
    assert spec.loader is not None
    module = importlib.util.module_from_spec(spec)
    spec.loader.exec_module(module)
    return module
