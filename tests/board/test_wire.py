import re
from collections.abc import Mapping

import pytest
from hypothesis import given
from hypothesis import strategies as st

from studiowatch.board.wire import (
    CRC_START_WITH_BEGIN,
    MOST_LAYOUTS,
    Kind,
    LineParser,
    WireFault,
    WireLine,
    checksum,
    encode,
    read_line,
)

Found = list[WireLine | WireFault]


def crc_by_the_bit(data: bytes, register: int = 0xFFFF) -> int:
    """CRC-16/CCITT-FALSE as its catalogue entry defines it: width 16, poly 0x1021, init 0xFFFF, nothing reflected."""
    for byte in data:
        register ^= byte << 8
        for _ in range(8):
            register = (register << 1 ^ 0x1021 if register & 0x8000 else register << 1) & 0xFFFF
    return register


def parsed(data: bytes, *, portion: int | None = None) -> Found:
    parser = LineParser()
    step = portion or max(len(data), 1)
    return [found for at in range(0, len(data), step) for found in parser.feed(data[at : at + step])]


def stretches(data: bytes) -> list[bytes]:
    """Return what must be accounted for: what LF or the next "$" ends, unless empty. `data` ends with LF."""
    return [part for part in re.split(rb"\n|(?=\$)", data) if part not in {b"", b"\r"}]


# pieces of lines, so that arbitrary bytes come near the grammar often
line_pieces = st.sampled_from(
    [
        b"$",
        b"\n",
        b"\r\n",
        b"*",
        b" ",
        b"D",
        b"H",
        b"t=",
        b"1.5",
        b"!nak",
        b"$D t=1*",
        b"x" * 90,
        b"$D n=0 u=194 t=21.40 h=48.00 a=596.9 s=5001*5962\r\n",
        b"$E n=42 u=42003 c=bus m=no_pull_up*3E38\n",
    ]
)
noise = st.lists(st.one_of(st.binary(max_size=8), line_pieces), max_size=30).map(b"".join)


@pytest.mark.parametrize(
    ("data", "crc"),
    [
        # check value of CRC-16/CCITT-FALSE (CRC-16/IBM-3740) in the published catalogue of CRC algorithms
        (b"123456789", 0x29B1),
        # the initial value, by definition of a CRC without final exclusive-or
        (b"", 0xFFFF),
    ],
)
def test_that_the_checksum_has_its_published_check_value(data: bytes, crc: int) -> None:
    assert checksum(data) == crc
    assert crc_by_the_bit(data) == crc


@given(st.binary(max_size=200))
def test_that_the_checksum_is_the_published_polynomial(data: bytes) -> None:
    assert checksum(data) == crc_by_the_bit(data)


def test_that_the_vectors_carry_the_checksum_of_the_published_algorithm(vectors: Mapping) -> None:
    for vector in vectors["crc"]:
        assert f"{crc_by_the_bit(vector['bytes'].encode('latin-1')):04X}" == vector["crc"]
    for vector in vectors["accepted"]:
        body, _, check = vector["line"].strip()[1:].rpartition("*")
        assert f"{crc_by_the_bit(body.encode('latin-1')):04X}" == check


@pytest.mark.parametrize("portion", [None, 1, 2, 7, 64])
@pytest.mark.parametrize("junk", [b"", b"junk", b"$", b"$D n=1", b"\x00\xff\r"])
def test_that_each_vector_is_accepted_in_any_portions_whatever_follows(
    vectors: Mapping, portion: int | None, junk: bytes
) -> None:
    for vector in vectors["accepted"]:
        found = parsed(vector["line"].encode("latin-1") + junk, portion=portion)
        assert found == [WireLine.of(Kind(vector["kind"]), vector["fields"])]


@pytest.mark.parametrize("portion", [None, 1, 7])
def test_that_each_faulty_vector_is_one_fault_and_the_next_line_is_read(vectors: Mapping, portion: int | None) -> None:
    good = vectors["accepted"][1]
    for vector in vectors["faulty"]:
        found = parsed((vector["line"] + good["line"]).encode("latin-1"), portion=portion)
        assert [type(one) for one in found] == [WireFault, WireLine], vector["why"]


