"""The forms that correct one thing: a coat as it was laid, or a look."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import replace

from PySide6.QtWidgets import QCheckBox, QLineEdit, QWidget

from studiowatch.service.commands import Command, LayCoat
from studiowatch.service.correction_commands import CorrectCoat, CorrectLook
from studiowatch.service.piece_view import CoatView, PieceView
from studiowatch.service.product_views import SheetChoice
from studiowatch.speech.words import mark, say
from studiowatch.studio.pieces import Coat, Finding, Look
from studiowatch.ui.bridge import Courier
from studiowatch.ui.models.correction_form import CoatTyped, Measure, offered_measures, read_correction, shown_of
from studiowatch.ui.models.forms import FormError
from studiowatch.ui.models.look_form import ANSWERS
from studiowatch.ui.models.times import MINUTE_MS
from studiowatch.ui.models.tones import Tone
from studiowatch.ui.models.trade_order import in_trade_order
from studiowatch.ui.style import Style
from studiowatch.ui.widgets.dialog import FormDialog
from studiowatch.ui.widgets.drop_down import DropDown, drop_down_of_names
from studiowatch.ui.widgets.form_lines import add_primary
from studiowatch.ui.widgets.text import label
from studiowatch.ui.widgets.time_field import TimeField

KEPT_WORDS = mark("What stood here before is kept in the history of corrections; ready times follow the correction.")


class CoatCorrectionDialog(FormDialog):
    """Corrects what was recorded of a laid coat."""

    def __init__(
        self,
        *,
        title: str,
        coat: CoatView,
        kept: Coat,
        sheets: Sequence[SheetChoice],
        now_ms: Callable[[], int],
        courier: Courier,
        style: Style,
        parent: QWidget,
    ) -> None:
        super().__init__(self._heading_of(coat.label, title), courier, style, parent)
        self._title, self._coat, self._now_ms = title, coat, now_ms
        self._sheets = in_trade_order(sheets)
        shown = shown_of(kept)
        self._make_fields(shown)
        self._lay_out()
        self._show_measure()
        self._shown = replace(self.typed(), kept=shown.kept)
        add_primary(self, say("Keep the correction"))
        self.fit(600, 470)
        self.laid_field.setFocus()

    @staticmethod
    def _heading_of(coat: str, title: str) -> str:
        return say("Correct {coat} on {title}", coat=coat, title=title)

    def _make_fields(self, shown: CoatTyped) -> None:
        self.laid_field = TimeField(shown.laid_ms)
        names = [sheet.name for sheet in self._sheets]
        self._missing = () if shown.sheet in names else (shown.sheet,)
        self.sheet_field = drop_down_of_names()
        self.sheet_field.addItems([*(sheet.title for sheet in self._sheets), *self._missing])
        self.sheet_field.setCurrentIndex(names.index(shown.sheet) if shown.sheet in names else len(names))
        self.measure_field = DropDown()
        self.measure_field.addItems([say(measure.value) for measure in offered_measures()])
        self.measure_field.setCurrentIndex(offered_measures().index(shown.measure))
        self.amount_field = QLineEdit(shown.amount)
        self.thinned_field = QLineEdit(shown.thinned)
        self.covered_on = QCheckBox(say("A mesh cover stands over it since"))
        self.covered_on.setAccessibleName(say("A mesh cover stands over it"))
        self.covered_on.setChecked(shown.covered_ms is not None)
        self.covered_field = TimeField(shown.laid_ms if shown.covered_ms is None else shown.covered_ms)
        self.covered_field.setAccessibleName(say("Covered since"))
        self.covered_field.setEnabled(shown.covered_ms is not None)
        self.covered_on.toggled.connect(self.covered_field.setEnabled)
        self.measure_field.currentIndexChanged.connect(self._show_measure)

    def _lay_out(self) -> None:
        self.field(say("The brush went down"), self.laid_field)
        self.field(say("Data sheet"), self.sheet_field)
        amount = self.row()
        self.field(say("Amount"), self.amount_field, amount, 3)
        self.field(say("Measured"), self.measure_field, amount, 3)
        self.field(say("Thinned by, %"), self.thinned_field, amount, 2)
        covered = self.row()
        covered.addWidget(self.covered_on)
        covered.addWidget(self.covered_field, 1)
        self.follow(self.covered_field)
        self.body.addWidget(label("small", Tone.MUTED, say(KEPT_WORDS), wrap=True))
        self.body.addStretch(1)

    def _show_measure(self) -> None:
        self.amount_field.setEnabled(self._measure() is not Measure.SHEET)

    def _measure(self) -> Measure:
        return offered_measures()[self.measure_field.currentIndex()]

    def typed(self) -> CoatTyped:
        """Return what stands in the fields."""
        names = (*(sheet.name for sheet in self._sheets), *self._missing)
        return CoatTyped(
            sheet=names[self.sheet_field.currentIndex()],
            laid_ms=self.laid_field.time_ms,
            measure=self._measure(),
            amount=self.amount_field.text(),
            thinned=self.thinned_field.text(),
            covered_ms=self.covered_field.time_ms if self.covered_on.isChecked() else None,
        )

    def read(self) -> CorrectCoat | LayCoat:
        """Return the command to correct the coat, or raise FormError."""
        return read_correction(self.typed(), self._coat.key, self._now_ms(), self._shown)

    def words_for(self, command: Command) -> str:
        """Return which coat was corrected."""
        del command
        return say("Corrected: {coat} on {title}", coat=self._coat.label, title=self._title)

    def is_filled(self) -> bool:
        """Return whether something was changed."""
        return self.typed() != self._shown

    def field_of(self, name: str) -> QWidget | None:
        """Return the widget of the field `name`."""
        fields: dict[str, QWidget] = {
            "laid": self.laid_field,
            "covered": self.covered_field,
            "amount": self.amount_field,
            "thinned": self.thinned_field,
        }
        return fields.get(name)


class ForgottenCoatDialog(CoatCorrectionDialog):
    """Records a coat that was laid and forgotten: it goes where its time puts it, below others too."""

    def __init__(
        self,
        *,
        piece: PieceView,
        sheets: Sequence[SheetChoice],
        now_ms: Callable[[], int],
        courier: Courier,
        style: Style,
        parent: QWidget,
    ) -> None:
        self._piece_key = piece.key
        now = now_ms() // MINUTE_MS * MINUTE_MS
        blank = Coat(key="", sheet=in_trade_order(sheets)[0].name, laid_ms=now)
        super().__init__(
            title=piece.title,
            coat=CoatView(
                key="",
                sheet=blank.sheet,
                label=say("a coat"),
                sheen="",
                clear_film=True,
                laid_ms=now,
                surface=None,
                milky=False,
                wet_um=0.0,
                dry_um=0.0,
            ),
            kept=blank,
            sheets=sheets,
            now_ms=now_ms,
            courier=courier,
            style=style,
            parent=parent,
        )
        self.covered_on.hide()
        self.covered_field.hide()

    @staticmethod
    def _heading_of(coat: str, title: str) -> str:
        del coat  # it has no name yet
        return say("Add a coat that was forgotten on {title}", title=title)

    def read(self) -> LayCoat:
        """Return the command to lay the coat, or raise FormError."""
        typed = read_correction(self.typed(), "", self._now_ms())
        return LayCoat(
            piece_key=self._piece_key,
            laid_ms=typed.laid_ms,
            sheet=typed.sheet,
            volume_mL=typed.volume_mL,
            grams=typed.grams,
            wet_um=typed.wet_um,
            thinned_pct=typed.thinned_pct,
            below=True,
        )

    def words_for(self, command: Command) -> str:
        """Return that the coat was recorded."""
        del command
        return say("Recorded: a forgotten coat on {title}", title=self._title)


class LookCorrectionDialog(FormDialog):
    """Corrects when a look was and what it found."""

    def __init__(
        self,
        *,
        title: str,
        coat: CoatView,
        look: Look,
        now_ms: Callable[[], int],
        courier: Courier,
        style: Style,
        parent: QWidget,
    ) -> None:
        heading = say("Correct a look at {coat} on {title}", coat=coat.label, title=title)
        super().__init__(heading, courier, style, parent)
        self._look, self._now_ms, self._title = look, now_ms, title
        self.finding_field = DropDown()
        self.finding_field.addItems([say(ANSWERS[finding]) for finding in Finding])
        self.finding_field.setCurrentIndex(list(Finding).index(look.finding))
        self.time_field = TimeField(look.time_ms)
        self.field(say("It was found"), self.finding_field)
        self.field(say("When"), self.time_field)
        self.body.addWidget(label("small", Tone.MUTED, say(KEPT_WORDS), wrap=True))
        self.body.addStretch(1)
        add_primary(self, say("Keep the correction"))
        self.fit(520, 300)

    def read(self) -> CorrectLook:
        """Return the command to correct the look, or raise FormError."""
        time_ms = self.time_field.time_ms
        if time_ms > self._now_ms():
            raise FormError("time", say("The look was in the future: choose a time that has passed."))
        finding = list(Finding)[self.finding_field.currentIndex()]
        return CorrectLook(look_key=self._look.key, time_ms=time_ms, finding=finding)

    def words_for(self, command: Command) -> str:
        """Return that the look was corrected."""
        del command
        return say("Corrected: a look at {title}", title=self._title)

    def field_of(self, name: str) -> QWidget | None:
        """Return the widget of the field `name`."""
        return self.time_field if name == "time" else None
