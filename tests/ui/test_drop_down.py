"""The field that offers a list: what it shows where there is little room."""

from __future__ import annotations

import pytest

from studiowatch.ui.widgets.drop_down import drop_down_of_names

pytestmark = pytest.mark.window


@pytest.mark.usefixtures("qapp")
def test_that_a_long_name_is_cut_with_a_sign_and_widens_no_form() -> None:
    field = drop_down_of_names()
    field.addItems(["Gate", "A long evening at the edge of the marsh, seen from the old mill"])
    short = field.sizeHint().width()
    field.setCurrentIndex(1)
    assert field.sizeHint().width() == short
    whole_px = field.fontMetrics().horizontalAdvance(field.currentText())
    assert field.fitting(whole_px + 2) == field.currentText()  # parts of a pixel are rounded
    assert field.fitting(whole_px // 2).endswith("…")
