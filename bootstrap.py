"""Install studiowatch beside this file, then start, test or lint it. Only Python's standard library is needed.

    python3 bootstrap.py run [arguments]     start the program; without arguments, the demo
    python3 bootstrap.py test [arguments]    run the tests; arguments go to pytest
    python3 bootstrap.py lint                check format, style, types and layers

Everything goes into ``.venv`` beside this file. A stamp in it says what it holds, so a second start installs nothing.
What this file says goes to standard error: standard output belongs to the program started.

It is one file, and a long one, since it runs before anything is installed that it could be divided into.
"""

from __future__ import annotations

import contextlib
import hashlib
import importlib.util
import json
import os
import shutil
import signal
import subprocess
import sys
import time
from collections import deque
from collections.abc import Callable, Iterator, Mapping, Sequence
from dataclasses import asdict, dataclass, replace
from enum import Enum, auto
from pathlib import Path
from typing import Any

if sys.version_info < (3, 11):  # noqa: UP036 - an older Python is answered in a sentence, not with a traceback
    raise SystemExit(f"studiowatch needs Python 3.11 or newer, and {sys.executable} is {sys.version.split()[0]}.")

ROOT = Path(__file__).resolve().parent
VENV = ROOT / ".venv"
STAMP = VENV / "studiowatch-installed.json"
SCRIPTS = VENV / ("Scripts" if os.name == "nt" else "bin")
PYTHON = SCRIPTS / ("python.exe" if os.name == "nt" else "python")
UNFINISHED = "unfinished\n"
WORKERS = min(2, os.cpu_count() or 1)  # more would only wait for each other on the machines the tests are meant for
INTERRUPTED = 130  # what a shell gives for a program ended by Ctrl-C: 128 + SIGINT

# Debian's names; the query below also knows the "t64" names of https://wiki.debian.org/ReleaseGoals/64bit-time
# fmt: off
WINDOW_PACKAGES = frozenset([
    "libglib2.0-0", "libgl1", "libegl1", "libxkbcommon0", "libfontconfig1", "libdbus-1-3", "libxcb-cursor0",
    "libxcb-icccm4", "libxcb-keysyms1", "libxcb-shape0", "libxcb-xkb1", "libxkbcommon-x11-0", "fonts-dejavu-core",
])
SCREEN_PACKAGES = frozenset(["xvfb", "xauth", "openbox"])
SIMULATED_CHIP_PACKAGES = frozenset([
    "gcc-avr", "avr-libc", "binutils-avr", "arduino-core-avr", "libsimavr-dev", "simavr", "libelf-dev", "pkg-config",
    "gcc", "libc6-dev",
])
# fmt: on
PACKAGES: dict[str, frozenset[str]] = {
    "run": WINDOW_PACKAGES,
    "test": WINDOW_PACKAGES | SCREEN_PACKAGES | SIMULATED_CHIP_PACKAGES,
    "lint": frozenset(),
}
EXTRAS: dict[str, frozenset[str]] = {
    "run": frozenset(),
    "test": frozenset({"test"}),
    "lint": frozenset({"test", "lint"}),
}


class Refusal(Exception):  # noqa: N818 - it is an answer to the user, not a fault of this file
    """Something outside stops the work. Its text is one sentence for the user, and perhaps another program's words."""


class VenvWork(Enum):
    """What ``.venv`` needs before it can be used."""

    NOTHING = auto()
    INSTALL = auto()
    MAKE = auto()


@dataclass(frozen=True, slots=True, kw_only=True)
class Stamp:
    """What ``.venv`` holds, or should hold.

    ``python`` and ``place`` cannot change under a virtual environment; ``project`` is the SHA-256 of pyproject.toml.
    ``packages`` were seen installed on the system; ``tried`` were seen to once, whether they could be installed or not.
    """

    python: str
    place: str
    project: str
    extras: frozenset[str]
    packages: frozenset[str] = frozenset()
    tried: frozenset[str] = frozenset()

    def to_text(self) -> str:
        """Return the stamp as JSON."""
        return json.dumps(asdict(self), indent=1, default=sorted)

    @classmethod
    def from_text(cls, text: str) -> Stamp | None:
        """Return the stamp that `to_text` wrote, or None for any other text."""
        try:
            fields: dict[str, Any] = json.loads(text)
            return cls(**fields | {name: frozenset(fields[name]) for name in ("extras", "packages", "tried")})
        except (ValueError, TypeError, KeyError):
            return None


def needed(command: str) -> Stamp:
    """Return the stamp that `.venv` must bear before `command` can start here."""
    return Stamp(
        python=f"{sys.platform} {sys.implementation.cache_tag}",
        place=str(ROOT),
        project=hashlib.sha256((ROOT / "pyproject.toml").read_bytes()).hexdigest(),
        extras=EXTRAS[command],
    )


