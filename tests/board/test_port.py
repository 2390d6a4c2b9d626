import errno
from collections.abc import Callable
from pathlib import Path
from typing import Any

import pytest
import serial
from serial.tools import list_ports
from serial.tools.list_ports_common import ListPortInfo

from studiowatch.board.port import PortGone, PortRefused, PortSeen, SerialPort, ports


def test_that_a_port_given_by_hand_is_read_and_written(make_device: Callable[[], Any]) -> None:
    device = make_device()
    port = SerialPort(device.path)
    try:
        device.send(b"$D t=21.4")
        data = b""
        while len(data) < 9:
            data += port.read_some(5.0)
        assert data == b"$D t=21.4"
        assert port.read_some(0.0) == b""
        port.write(b"?")
        assert device.receive() == b"?"
    finally:
        port.close()


def test_that_a_port_that_is_not_there_is_one_sentence(tmp_path: Path) -> None:
    with pytest.raises(PortGone, match=r"^There is no port .*: plug the board in, or choose another port\.$"):
        SerialPort(str(tmp_path / "ttyNONE"))


def test_that_a_file_that_is_no_serial_port_is_one_sentence(tmp_path: Path) -> None:
    plain = tmp_path / "plain"
    plain.write_bytes(b"")
    with pytest.raises(PortRefused, match=r"cannot be opened as a serial port: choose another port\.$"):
        SerialPort(str(plain))


def test_that_a_port_is_opened_for_one_reader_alone(make_device: Callable[[], Any]) -> None:
    device = make_device()
    port = SerialPort(device.path)
    try:
        with pytest.raises(PortRefused, match="in use by another program"):
            SerialPort(device.path)
    finally:
        port.close()


@pytest.mark.parametrize(
    ("group", "mode", "command"),
    [
        ("dialout", 0o660, "sudo usermod -aG dialout $USER"),
        ("uucp", 0o660, "sudo usermod -aG uucp $USER"),
        ("root", 0o660, "sudo chmod a+rw {name}"),
        ("dialout", 0o600, "sudo chmod a+rw {name}"),
    ],
)
def test_that_permission_denied_gives_the_one_command_that_mends_it(
    monkeypatch: pytest.MonkeyPatch, tmp_path: Path, group: str, mode: int, command: str
) -> None:
    device = tmp_path / "ttyACM0"
    device.write_bytes(b"")
    device.chmod(mode)

    def refuse(*_: object, **__: object) -> None:
        raise serial.SerialException(errno.EACCES, "could not open port: permission denied")

    monkeypatch.setattr(serial, "Serial", refuse)
    monkeypatch.setattr(Path, "group", lambda _: group)
    with pytest.raises(PortRefused) as refusal:
        SerialPort(str(device))
    assert command.format(name=device) in str(refusal.value)


@pytest.mark.parametrize(
    ("platform", "name", "fault", "kind", "words"),
    [
        # what pyserial raises on Windows: the text of the system's error, without its number
        ("win32", "COM3", "could not open port 'COM3': PermissionError(13, 'Access is denied.', None, 5)",
         PortRefused, "in use by another program"),
        ("win32", "COM9", "could not open port 'COM9': FileNotFoundError(2, 'File not found', None, 2)",
         PortGone, "There is no port COM9"),
        ("darwin", "/dev/cu.usbmodem1101", OSError(errno.EBUSY, "Resource busy"),
         PortRefused, "in use by another program"),
        ("darwin", "/dev/cu.usbmodem1101", OSError(errno.ENOENT, "No such file or directory"),
         PortGone, "There is no port /dev/cu.usbmodem1101"),
        ("linux", "/dev/ttyACM0", OSError(errno.EWOULDBLOCK, "Resource temporarily unavailable"),
         PortRefused, "in use by another program"),
    ],
)  # fmt: skip
def test_that_a_refusal_is_understood_on_each_system(
    *, monkeypatch: pytest.MonkeyPatch, platform: str, name: str, fault: str | OSError, kind: type, words: str
) -> None:
    def refuse(*_: object, **__: object) -> None:
        if isinstance(fault, str):
            raise serial.SerialException(fault)
        raise serial.SerialException(fault.errno, f"could not open port {name}: {fault}")

    monkeypatch.setattr(serial, "Serial", refuse)
    monkeypatch.setattr("studiowatch.board.port.sys.platform", platform)
    with pytest.raises(kind, match=words):
        SerialPort(name)


