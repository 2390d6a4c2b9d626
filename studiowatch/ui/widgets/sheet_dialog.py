"""The form of a data sheet: the bottle's figures, each in the unit that it is printed in."""

from __future__ import annotations

from collections.abc import Collection
from dataclasses import replace

from PySide6.QtWidgets import QCheckBox, QComboBox, QGridLayout, QHBoxLayout, QLabel, QLineEdit, QPlainTextEdit, QWidget

from studiowatch.coats.data_sheet import DataSheet
from studiowatch.service.commands import Command
from studiowatch.service.sheet_commands import KeepSheet
from studiowatch.service.sheet_words import GENERIC
from studiowatch.speech.words import mark, say
from studiowatch.ui.bridge import Courier
from studiowatch.ui.models.forms import FormError
from studiowatch.ui.models.sheet_figures import LINES, FigureLine, unit_words
from studiowatch.ui.models.sheet_form import KINDS, SHEENS, SheetRead, SheetTyped, new_name, read_sheet, shown_of
from studiowatch.ui.models.tones import Tone
from studiowatch.ui.style import Style
from studiowatch.ui.widgets.dialog import FormDialog
from studiowatch.ui.widgets.drop_down import DropDown
from studiowatch.ui.widgets.form_lines import add_primary
from studiowatch.ui.widgets.text import label, put

_OWN_WORDS = mark(
    "Type what the product's own sheet says. Coats on the rack that were laid by this sheet are dried anew by these "
    "figures; a bottle with another recipe gets a sheet of its own."
)
_UNITS = {line.field: line.units for line in LINES}