def venv_work(stamp_text: str | None, need: Stamp, *, python_exists: bool) -> VenvWork:
    """Return what to do with a `.venv` that bears `stamp_text`.

    One without a stamp was made by the user's own hand and is kept; one with an unreadable stamp was left half made.
    """
    if not python_exists:
        return VenvWork.MAKE
    if stamp_text is None:
        return VenvWork.INSTALL
    held = Stamp.from_text(stamp_text)
    if held is None or (held.python, held.place) != (need.python, need.place):
        return VenvWork.MAKE
    if held.project != need.project or not need.extras <= held.extras:
        return VenvWork.INSTALL
    return VenvWork.NOTHING


def missing_packages(wanted: frozenset[str], dpkg_answer: str) -> frozenset[str]:
    """Return the wanted packages that dpkg-query did not list as installed, under their own or their t64 name."""
    lines = (line.partition(" ") for line in dpkg_answer.splitlines())
    return wanted - {name.removesuffix("t64") for name, _, status in lines if status == "installed"}


def program_arguments(arguments: Sequence[str], environment: Mapping[str, str], platform: str) -> list[str]:
    """Return the arguments to start studiowatch with: the user's own, or the demo, windowed where there is a screen."""
    if arguments:
        return list(arguments)
    has_screen = platform != "linux" or environment.get("DISPLAY") or environment.get("WAYLAND_DISPLAY")
    return ["demo"] if has_screen else ["demo", "--headless"]


def say(text: str) -> None:
    """Print one line of progress."""
    print(text, file=sys.stderr, flush=True)


@contextlib.contextmanager
def step(title: str) -> Iterator[None]:
    """Say what begins, and how long it took once it is done."""
    say(f"{title} ...")
    began_s = time.monotonic()
    yield
    say(f"      done in {time.monotonic() - began_s:.1f} s")


def watch(command: Sequence[str | Path]) -> tuple[int, str]:
    """Run a command, on a terminal with its latest line shown, and return its exit code and last lines."""
    tail: deque[str] = deque(maxlen=12)
    live = sys.stderr.isatty()
    with subprocess.Popen(
        command, stdin=subprocess.DEVNULL, stdout=subprocess.PIPE, stderr=subprocess.STDOUT, text=True, errors="replace"
    ) as process:
        for line in process.stdout or ():
            tail.append(line.rstrip())
            if live:
                print(f"\r      {line.strip()[:70]:<70}", end="", file=sys.stderr, flush=True)
    if live:
        print(f"\r{'':<76}\r", end="", file=sys.stderr, flush=True)
    return process.returncode, "\n".join(tail)


def wanted_packages(command: str, work: VenvWork) -> frozenset[str]:
    """Return the system packages that `command` needs on Debian and its relatives, nothing elsewhere."""
    if sys.platform != "linux" or not (shutil.which("dpkg-query") and shutil.which("apt-get")):
        return frozenset()
    if work is VenvWork.MAKE and importlib.util.find_spec("ensurepip") is None:
        return PACKAGES[command] | {f"python3.{sys.version_info.minor}-venv"}
    return PACKAGES[command]


def find_missing(wanted: frozenset[str]) -> frozenset[str]:
    """Ask dpkg-query once which of the wanted packages are not installed."""
    names = sorted(wanted | {f"{name}t64" for name in wanted})
    query = ["dpkg-query", "-W", "-f", "${Package} ${db:Status-Status}\n", *names]
    # it exits 1 when it does not know a name, which is the ordinary case here
    answer = subprocess.run(query, stdout=subprocess.PIPE, stderr=subprocess.DEVNULL, text=True, check=False)
    return missing_packages(wanted, answer.stdout)


def root_prefix() -> list[str] | None:
    """Return what to put before a command so that it runs as root, or None when this user may not."""
    if os.geteuid() == 0:
        return []
    if shutil.which("sudo") is None:
        return None
    answer = subprocess.run(["sudo", "-n", "true"], capture_output=True, check=False)
    return ["sudo", "-n"] if answer.returncode == 0 else None


def install_packages(missing: frozenset[str], prefix: Sequence[str]) -> None:
    """Install system packages with apt-get, renewing its lists first where that is needed."""
    apt = [*prefix, "env", "DEBIAN_FRONTEND=noninteractive", "apt-get", "-y", "-o", "DPkg::Lock::Timeout=120"]
    install = [*apt, "install", "--no-install-recommends", *sorted(missing)]
    if any(Path("/var/lib/apt/lists").glob("*_Packages*")) and watch(install)[0] == 0:
        return
    watch([*apt, "update"])
    code, tail = watch(install)
    if code != 0:
        raise Refusal(f"apt-get could not install the system packages; it ended with:\n{tail}")


