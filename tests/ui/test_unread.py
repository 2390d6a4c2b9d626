"""The window opens without a second reading of each source: what the binding reads for it stays in memory."""

from __future__ import annotations

import json
import subprocess
import sys

import pytest

COUNT = """
import json, linecache, sys
{first}
from studiowatch.ui.app import run_window
print(json.dumps([len([one for one in linecache.cache if "studiowatch" in one]), len(sys.modules)]))
"""
UNREAD = "from studiowatch.ui.unread import leave_sources_unread; leave_sources_unread()"
NAMED = "import PySide6.QtCore"


@pytest.mark.parametrize(("first", "is_read"), [(UNREAD, False), (NAMED, True)])
def test_that_no_source_of_ours_is_read_again_for_the_window(first: str, is_read: bool) -> None:  # noqa: FBT001
    answer = subprocess.run(
        [sys.executable, "-c", COUNT.format(first=first)], capture_output=True, text=True, check=True
    )
    read, modules = json.loads(answer.stdout)
    assert modules > 100
    assert (read > 100) is is_read  # else the binding no longer asks, and `unread` may go
    assert is_read or read <= 5  # `unread` itself and what comes before it
