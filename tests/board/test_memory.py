from pathlib import Path

import pytest

from studiowatch.board.memory import BoardMemory
from studiowatch.board.port import PortSeen


@pytest.mark.parametrize(
    "board",
    [PortSeen(name="/dev/ttyACM0", vid=0x2341, pid=0x43, serial="A1"), PortSeen(name="COM3", vid=1, pid=2)],
)
def test_that_a_board_is_known_again(tmp_path: Path, board: PortSeen) -> None:
    BoardMemory(tmp_path / "board.json").keep(board)
    assert BoardMemory(tmp_path / "board.json").recall() == board
    assert [path.name for path in tmp_path.iterdir()] == ["board.json"]


def test_that_no_board_is_known_at_first(tmp_path: Path, caplog: pytest.LogCaptureFixture) -> None:
    assert BoardMemory(tmp_path / "board.json").recall() is None
    assert not caplog.records


@pytest.mark.parametrize(
    "text", ["", "[]", "{}", "null", '{"port": "x", "vid": "many", "pid": 1, "serial": null}', "\x00"]
)
def test_that_a_spoilt_file_is_no_board_and_is_logged(
    tmp_path: Path, caplog: pytest.LogCaptureFixture, text: str
) -> None:
    (tmp_path / "board.json").write_text(text, "utf-8")
    assert BoardMemory(tmp_path / "board.json").recall() is None
    assert "board.json tells no board" in caplog.text


def test_that_a_folder_that_takes_no_file_costs_only_the_memory(
    tmp_path: Path, caplog: pytest.LogCaptureFixture
) -> None:
    BoardMemory(tmp_path / "nowhere" / "board.json").keep(PortSeen(name="x"))
    assert "cannot be remembered" in caplog.text
