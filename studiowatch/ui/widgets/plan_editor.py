"""One piece's plan: its coats to come, which may be moved, changed, taken out and added, and what is said of them."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from functools import partial
from typing import TypeVar

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QFrame, QHBoxLayout, QMenu, QScrollArea, QVBoxLayout, QWidget

from studiowatch.service.plan_commands import (
    MovePlanned,
    PlanCoat,
    PlanCoats,
    PlannedCommand,
    ReplacePlanned,
    SaveRecipe,
    UnplanCoat,
)
from studiowatch.service.product_views import SheetChoice
from studiowatch.speech.words import say
from studiowatch.studio.recipes import Recipe
from studiowatch.ui.models.plan_words import NO_COATS, PieceEditor
from studiowatch.ui.models.tones import Tone
from studiowatch.ui.plain import literal
from studiowatch.ui.style import Style
from studiowatch.ui.widgets.plan_rows import CoatRowView, SaidRowView, offer_sheets
from studiowatch.ui.widgets.text import button, label, put

ViewT = TypeVar("ViewT", CoatRowView, SaidRowView)


class PlanEditor(QFrame):
    """`asked` carries a command and what to say once it is done; `save_asked` the sheets of a recipe to keep."""

    asked = Signal(object, str)
    save_asked = Signal(object)

    def __init__(self, sheets: Sequence[SheetChoice]) -> None:
        super().__init__()
        self.setProperty("card", "plain")
        self.setAccessibleName(say("The chosen piece's plan"))
        self._sheets = tuple(sheets)
        self._shown: PieceEditor | None = None
        self._recipes: tuple[Recipe, ...] = ()
        self._style = Style()
        self._title = label("title", wrap=True)
        self._due, self._slack = label("body", Tone.MUTED), label("strong")
        self._empty = label("body", Tone.MUTED, say(NO_COATS), wrap=True)
        self.add, self.apply = button(say("+ add a coat")), button(say("Apply a recipe"))
        self.keep = button(say("Keep as a recipe…"), "link", say("Keep these coats to come under a name"))
        self.recipes, self.forget = QMenu(self.apply), QMenu(self.apply)
        self.forget.setTitle(say("Delete a recipe of yours"))
        self.apply.setMenu(self.recipes)
        offer_sheets(self.add, self._sheets, self._add)
        self.keep.clicked.connect(lambda: self.save_asked.emit(self._shown.sheets if self._shown else ()))
        self.coats: list[CoatRowView] = []
        self._said: list[SaidRowView] = []
        self._fit: list[SaidRowView] = []
        self._compose()

    def _compose(self) -> None:
        inside = QWidget()
        inside.setObjectName("inside")
        self._column = QVBoxLayout(inside)
        head = QHBoxLayout()
        head.addWidget(self._due)
        head.addStretch(1)
        head.addWidget(self._slack)
        self._coat_place, self._said_place, self._fit_place = QVBoxLayout(), QVBoxLayout(), QVBoxLayout()
        buttons = QHBoxLayout()
        for part in (self.add, self.apply):
            buttons.addWidget(part)
        buttons.addStretch(1)
        self._column.addWidget(self._title)
        self._column.addLayout(head)
        self._column.addWidget(label("strong", text=say("Coats to come")))
        self._column.addWidget(self._empty)
        self._column.addLayout(self._coat_place)
        self._column.addLayout(buttons)
        self._column.addWidget(self.keep, 0, Qt.AlignmentFlag.AlignLeft)
        self._column.addLayout(self._said_place)
        self._column.addLayout(self._fit_place)
        self._column.addStretch(1)
        self._scroll(inside)

    def _scroll(self, inside: QWidget) -> None:
        scroll = QScrollArea()
        scroll.setAccessibleName(say("The chosen piece's plan"))
        scroll.setWidgetResizable(True)
        scroll.setFrameShape(QFrame.Shape.NoFrame)
        scroll.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        scroll.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        scroll.setWidget(inside)
        around = QVBoxLayout(self)
        around.setContentsMargins(2, 2, 2, 2)
        around.addWidget(scroll)

    def set_style(self, style: Style) -> None:
        """Use `style` from now on."""
        self._style = style
        px = style.px
        self._column.setContentsMargins(px(12), px(10), px(12), px(10))
        self._column.setSpacing(px(8))
        for place in (self._coat_place, self._said_place, self._fit_place):
            place.setSpacing(px(8))
        for coat in self.coats:
            coat.set_style(style)
        for said in (*self._said, *self._fit):
            said.set_style(style)

    def offer(self, sheets: Sequence[SheetChoice]) -> None:
        """Offer `sheets` for the coats to come from now on."""
        self._sheets = tuple(sheets)
        offer_sheets(self.add, self._sheets, self._add)
        for coat in self.coats:
            coat.offer(self._sheets)

    def show_piece(self, shown: PieceEditor | None, recipes: tuple[Recipe, ...]) -> None:
        """Show one piece's plan, or nothing."""
        self.setVisible(shown is not None)
        self._set_recipes(recipes)
        if shown is None or shown == self._shown:
            self._shown = shown
            return
        self._shown = shown
        put(self._title, shown.title)
        put(self._due, shown.due)
        put(self._slack, shown.slack, shown.slack_tone)
        self._empty.setVisible(not shown.coats)
        self.keep.setEnabled(bool(shown.coats))
        self._fill(self.coats, self._coat_place, len(shown.coats), self._coat_view)
        for view, row in zip(self.coats, shown.coats, strict=False):
            view.set_row(row)
        for views, place, rows in (
            (self._said, self._said_place, shown.said),
            (self._fit, self._fit_place, shown.fit),
        ):
            self._fill(views, place, len(rows), SaidRowView)
            for said, one in zip(views, rows, strict=False):
                said.set_row(one)

    def _fill(self, views: list[ViewT], place: QVBoxLayout, count: int, make: Callable[[], ViewT]) -> None:
        """Have as many views as there are rows; those that are not needed are hidden."""
        while len(views) < count:
            view = make()
            view.set_style(self._style)
            place.addWidget(view)
            views.append(view)
        for at, view in enumerate(views):
            view.setVisible(at < count)

    def _coat_view(self) -> CoatRowView:
        view = CoatRowView(self._sheets)
        view.moved.connect(
            lambda key, place: self._ask(MovePlanned(coat_key=key, place=place), say("The coat was moved."))
        )
        view.changed.connect(
            lambda key, sheet: self._ask(ReplacePlanned(coat_key=key, sheet=sheet), say("Another coat is planned."))
        )
        view.dropped.connect(
            lambda key: self._ask(UnplanCoat(coat_key=key), say("The coat was taken out of the plan."))
        )
        return view

    def _set_recipes(self, recipes: tuple[Recipe, ...]) -> None:
        if recipes == self._recipes:
            return
        self._recipes = recipes
        self.recipes.clear()
        self.forget.clear()
        for recipe in recipes:
            self.recipes.addAction(literal(recipe.title), partial(self._apply, recipe))
        own = [recipe for recipe in recipes if recipe.own]
        if own:
            self.recipes.addSeparator()
            self.recipes.addMenu(self.forget)
            for recipe in own:
                self.forget.addAction(literal(recipe.title), partial(self._delete, recipe))

    def _add(self, sheet: str) -> None:
        if self._shown is not None:
            self._ask(PlanCoat(piece_key=self._shown.key, sheet=sheet), say("A coat was added to the plan."))

    def _apply(self, recipe: Recipe) -> None:
        if self._shown is not None:
            self._ask(
                PlanCoats(piece_key=self._shown.key, sheets=recipe.sheets),
                say("{recipe} is planned for {title}.", recipe=recipe.title, title=self._shown.title),
            )

    def _delete(self, recipe: Recipe) -> None:
        words = say("Deleted: the recipe {name}. Undo brings it back.", name=recipe.title)
        self._ask(SaveRecipe(name=recipe.name, sheets=()), words)

    def _ask(self, command: PlannedCommand | SaveRecipe, words: str) -> None:
        self.asked.emit(command, words)
