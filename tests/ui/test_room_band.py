"""The figures of the room share the whole width, in however many columns they stand."""

from __future__ import annotations

from PySide6.QtWidgets import QApplication

from studiowatch.ui.models.figures import Figure
from studiowatch.ui.widgets.room_band import RoomBand


def test_that_columns_that_are_given_up_take_no_width(qapp: QApplication) -> None:
    del qapp
    band = RoomBand()
    band.set_columns(4)
    band.set_figures(tuple(Figure(name=name, value="some") for name in ("T", "RH", "Air speed", "Dust")))
    band.set_columns(2)
    band.resize(600, 200)
    band.grab()
    views = [band.layout().itemAt(index).widget() for index in range(4)]
    right_most = max(view.geometry().right() for view in views)
    assert right_most > 570, "the second column reaches the card's margin"


def test_that_a_long_word_stays_within_its_column(qapp: QApplication) -> None:
    del qapp
    band = RoomBand()
    band.set_columns(4)
    band.set_figures(tuple(Figure(name=name, value="beträchtlich") for name in ("T", "RH", "Air speed", "Dust")))
    for width in (900, 600, 1400):
        band.resize(width, 140)
        band.grab()
        for view in (band.layout().itemAt(index).widget() for index in range(4)):
            assert view._value.sizeHint().width() <= view.width()
    band.resize(4000, 140)
    band.grab()
    whole = band.layout().itemAt(0).widget()._value.sizeHint().width()
    band.resize(6000, 140)
    band.grab()
    assert band.layout().itemAt(0).widget()._value.sizeHint().width() == whole