class SheetDialog(FormDialog):
    """Makes a sheet of her own from another, or edits one of hers."""

    def __init__(
        self,
        *,
        sheet: DataSheet,
        is_own: bool,
        taken: Collection[str],
        courier: Courier,
        style: Style,
        parent: QWidget,
    ) -> None:
        title = (
            say("Edit the sheet: {title}", title=sheet.title)
            if is_own
            else say("A sheet of my own, from: {title}", title=sheet.title)
        )
        super().__init__(title, courier, style, parent)
        self._name = sheet.name if is_own else ""
        self._taken = frozenset(taken)
        self.figures: dict[str, tuple[QLineEdit, QComboBox]] = {}
        self.line_faults: dict[str, QLabel] = {}
        self._make_fields()
        self._lay_out()
        shown = shown_of(sheet)
        self.show_typed(shown if is_own else replace(shown, title=say("{title}, mine", title=_plain(sheet.title))))
        self._shown = self.typed()
        add_primary(self, say("Keep the sheet"))
        self.fit(720, 760)
        self.title_field.setFocus()
        self.title_field.selectAll()

    def _make_fields(self) -> None:
        self.title_field = QLineEdit()
        self.kind_field, self.sheen_field = DropDown(), DropDown()
        self.kind_field.addItems([say(kind) for kind in KINDS])
        self.sheen_field.addItems([say(sheen) for sheen in SHEENS])
        self.matting_field = QCheckBox(say("It holds matting agent"))
        self.matting_field.setAccessibleName(say("It holds matting agent"))
        self.removable_field = QLineEdit()
        self.cautions_field = QPlainTextEdit()
        self.cautions_field.setProperty("role", "notes")
        self.cautions_field.setTabChangesFocus(True)
        self.cautions_field.setFixedHeight(self.dress.px(84))

    def _lay_out(self) -> None:
        self.body.addWidget(label("small", Tone.MUTED, say(_OWN_WORDS), wrap=True))
        self.field(say("What the bottle is called"), self.title_field)
        self.line_faults["title"] = self._fault_line()
        self.body.addWidget(self.line_faults["title"])
        what = QHBoxLayout()
        what.setSpacing(self.dress.px(10))
        self.field(say("Kind"), self.kind_field, what, 1)
        self.field(say("Sheen"), self.sheen_field, what, 1)
        what.addWidget(self.matting_field)
        self.body.addLayout(what)
        grid = QGridLayout()
        grid.setHorizontalSpacing(self.dress.px(10))
        grid.setVerticalSpacing(self.dress.px(5))
        grid.setColumnStretch(0, 5)
        grid.setColumnStretch(1, 3)
        grid.setColumnStretch(2, 3)
        for row, line in enumerate(LINES):
            self._add_line(grid, 2 * row, line)
        self.body.addLayout(grid)
        self.field(say("Removable with"), self.removable_field)
        self.field(say("Cautions, one a line"), self.cautions_field)
        self.body.addStretch(1)

    def _add_line(self, grid: QGridLayout, row: int, line: FigureLine) -> None:
        hint, words = f" ({say(line.hint)})" if line.hint else "", say(line.words)
        caption = label("body", text=f"{words}{' *' if line.required else ''}{hint}", wrap=True)
        figure, unit, fault = QLineEdit(), DropDown(), self._fault_line()
        figure.setAccessibleName(words)
        figure.setPlaceholderText(say("needed") if line.required else say("not on the sheet"))
        caption.setBuddy(figure)
        for name in line.units:
            unit.addItem(unit_words(name), name)
        unit.setAccessibleName(say("{figure}: unit", figure=words))
        self.follow(figure)
        self.follow(unit)
        figure.textChanged.connect(lambda _text: put(fault, "", hide_empty=True))
        self.figures[line.field] = figure, unit
        self.line_faults[line.field] = fault
        for column, part in enumerate((caption, figure, unit)):
            grid.addWidget(part, row, column)
        grid.addWidget(fault, row + 1, 0, 1, 3)

    def _fault_line(self) -> QLabel:
        made = label("small", Tone.ACT, wrap=True)
        made.hide()
        return made

    def show_typed(self, typed: SheetTyped) -> None:
        """Show `typed` in the fields."""
        self.title_field.setText(typed.title)
        self.kind_field.setCurrentIndex(list(KINDS.values()).index(typed.kind))
        self.sheen_field.setCurrentIndex(list(SHEENS.values()).index(typed.sheen))
        self.matting_field.setChecked(typed.matting_agent)
        for name, (text, unit) in typed.figures.items():
            figure, units = self.figures[name]
            units.setCurrentIndex(units.findData(unit))
            figure.setText(text)
        self.removable_field.setText(typed.removable_with)
        self.cautions_field.setPlainText(typed.cautions)

    def typed(self) -> SheetTyped:
        """Return what stands in the fields."""
        return SheetTyped(
            title=self.title_field.text(),
            kind=list(KINDS.values())[self.kind_field.currentIndex()],
            sheen=list(SHEENS.values())[self.sheen_field.currentIndex()],
            matting_agent=self.matting_field.isChecked(),
            figures={name: (figure.text(), unit.currentData()) for name, (figure, unit) in self.figures.items()},
            removable_with=self.removable_field.text(),
            cautions=self.cautions_field.toPlainText(),
        )

    def _read(self) -> SheetRead:
        typed = self.typed()
        return read_sheet(typed, self._name or new_name(typed.title, self._taken))

    def read(self) -> KeepSheet:
        """Return the command to keep the sheet, or raise FormError with the first fault; all stand at their lines."""
        found = self._read()
        self._show_faults({**found.doubts, **found.faults})
        if found.faults:
            first = next(name for name in self.line_faults if name in found.faults)
            raise FormError(first, found.faults[first])
        return KeepSheet(fields=found.fields)

    def _show_faults(self, faults: dict[str, str]) -> None:
        for name, line in self.line_faults.items():
            put(line, faults.get(name, ""), hide_empty=True)

    def doubt_of(self, command: Command) -> str:
        """Ask once where a figure looks like a slip of the unit, or figures do not go together."""
        del command
        doubts = self._read().doubts
        self._show_faults(dict(doubts))
        return (
            say("Look at the marked lines again, or press again to keep them: {count}.", count=len(doubts))
            if doubts
            else ""
        )

    def words_for(self, command: Command) -> str:
        """Return which sheet was kept."""
        title = command.fields["title"] if isinstance(command, KeepSheet) else ""
        return say("Kept: the sheet {title}", title=title)

    def is_filled(self) -> bool:
        """Return whether something was changed."""
        return self.typed() != self._shown

    def field_of(self, name: str) -> QWidget | None:
        """Return the widget of the field `name`."""
        return self.title_field if name == "title" else self.figures[name][0]


def _plain(title: str) -> str:
    return title.removesuffix(f" {say(GENERIC)}")