def settle_packages(wanted: frozenset[str], tried: frozenset[str], number: str) -> frozenset[str]:
    """Install what is missing, if this user may and it was not tried before, and return what is still missing."""
    with step(f"{number} System packages"):
        missing = find_missing(wanted) if wanted else wanted
        prefix = root_prefix() if missing - tried else None
        if prefix is not None:
            say(f"      installing {len(missing)} with apt-get")
            try:
                install_packages(missing, prefix)
            except Refusal as refusal:
                say(str(refusal))
            missing = find_missing(wanted)
    if missing:
        say("Some system packages are missing, so not everything may work. To install them:")
        say(f"  sudo apt-get update && sudo apt-get install --no-install-recommends {' '.join(sorted(missing))}")
    return missing


def make_venv(number: str) -> None:
    """Make `.venv` anew, marked unfinished from its first moment."""
    with step(f"{number} Making the Python environment {VENV}"):
        if VENV.exists():
            shutil.rmtree(VENV)
        VENV.mkdir()
        STAMP.write_text(UNFINISHED, encoding="utf-8")
        code, tail = watch([sys.executable, "-m", "venv", VENV])
        if code != 0:
            raise Refusal(f"Python could not make the environment {VENV}; it ended with:\n{tail}")


def install_project(extras: frozenset[str], number: str, stamp_before: str | None) -> None:
    """Install the project and its libraries into `.venv`.

    A clean failure puts `stamp_before` back: an environment that worked is not thrown away for lack of a network.
    """
    STAMP.write_text(UNFINISHED, encoding="utf-8")
    target = f"{ROOT}[{','.join(sorted(extras))}]" if extras else str(ROOT)
    options = ["--disable-pip-version-check", "--no-input", "--progress-bar", "off", "--editable", target]
    with step(f"{number} Installing studiowatch and its libraries with pip"):
        code, tail = watch([PYTHON, "-m", "pip", "install", *options])
        if code == 0:
            return
        if stamp_before is None:
            STAMP.unlink()
        else:
            STAMP.write_text(stamp_before, encoding="utf-8")
        raise Refusal(f"pip could not install the libraries: check the network and start again. It ended with:\n{tail}")


def prepare(command: str) -> None:
    """Bring `.venv` and the system packages to where `command` can start; do nothing when they are."""
    need = needed(command)
    text = STAMP.read_text(encoding="utf-8", errors="replace") if STAMP.exists() else None
    held = (Stamp.from_text(text) if text else None) or replace(need, extras=frozenset())
    work = venv_work(text, need, python_exists=PYTHON.exists())
    wanted = wanted_packages(command, work)
    if work is VenvWork.NOTHING and wanted <= held.packages:
        return
    last = {VenvWork.NOTHING: 1, VenvWork.INSTALL: 2, VenvWork.MAKE: 3}[work]
    missing = settle_packages(wanted, held.tried, f"[1/{last}]")
    extras = need.extras | held.extras
    if work is VenvWork.MAKE:
        make_venv(f"[2/{last}]")
        text = UNFINISHED
    if work is not VenvWork.NOTHING:
        install_project(extras, f"[{last}/{last}]", text)
    write_stamp(replace(need, extras=extras, packages=held.packages | wanted - missing, tried=held.tried | wanted))


def write_stamp(stamp: Stamp) -> None:
    """Put the stamp in place whole or not at all."""
    draft = STAMP.with_suffix(".new")
    draft.write_text(stamp.to_text(), encoding="utf-8")
    draft.replace(STAMP)


def supervise(command: Sequence[str | Path], environment: Mapping[str, str] | None = None) -> int:
    """Run a command to its own end, leave Ctrl-C to it, hand SIGTERM on, and return its exit code."""
    with subprocess.Popen(command, env=environment) as process:
        before = {
            signal.SIGINT: signal.signal(signal.SIGINT, lambda *_: None),
            signal.SIGTERM: signal.signal(signal.SIGTERM, lambda *_: process.terminate()),
        }
        try:
            code = process.wait()
            return code if code >= 0 else 128 - code  # a signal's number, the way shells tell it
        finally:
            for number, handler in before.items():
                signal.signal(number, handler)


