"""Nothing listens on a network: the watch without a window and the window itself, as the processes that they are."""

from __future__ import annotations

import os
import select
import signal
import subprocess
import sys
import time
from collections.abc import Iterator
from contextlib import contextmanager, suppress
from pathlib import Path
from tempfile import TemporaryDirectory

import pytest

_FAMILIES = ("tcp", "tcp6", "udp", "udp6", "udplite", "udplite6", "raw", "raw6", "packet", "sctp/eps")
_INODE_AT = {"packet": 8, "sctp/eps": 7}
_USUAL_INODE_AT = 9  # proc(5): the tenth column of /proc/net/tcp, udp and raw
_PATIENCE_S = 60.0
pytestmark = pytest.mark.skipif(not Path("/proc/net/tcp").is_file(), reason="needs /proc/net of Linux")


def sockets_of(pid: int) -> set[str]:
    """Return the inodes of all sockets that a process has open, those of networks or not."""
    inodes = set()
    for handle in Path(f"/proc/{pid}/fd").iterdir():
        try:
            leads_to = str(handle.readlink())
        except FileNotFoundError:
            continue  # closed meanwhile
        if leads_to.startswith("socket:["):
            inodes.add(leads_to.removeprefix("socket:[").rstrip("]"))
    return inodes


def network_sockets(pid: int) -> dict[str, str]:
    """Return the network sockets of a process: inode to the line of the kernel's table that has it."""
    open_now = sockets_of(pid)
    found = {}
    for family in _FAMILIES:
        table = Path(f"/proc/{pid}/net/{family}")
        for line in table.read_text().splitlines()[1:] if table.is_file() else ():
            inode = line.split()[_INODE_AT.get(family, _USUAL_INODE_AT)]
            if inode in open_now:
                found[inode] = f"{family}: {line}"
    return found


@contextmanager
def started(*words: str, folder: Path, **environment: str) -> Iterator[subprocess.Popen[bytes]]:
    call = [sys.executable, "-m", "studiowatch", *words]
    with subprocess.Popen(
        call,
        stdout=subprocess.PIPE,
        stderr=subprocess.STDOUT,
        cwd=folder,
        env={**os.environ, "PYTHONUNBUFFERED": "1", **environment},
    ) as process:
        try:
            yield process
        finally:
            process.send_signal(signal.SIGTERM)
            process.wait(_PATIENCE_S)


def first_output(process: subprocess.Popen[bytes]) -> str:
    """Return the first that a process prints."""
    assert process.stdout is not None
    ready, _, _ = select.select([process.stdout], [], [], _PATIENCE_S)
    assert ready, "nothing was printed"
    return os.read(process.stdout.fileno(), 4096).decode()


def first_local_socket(process: subprocess.Popen[bytes], folder: Path) -> Path:
    """Return the socket by which a second start finds a window, once it is there."""
    until_s = time.monotonic() + _PATIENCE_S
    while True:
        found = [path for path in folder.glob("studiowatch-*") if path.is_socket()]
        if found:
            return found[0]
        assert time.monotonic() < until_s, "no window came"
        with suppress(subprocess.TimeoutExpired):
            process.wait(0.1)
        assert process.poll() is None, "it ended"


def test_that_the_check_sees_a_socket_that_listens(tmp_path: Path) -> None:
    listens = (
        "import socket, sys; s = socket.create_server(('127.0.0.1', 0)); print('on', flush=True); sys.stdin.read()"
    )
    with subprocess.Popen(
        [sys.executable, "-c", listens], stdin=subprocess.PIPE, stdout=subprocess.PIPE, cwd=tmp_path
    ) as process:
        assert first_output(process).startswith("on")
        found = network_sockets(process.pid)
        process.communicate()
    assert [line.split(":")[0] for line in found.values()] == ["tcp"]


def test_that_the_watch_without_a_window_has_no_network_socket(tmp_path: Path) -> None:
    with started("--folder", str(tmp_path / "studio"), "record", "--simulated", folder=tmp_path) as process:
        assert "°C" in first_output(process)
        assert network_sockets(process.pid) == {}
        assert process.poll() is None


@pytest.mark.window
def test_that_the_window_has_no_network_socket_and_its_local_one_is_its_owners_alone(tmp_path: Path) -> None:
    homes = ("HOME", "XDG_CACHE_HOME", "XDG_DATA_HOME", "XDG_CONFIG_HOME")
    environment = {name: str(tmp_path) for name in homes} | {"QT_QPA_PLATFORM": "offscreen"}
    with (
        TemporaryDirectory() as short,  # the path of a local socket has room for 107 letters, unix(7)
        started("demo", folder=tmp_path, TMPDIR=short, **environment) as process,
    ):
        local = first_local_socket(process, Path(short))
        assert network_sockets(process.pid) == {}
        assert local.stat().st_mode & 0o077 == 0
