from studiowatch.board.loose_intake import LooseIntake
from studiowatch.board.loose_lines import Style
from studiowatch.board.loose_ways import every_way
from studiowatch.board.mapping import ColumnMapping
from studiowatch.board.port import PortSeen
from studiowatch.board.ways import CHECKED_LINES, Heard

PORT = PortSeen(name="/dev/ttyUSB0")
GARBAGE = bytes(range(128, 256)) * 4
TEXT = b"Temp: 21.4 C\r\n" * 20


def test_that_checked_lines_come_first_and_unchecked_ones_at_the_same_rate_where_there_is_text() -> None:
    choose = every_way(lambda _: None)
    assert choose(PORT, Heard()) is CHECKED_LINES
    way = choose(PORT, Heard(tried=(CHECKED_LINES,), data=TEXT))
    assert (way.format, way.baud) == ("unchecked lines", CHECKED_LINES.baud)
    assert isinstance(way.make_intake(), LooseIntake)


def test_that_garbage_leads_to_every_other_rate_once() -> None:
    choose = every_way(lambda _: None)
    tried = (CHECKED_LINES,)
    while way := choose(PORT, Heard(tried=tried, data=GARBAGE)):
        tried += (way,)
    bauds = [way.baud for way in tried]
    assert bauds[:2] == [9600, 115_200]
    assert len(bauds) == len(set(bauds)) == 9


def test_that_a_silent_port_is_not_tried_at_other_rates() -> None:
    assert every_way(lambda _: None)(PORT, Heard(tried=(CHECKED_LINES,))) is None


def test_that_the_kept_mapping_of_the_board_is_used() -> None:
    mapping = ColumnMapping(style=Style.COLUMNS, columns=())
    way = every_way({PORT: mapping}.get)(PORT, Heard(tried=(CHECKED_LINES,), data=TEXT))
    assert way.make_intake().mapping == mapping