@contextlib.contextmanager
def private_screens(count: int) -> Iterator[dict[str, str]]:
    """Open `count` screens nobody sees and yield the environment to use them, without any where Linux has no Xvfb.

    The tests' windows then neither jump at the user nor need a display, and those of one worker never take the
    keyboard from those of another. `DISPLAY` is the first screen, `STUDIOWATCH_TEST_SCREENS` names them all.
    """
    environment = dict(os.environ)
    with contextlib.ExitStack() as stack:
        if sys.platform == "linux":
            environment.pop("WAYLAND_DISPLAY", None)
            screens = [screen for _ in range(count) if (screen := open_xvfb(stack)) is not None]
            if len(screens) < count:
                say("Xvfb is missing or did not start: testing without a screen (QT_QPA_PLATFORM=offscreen).")
                environment["QT_QPA_PLATFORM"] = "offscreen"
            else:
                environment |= {
                    "QT_QPA_PLATFORM": "xcb",
                    "DISPLAY": screens[0],
                    "STUDIOWATCH_TEST_SCREENS": " ".join(screens),
                }
                for screen in screens if shutil.which("openbox") else ():
                    start_aside(stack, ["openbox"], environment=environment | {"DISPLAY": screen})
        yield environment


def open_xvfb(stack: contextlib.ExitStack) -> str | None:
    """Start Xvfb on a free display that ends with `stack`, and return the display, or None if there is none."""
    if shutil.which("Xvfb") is None:
        return None
    reader, writer = os.pipe()
    with open(reader, encoding="ascii") as answer:  # noqa: PTH123 - a descriptor, not a path
        try:
            command = ["Xvfb", "-displayfd", str(writer), "-screen", "0", "1920x1200x24", "-nolisten", "tcp"]
            start_aside(stack, command, pass_fds=(writer,))
        finally:
            os.close(writer)
        number = answer.readline().strip()
    return f":{number}" if number else None


def start_aside(
    stack: contextlib.ExitStack,
    command: Sequence[str],
    *,
    environment: Mapping[str, str] | None = None,
    pass_fds: Sequence[int] = (),
) -> None:
    """Start a quiet helper out of Ctrl-C's reach, ended with `stack`."""
    quiet = subprocess.DEVNULL
    process = subprocess.Popen(
        command, env=environment, pass_fds=pass_fds, stdin=quiet, stdout=quiet, stderr=quiet, start_new_session=True
    )
    stack.callback(process.wait)
    stack.callback(process.terminate)


def run(arguments: Sequence[str]) -> int:
    """Become studiowatch (Windows cannot: there it is started and waited for)."""
    command = [str(PYTHON), "-m", "studiowatch", *program_arguments(arguments, os.environ, sys.platform)]
    if os.name != "nt":
        os.execv(command[0], command)  # noqa: S606 - no shell is the point
    return supervise(command)


def test(arguments: Sequence[str]) -> int:
    """Run pytest from the project's folder, all tests in two workers, or what the arguments choose in one.

    Each worker has a screen of its own and takes the tests of a file together, so that what a file shares is made once.
    """
    os.chdir(ROOT)
    workers = 1 if arguments else WORKERS
    spread = ["-n", str(workers), "--dist", "loadfile"] if workers > 1 else []
    with private_screens(workers) as environment:
        return supervise([PYTHON, "-m", "pytest", *spread, *arguments], environment)


def lint(arguments: Sequence[str]) -> int:
    """Run every checker to its end and show all results; 1 if any failed."""
    if arguments:
        raise Refusal(f"lint takes no arguments, and got: {' '.join(arguments)}")
    os.chdir(ROOT)
    checkers: dict[str, list[str | Path]] = {
        "ruff format": [PYTHON, "-m", "ruff", "format", "--check"],
        "ruff check": [PYTHON, "-m", "ruff", "check"],
        "mypy": [PYTHON, "-m", "mypy"],
        "lint-imports": [SCRIPTS / "lint-imports"],
    }
    failed = [name for name, command in checkers.items() if supervise(command) != 0]
    print(f"lint: {', '.join(failed)} failed" if failed else f"lint: {', '.join(checkers)} passed", flush=True)
    return 1 if failed else 0


ACTIONS: dict[str, Callable[[Sequence[str]], int]] = {"run": run, "test": test, "lint": lint}


def main(arguments: Sequence[str]) -> int:
    """Do what the command line asks and return the exit code."""
    if not arguments or arguments[0] not in ACTIONS:
        say((__doc__ or "").partition("\n\nEverything")[0])
        return 2
    command, *rest = arguments
    try:
        prepare(command)
        return ACTIONS[command](rest)
    except Refusal as refusal:
        say(str(refusal))
        return 1
    except OSError as fault:
        say(f"bootstrap.py could not go on: {fault}")
        return 1
    except KeyboardInterrupt:
        say("\nStopped. The next start takes up what is unfinished.")
        return INTERRUPTED


if __name__ == "__main__":
    raise SystemExit(main(sys.argv[1:]))