@pytest.mark.parametrize("ending", [b"\n", b"\r\n"])
def test_that_the_carriage_return_may_be_left_out(vectors: Mapping, ending: bytes) -> None:
    for vector in vectors["accepted"]:
        assert isinstance(parsed(vector["line"].strip().encode() + ending)[0], WireLine)


@pytest.mark.parametrize(("length", "kind"), [(160, WireLine), (161, WireFault)])
@pytest.mark.parametrize("portion", [None, 1])
def test_that_a_line_may_have_160_bytes(length: int, kind: type, portion: int | None) -> None:
    body = b"H fw=" + b"x" * (length - len("$H fw=*1234\r\n"))
    line = b"$%b*%04X\r\n" % (body, crc_by_the_bit(body))
    assert len(line) == length
    assert [type(found) for found in parsed(line, portion=portion)] == [kind]


@pytest.mark.parametrize("portion", [None, 1, 50])
def test_that_an_over_long_line_is_one_fault_and_is_skipped_to_its_end(vectors: Mapping, portion: int | None) -> None:
    good = vectors["accepted"][1]["line"].encode()
    found = parsed(b"$D " + b"x" * 5000 + b"\n" + good, portion=portion)
    assert [type(one) for one in found] == [WireFault, WireLine]
    assert "160 bytes" in found[0].reason


def test_that_the_parser_never_holds_more_than_a_line_back() -> None:
    parser = LineParser()
    for _ in range(1000):
        parser.feed(b"\x55" * 1000)
    assert len(parser._pending) <= 160


def test_that_a_half_line_at_the_opening_is_passed_over_uncounted(vectors: Mapping) -> None:
    good = vectors["accepted"][1]["line"].encode()
    for cut in range(1, len(good)):
        found = LineParser(mid_line=True).feed(good[cut:] + good)
        assert [type(one) for one in found] == [WireLine], cut


def test_that_a_whole_line_at_the_opening_is_kept(vectors: Mapping) -> None:
    good = vectors["accepted"][1]["line"].encode()
    assert isinstance(LineParser(mid_line=True).feed(good)[0], WireLine)


@given(noise)
def test_that_any_bytes_give_lines_or_counted_faults(data: bytes) -> None:
    data += b"\n"
    found = parsed(data)
    assert len(found) == len(stretches(data))
    for one in found:
        if isinstance(one, WireFault):
            assert one.quoted().isprintable()
            assert one.reason.endswith(".")


@given(noise, st.lists(st.integers(1, 40), min_size=1, max_size=20))
def test_that_the_portions_make_no_difference(data: bytes, portions: list[int]) -> None:
    parser, at, found = LineParser(), 0, []
    while at < len(data):
        size = portions[at % len(portions)]
        found += parser.feed(data[at : at + size])
        at += size
    assert found == parsed(data) == parsed(data, portion=1)


@given(noise)
def test_that_an_accepted_line_has_only_finite_numbers_and_codes(data: bytes) -> None:
    for found in parsed(data + b"\n"):
        if isinstance(found, WireLine) and found.kind is Kind.DATA:
            assert all(re.fullmatch(r"-?\d+(\.\d+)?|![\w-]+", value, re.ASCII) for value in found.fields.values())


def as_sent(body: bytes, ending: bytes = b"\r\n") -> bytes:
    return b"$%b*%04X%b" % (body, crc_by_the_bit(body), ending)


sent_lines = st.builds(
    lambda number, rest, ending: as_sent(b"D n=%d%b" % (number, rest), ending),
    st.integers(0, 12),
    st.sampled_from(
        [b"", b" t=9.5", b" t=-2.5", b" t=!nak", b" t1=1", b" t2=2", b" t1=1 t2=2", b" t1=1 t1=2", b" t=9."]
    ),
    st.sampled_from([b"\n", b"\r\n", b"\r\r\n", b" \n", b"0\n"]),
)
spoilt_lines = st.builds(
    lambda line, at, byte: line[:at] + bytes([byte]) + line[at + 1 :],
    sent_lines,
    st.integers(0, 30),
    st.sampled_from(b"0159$*=.-!tn \r\n\x00\xff"),
)


