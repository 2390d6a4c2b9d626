"""A call whose output goes nowhere, or that is stopped while it is read in, ends as shells expect: no traceback."""

from __future__ import annotations

import os
import subprocess
import sys
from collections.abc import Sequence
from pathlib import Path

import pytest

pytestmark = pytest.mark.skipif(sys.platform == "win32", reason="the streams and signals of POSIX")

FULL = Path("/dev/full")


def called(words: Sequence[str], folder: Path, *, before: str = "", stdout: int = subprocess.PIPE) -> tuple[int, str]:
    """Return the exit code and stderr of a call in a process of its own; its output waits for its end, as in a pipe."""
    environ = {name: value for name, value in os.environ.items() if name != "PYTHONUNBUFFERED"}
    code = f"{before}\nimport sys\nfrom studiowatch.__main__ import main\nsys.exit(main())"
    done = subprocess.run(
        [sys.executable, "-c", code, *words],
        check=False,
        stdin=subprocess.DEVNULL,
        stdout=stdout,
        stderr=subprocess.PIPE,
        text=True,
        timeout=60,
        env=environ | {"STUDIOWATCH_FOLDER": str(folder)},
    )
    return done.returncode, done.stderr


@pytest.mark.parametrize("words", [("piece", "list"), ("piece", "list", "--json"), ("--help",)], ids=" ".join)
def test_that_a_reader_that_has_had_enough_is_no_fault(words: Sequence[str], tmp_path: Path) -> None:
    reader, writer = os.pipe()
    os.close(reader)
    try:
        assert called(words, tmp_path, stdout=writer) == (0, "")
    finally:
        os.close(writer)


@pytest.mark.skipif(not FULL.exists(), reason="no device that is always full")
def test_that_a_full_disk_is_told_although_the_output_fits_into_the_buffer(tmp_path: Path) -> None:
    with FULL.open("w") as full:
        answer = called(("piece", "list"), tmp_path, stdout=full.fileno())
    assert answer == (1, "studiowatch: The output cannot be used: No space left on device.\n")


CLOSE = "import os, sys\nsys.{name} = sys.__{name}__ = None\nos.close({number})"


def test_that_a_call_with_its_output_closed_is_answered(tmp_path: Path) -> None:
    close = CLOSE.format(name="stdout", number=1)
    assert called(("piece", "list"), tmp_path, before=close) == (0, "")
    code, told = called(("piece", "show", "Kiln Light"), tmp_path, before=close)
    assert (code, told.count("\n")) == (2, 1)


def test_that_what_is_to_go_to_a_closed_output_is_refused_in_a_sentence(tmp_path: Path) -> None:
    assert called(("piece", "add", "A", "--width-cm", "20", "--height-cm", "20"), tmp_path) == (0, "")
    for words in (("export", "-"), ("history", "--csv", "-")):
        code, told = called(words, tmp_path, before=CLOSE.format(name="stdout", number=1))
        assert code == 2
        assert told == (
            "studiowatch: The output is closed, so that nothing can be written to it; give the name of a file.\n"
        )


def test_that_a_complaint_without_stderr_does_not_go_among_the_answers(tmp_path: Path) -> None:
    with (tmp_path / "out").open("w+") as out:
        code, _ = called(
            ("piece", "show", "Z"),
            tmp_path / "records",
            before=CLOSE.format(name="stderr", number=2),
            stdout=out.fileno(),
        )
        out.seek(0)
        assert (code, out.read()) == (2, "")


STOP = """
import os, signal, sys
class Stop:
    def find_spec(self, name, path=None, target=None):
        if name == {module!r}:
            os.kill(os.getpid(), signal.SIGINT)
sys.meta_path.insert(0, Stop())
"""


@pytest.mark.parametrize("module", ["studiowatch.language", "studiowatch.compose", "numpy"])
def test_that_ctrl_c_while_the_program_is_read_in_ends_it_without_a_word(module: str, tmp_path: Path) -> None:
    assert called(("piece", "list"), tmp_path, before=STOP.format(module=module)) == (130, "")


def test_that_a_program_in_the_background_is_not_stopped_by_ctrl_c_while_it_is_read_in(tmp_path: Path) -> None:
    ignore = "import signal\nsignal.signal(signal.SIGINT, signal.SIG_IGN)"
    assert called(("piece", "list"), tmp_path, before=ignore + STOP.format(module="studiowatch.compose")) == (0, "")
