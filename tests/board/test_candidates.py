import pytest

from studiowatch.board.candidates import candidates, may_be_board
from studiowatch.board.port import PortSeen

USB = PortSeen(name="/dev/ttyUSB0", vid=0x1A86, pid=0x7523)
ACM = PortSeen(name="/dev/ttyACM0", vid=0x2341, pid=0x43, serial="A1")
PLAIN = PortSeen(name="/dev/ttyS0")


@pytest.mark.parametrize(
    "port",
    [  # names as the systems give them: from memory
        PortSeen(name="/dev/rfcomm0"),
        PortSeen(name="/dev/cu.Bluetooth-Incoming-Port"),
        PortSeen(name="/dev/cu.debug-console"),
        PortSeen(name="/dev/cu.wlan-debug"),
        PortSeen(name="COM4", description="Standard Serial over Bluetooth link (COM4)"),
        PortSeen(name="COM5", description="Seriell (COM5)", hardware=r"BTHENUM\{00001101-0000-1000-8000-00805F9B34FB}"),
        PortSeen(name="COM3", description="Active Management Technology - SOL (COM3)"),
        PortSeen(name="/dev/ttyGS0"),
    ],
)
def test_that_ports_that_are_clearly_no_board_are_not_tried(port: PortSeen) -> None:
    assert not may_be_board(port)
    assert candidates([port, USB]) == [USB]


@pytest.mark.parametrize(
    "port",
    [
        USB,
        ACM,
        PLAIN,
        PortSeen(name="COM1", description="Communications Port (COM1)"),
        PortSeen(name="COM7", description="USB-SERIAL CH340 (COM7)", vid=0x1A86, pid=0x7523),
        PortSeen(name="/dev/cu.usbmodem14101", description="IOUSBHostDevice", vid=0x2341, pid=0x43),
        PortSeen(name="/dev/cu.usbserial-110", description="USB Serial", vid=0x1A86, pid=0x7523),
    ],
)
def test_that_what_may_be_a_board_is_tried(port: PortSeen) -> None:
    assert candidates([port]) == [port]


def test_that_usb_comes_before_other_ports_the_last_board_before_both_and_a_newcomer_before_all() -> None:
    seen = [PLAIN, USB, ACM]
    assert candidates(seen) == [ACM, USB, PLAIN]
    assert candidates(seen, last=PortSeen(name="elsewhere", vid=USB.vid, pid=USB.pid)) == [USB, ACM, PLAIN]
    assert candidates(seen, last=ACM, fresh={PLAIN.name}) == [PLAIN, ACM, USB]


def test_that_a_wanted_board_is_the_only_one_whatever_its_name() -> None:
    moved = PortSeen(name="/dev/ttyACM5", vid=ACM.vid, pid=ACM.pid, serial=ACM.serial)
    assert candidates([USB, moved], wanted=ACM) == [moved]
    assert candidates([USB], wanted=ACM) == []


def test_that_a_port_named_by_hand_is_tried_though_it_is_not_listed_or_looks_like_no_board() -> None:
    for name in ("/dev/pts/7", "/dev/rfcomm0"):
        assert candidates([USB], wanted=PortSeen(name=name)) == [PortSeen(name=name)]
