"""The atlas: every cause has a coat that shows it, through the same code as her own coats."""

from __future__ import annotations

import pytest

from studiowatch.service.atlas import AtlasPage, pages
from studiowatch.studio.review_causes import Cause


@pytest.mark.parametrize("page", pages(), ids=lambda page: page.cause.value)
def test_that_each_page_names_its_own_cause_first(page: AtlasPage) -> None:
    found = page.read()
    assert found.causes[0].cause is page.cause
    assert found.causes[0].share > 0.5
    assert sum(cause.share for cause in found.causes) == pytest.approx(1.0)
    assert {cause.cause for cause in found.causes} == set(Cause)
    assert all(cause.evidence and all(cause.evidence) for cause in found.causes)
    assert found.remedy.cause is page.cause


@pytest.mark.parametrize("page", [page for page in pages() if page.cause is not Cause.UNKNOWN], ids=lambda p: p.cause)
def test_that_a_page_tells_what_would_have_changed_it(page: AtlasPage) -> None:
    found = page.read()
    assert 1 <= len(found.changes) <= 3
    assert found.changes[0].chance < 0.2 < found.chance