@given(st.lists(st.one_of(sent_lines, spoilt_lines), max_size=40).map(b"".join))
def test_that_the_lines_before_it_make_no_difference_to_a_line(data: bytes) -> None:
    forgetful, judged_in_full = LineParser(), []
    for part in data.splitlines(keepends=True):
        forgetful._layouts.clear()
        judged_in_full += forgetful.feed(part)
    assert parsed(data) == judged_in_full


def test_that_keys_that_differ_in_a_digit_are_kept_apart() -> None:
    found = parsed(as_sent(b"D n=0 t1=1") + as_sent(b"D n=1 t2=2") + as_sent(b"D n=2 t1=3"))
    assert [line.fields for line in contents(found)] == [
        {"n": "0", "t1": "1"},
        {"n": "1", "t2": "2"},
        {"n": "2", "t1": "3"},
    ]


def test_that_a_known_layout_is_no_longer_than_a_line_may_be() -> None:
    body = b"D t=1 n=" + b"1" * (159 - len("$D t=1 n=*1234\n"))
    found = parsed(as_sent(body, b"\n") + as_sent(body, b"\n") + as_sent(body) + as_sent(body + b"1"))
    assert [type(one) for one in found] == [WireLine, WireLine, WireLine, WireFault]


def test_that_the_start_before_the_dollar_is_the_checksum_without_it() -> None:
    assert crc_by_the_bit(b"$", CRC_START_WITH_BEGIN) == 0xFFFF


def test_that_the_layouts_remembered_are_bounded() -> None:
    parser = LineParser()
    for number in range(MOST_LAYOUTS + 10):
        letters = "".join(chr(97 + number // 26**place % 26) for place in range(3))
        assert contents(parser.feed(as_sent(f"D n=1 {letters}=1".encode())))
    assert 0 < len(parser._layouts) <= MOST_LAYOUTS


def contents(found: Found) -> list[WireLine]:
    return [one for one in found if isinstance(one, WireLine)]


def test_that_no_single_flipped_bit_yields_a_wrong_line(vectors: Mapping) -> None:
    for vector in vectors["accepted"]:
        line = vector["line"].encode()
        for bit in range(8 * len(line)):
            changed = bytearray(line)
            changed[bit // 8] ^= 1 << bit % 8
            assert contents(parsed(bytes(changed) + b"\n")) in ([], contents(parsed(line))), bytes(changed)


def test_that_no_single_dropped_byte_yields_a_wrong_line(vectors: Mapping) -> None:
    lines = [vector["line"].encode() for vector in vectors["accepted"]]
    for line, following in zip(lines, [*lines[1:], lines[0]], strict=True):
        right = contents(parsed(line + following))
        for at in range(len(line)):
            assert contents(parsed(line[:at] + line[at + 1 :] + following)) in (right, right[1:]), at


keys = st.from_regex(r"[a-z][a-z0-9]{0,7}", fullmatch=True)
numbers = st.from_regex(r"-?[0-9]{1,6}(\.[0-9]{1,4})?", fullmatch=True)


@given(st.dictionaries(keys, numbers, min_size=1, max_size=6))
def test_that_what_is_written_is_read_back(fields: dict[str, str]) -> None:
    assert parsed(encode(Kind.DATA, fields), portion=3) == [WireLine.of(Kind.DATA, fields)]


@pytest.mark.parametrize("fields", [{}, {"t": "nan"}, {"T": "1"}, {"t": "1 h=2 t=3"}, {"t": "1" * 160}])
def test_that_no_line_outside_the_grammar_is_written(fields: dict[str, str]) -> None:
    with pytest.raises(ValueError, match="wire format"):
        encode(Kind.DATA, fields)


def test_that_a_fault_quotes_the_bytes_legibly() -> None:
    fault = read_line(b"\x00\xffT=21\x07" + b"." * 100)
    assert isinstance(fault, WireFault)
    assert fault.quoted().startswith(r"\x00\xffT=21\x07...")
    assert fault.quoted().endswith("…")
