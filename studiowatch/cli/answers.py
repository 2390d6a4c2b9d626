"""What a call answers with: exit codes, a wrong call, and one JSON document."""

from __future__ import annotations

import json
import sys
import unicodedata
from typing import NoReturn

DONE = 0
FAULT = 1  # the answer is a fault that the user must act on
WRONG = 2  # the call is wrong
INTERRUPTED = 130  # Ctrl-C, as shells have it


class WrongCall(Exception):  # noqa: N818 - reads as the answer it is
    """The call or a file that it names is wrong; the message says what, value, allowed, one sentence a line."""


def wrong(sentence: str) -> NoReturn:
    """Refuse the call with one sentence."""
    raise WrongCall(sentence)


def print_document(document: object) -> None:
    """Print one JSON document on stdout."""
    print(json.dumps(document, ensure_ascii=False, indent=2, allow_nan=False))


def complain(sentence: str) -> None:
    """Print what may be several sentences, a line each, on stderr; signs that steer a terminal as escapes."""
    shown = "".join(sign if sign == "\n" or not _steers(sign) else f"\\x{ord(sign):02x}" for sign in sentence)
    print(f"studiowatch: {shown}", file=sys.stderr)


def _steers(sign: str) -> bool:
    return unicodedata.category(sign) == "Cc"