@pytest.mark.parametrize("step", ["tcsetattr", "tcflush"])
def test_that_a_board_that_opening_restarts_may_vanish_meanwhile(
    make_device: Callable[[], Any], monkeypatch: pytest.MonkeyPatch, step: str
) -> None:
    """The serial library lets faults of the terminal's settings through as they are, which are no OSError."""
    termios = pytest.importorskip("termios")
    device = make_device()

    def vanish(*_: object) -> None:
        raise termios.error(errno.EIO, "Input/output error")

    monkeypatch.setattr(termios, step, vanish)
    with pytest.raises(PortGone, match="plug the board in"):
        SerialPort(device.path)


def test_that_the_speed_is_the_one_asked_for(make_device: Callable[[], Any]) -> None:
    device = make_device()
    for how, baud in (({}, 9600), ({"baud": 115_200}, 115_200)):
        port = SerialPort(device.path, **how)
        assert port._device.baudrate == baud
        port.close()


def test_that_a_vanished_device_is_gone(make_device: Callable[[], Any]) -> None:
    device = make_device()
    port = SerialPort(device.path)
    device.vanish()
    with pytest.raises(PortGone, match="vanished"):
        port.read_some(5.0)
    port.cancel()
    port.close()


def test_that_a_port_closed_while_it_is_read_is_gone(make_device: Callable[[], Any]) -> None:
    port = SerialPort(make_device().path)
    port.close()
    port.cancel()
    with pytest.raises(PortGone, match="vanished"):
        port.read_some(1.0)
    with pytest.raises(PortGone, match="vanished"):
        port.write(b"?")


@pytest.mark.parametrize("fault", [OSError(errno.EIO, "gone"), TypeError("closed"), serial.SerialException("lost")])
def test_that_every_way_of_vanishing_is_one_exception(
    make_device: Callable[[], Any], monkeypatch: pytest.MonkeyPatch, fault: Exception
) -> None:
    port = SerialPort(make_device().path)

    def fail(_: int) -> bytes:
        raise fault

    monkeypatch.setattr(port._device, "read", fail)
    with pytest.raises(PortGone, match="vanished"):
        port.read_some(1.0)
    port.close()


def test_that_a_board_is_known_by_its_usb_numbers_not_its_name() -> None:
    board = PortSeen(name="/dev/ttyACM0", vid=0x2341, pid=0x43, serial="A1")
    assert board.is_same_board(PortSeen(name="/dev/ttyACM1", vid=0x2341, pid=0x43, serial="A1"))
    assert not board.is_same_board(PortSeen(name="/dev/ttyACM0", vid=0x2341, pid=0x43, serial="B2"))
    assert board.is_same_board(PortSeen(name="/dev/ttyACM0"))
    assert not PortSeen(name="/dev/ttyS0").is_same_board(PortSeen(name="/dev/ttyS1"))


def test_that_the_ports_are_listed_by_name_with_what_the_system_tells_of_each(monkeypatch: pytest.MonkeyPatch) -> None:
    bare, usb = (ListPortInfo(name, skip_link_detection=True) for name in ("/dev/ttyUSB1", "/dev/ttyACM0"))
    bare.description = bare.hwid = None
    usb.description, usb.hwid = "USB serial", "USB VID:PID=2341:0043 SER=A1"
    usb.vid, usb.pid, usb.serial_number = 0x2341, 0x43, "A1"
    monkeypatch.setattr(list_ports, "comports", lambda: [bare, usb])
    assert ports() == [
        PortSeen(
            name="/dev/ttyACM0",
            description="USB serial",
            hardware="USB VID:PID=2341:0043 SER=A1",
            vid=0x2341,
            pid=0x43,
            serial="A1",
        ),
        PortSeen(name="/dev/ttyUSB1"),
    ]
