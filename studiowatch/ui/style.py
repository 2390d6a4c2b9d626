"""The look of the window, from a theme and a text scale alone: nothing is left to the desktop."""

from __future__ import annotations

from dataclasses import dataclass
from importlib.resources import as_file, files

from PySide6.QtGui import QColor, QPalette

from studiowatch.ui.theme import LIGHT, Theme

_BODY_PX = 13
_POINTS_PER_INCH = 72
TEXT_SCALES_PCT = (100, 110, 125, 150, 175, 200)


@dataclass(frozen=True, slots=True, kw_only=True)
class Style:
    """A theme and a text scale (1.0 to 2.0)."""

    theme: Theme = LIGHT
    scale: float = 1.0

    def px(self, units: float) -> int:
        """Return `units`, pixels at 100 %, at this scale."""
        return max(1, round(units * self.scale))


def palette(theme: Theme) -> QPalette:
    """Return the palette for what the style sheet does not reach: placeholder text, selections, tool tips."""
    colours = {
        QPalette.ColorRole.Window: theme.ground,
        QPalette.ColorRole.WindowText: theme.ink,
        QPalette.ColorRole.Base: theme.card,
        QPalette.ColorRole.AlternateBase: theme.ahead,
        QPalette.ColorRole.Text: theme.ink,
        QPalette.ColorRole.Button: theme.card,
        QPalette.ColorRole.ButtonText: theme.ink,
        QPalette.ColorRole.BrightText: theme.act,
        QPalette.ColorRole.PlaceholderText: theme.muted,
        QPalette.ColorRole.Highlight: theme.link,
        QPalette.ColorRole.HighlightedText: theme.card,
        QPalette.ColorRole.Link: theme.link,
        QPalette.ColorRole.ToolTipBase: theme.card,
        QPalette.ColorRole.ToolTipText: theme.ink,
    }
    made = QPalette()
    for role, colour in colours.items():
        made.setColor(role, QColor(colour))
    for role in (QPalette.ColorRole.Text, QPalette.ColorRole.ButtonText, QPalette.ColorRole.WindowText):
        made.setColor(QPalette.ColorGroup.Disabled, role, QColor(theme.muted))
    return made


def style_sheet(style: Style, dots_per_inch: float) -> str:
    """Return the style sheet of the whole application, for a screen of `dots_per_inch` logical dots."""
    return "\n".join(
        (_ground(style, dots_per_inch), _text(style), _cards(style), _buttons(style), _fields(style), _bars(style))
    )


def _ground(style: Style, dots_per_inch: float) -> str:
    theme, px = style.theme, style.px
    # In points, so that a widget that draws its own text may ask its font for its point size.
    points = px(_BODY_PX) * _POINTS_PER_INCH / dots_per_inch
    return f"""
    QWidget {{ color: {theme.ink}; font-size: {points:.2f}pt; }}
    QMainWindow, QDialog, QWidget#page, QWidget#across {{ background: {theme.ground}; }}
    QScrollArea, QWidget#inside {{ background: transparent; border: none; }}
    QToolTip {{ background: {theme.card}; color: {theme.ink}; border: 1px solid {theme.edge}; padding: {px(4)}px; }}
    """


def _text(style: Style) -> str:
    theme, px = style.theme, style.px
    sizes = {
        "headline": (21, 700),
        "column": (16, 700),
        "title": (15, 700),
        "state": (13, 700),
        "ready": (16, 700),
        "strong": (13, 700),
        "lead": (15, 400),
        "body": (13, 400),
        "small": (12, 400),
        "dialog": (18, 700),
    }
    rules = [
        f'QLabel[role="{role}"] {{ font-size: {px(size)}px; font-weight: {weight}; }}'
        for role, (size, weight) in sizes.items()
    ]
    tones = {
        "ink": theme.ink,
        "muted": theme.muted,
        "link": theme.link,
        "good": theme.good,
        "caution": theme.caution,
        "act": theme.act,
    }
    rules.append(f"SpanChooser > QLabel {{ font-size: {px(16)}px; font-weight: 700; }}")  # not said
    rules += [f'QLabel[tone="{tone}"] {{ color: {colour}; }}' for tone, colour in tones.items()]
    return "\n".join(rules)


def _cards(style: Style) -> str:
    theme, px = style.theme, style.px
    radius = px(7)
    return f"""
    QFrame[card="plain"] {{ background: {theme.card}; border: 1px solid {theme.edge}; border-radius: {radius}px; }}
    QFrame[card="calm"] {{ background: {theme.good_wash}; border: 1px solid {theme.good}; border-radius: {radius}px; }}
    QFrame[card="caution"] {{ background: {theme.caution_wash}; border: 2px solid {theme.caution};
        border-radius: {radius}px; }}
    QFrame[card="act"] {{ background: {theme.act_wash}; border: 2px solid {theme.act}; border-radius: {radius}px; }}
    QFrame[card="act"][flash="true"] {{ background: {theme.act}; }}
    QFrame[card="caution"][flash="true"] {{ background: {theme.caution}; }}
    QFrame[flash="true"] QLabel[tone] {{ color: {theme.card}; }}
    QFrame[card="piece"] {{ background: {theme.card}; border: 2px solid {theme.edge}; border-radius: {radius}px; }}
    QFrame[card="piece"]:hover {{ border-color: {theme.muted}; }}
    QFrame[card="piece"][chosen="true"] {{ border-color: {theme.link}; }}
    QFrame[card="piece"]:focus {{ border: 3px solid {theme.link}; }}
    QFrame[rule="true"] {{ background: {theme.rule}; border: none; max-height: 1px; min-height: 1px; }}
    """


def _buttons(style: Style) -> str:
    theme, px = style.theme, style.px
    return f"""
    QPushButton {{ background: {theme.card}; color: {theme.ink}; border: 1px solid {theme.edge};
        border-radius: {px(6)}px; padding: {px(6)}px {px(13)}px; font-weight: 600; }}
    QPushButton:hover {{ border-color: {theme.link}; color: {theme.link}; }}
    QPushButton:pressed {{ background: {theme.ahead}; }}
    QPushButton:focus {{ border: 2px solid {theme.link}; padding: {px(6) - 1}px {px(13) - 1}px; }}
    QPushButton:disabled {{ color: {theme.muted}; border-color: {theme.rule}; background: {theme.ahead}; }}
    QPushButton[kind="primary"] {{ background: {theme.link}; color: {theme.card}; border-color: {theme.link}; }}
    QPushButton[kind="primary"]:hover {{ border-color: {theme.ink}; color: {theme.card}; }}
    QPushButton[kind="primary"]:focus {{ border: 2px solid {theme.ink}; }}
    QPushButton[kind="primary"]:disabled {{ background: {theme.ahead}; color: {theme.muted}; }}
    QPushButton[kind="big"] {{ font-size: {px(17)}px; padding: {px(13)}px {px(22)}px; background: {theme.link};
        color: {theme.card}; border-color: {theme.link}; }}
    QPushButton[kind="big"]:focus {{ border: 3px solid {theme.ink}; padding: {px(13) - 2}px {px(22) - 2}px; }}
    QPushButton[kind="big"]:disabled {{ background: {theme.ahead}; color: {theme.muted}; }}
    QPushButton[kind="answer"] {{ font-size: {px(18)}px; font-weight: 700; text-align: left;
        padding: {px(16)}px {px(18)}px; }}
    QPushButton[kind="answer"]:focus {{ border: 3px solid {theme.link}; padding: {px(16) - 2}px {px(18) - 2}px; }}
    QPushButton[kind="chip"] {{ font-size: {px(15)}px; padding: {px(11)}px {px(14)}px; }}
    QPushButton[kind="chip"]:checked {{ background: {theme.link}; color: {theme.card}; border-color: {theme.link}; }}
    QPushButton[kind="link"] {{ background: transparent; color: {theme.link}; border: 2px solid transparent;
        padding: {px(4)}px {px(7)}px; }}
    QPushButton[kind="link"]:hover {{ text-decoration: underline; }}
    QPushButton[kind="link"]:focus {{ border: 2px solid {theme.link}; }}
    QPushButton[kind="span"] {{ background: transparent; color: {theme.muted}; border: 2px solid transparent;
        padding: {px(3)}px {px(8)}px; }}
    QPushButton[kind="span"]:hover {{ color: {theme.link}; }}
    QPushButton[kind="span"]:checked {{ background: {theme.card}; color: {theme.ink}; border-color: {theme.edge}; }}
    QPushButton[kind="span"]:focus {{ border-color: {theme.link}; }}
    SpanChooser QPushButton {{ font-weight: 400; }}
    SpanChooser QPushButton:checked {{ font-weight: 700; }}
    SpanChooser {{ min-height: {px(30)}px; max-height: {px(30)}px; }}
    """


def _fields(style: Style) -> str:
    theme, px = style.theme, style.px
    box = px(18)
    return f"""
    QLineEdit, QComboBox, QDateTimeEdit, QSpinBox, QListWidget, QPlainTextEdit {{
        background: {theme.card}; color: {theme.ink};
        border: 1px solid {theme.edge}; border-radius: {px(5)}px; padding: {px(5)}px {px(8)}px;
        selection-background-color: {theme.link}; selection-color: {theme.card}; }}
    QLineEdit:focus, QComboBox:focus, QDateTimeEdit:focus, QSpinBox:focus, QListWidget:focus,
    QPlainTextEdit:focus {{
        border: 2px solid {theme.link}; padding: {px(5) - 1}px {px(8) - 1}px; }}
    QLineEdit[wrong="true"], QComboBox[wrong="true"], QDateTimeEdit[wrong="true"], QSpinBox[wrong="true"],
    QPlainTextEdit[wrong="true"] {{
        border: 2px solid {theme.act}; padding: {px(5) - 1}px {px(8) - 1}px; }}
    QLineEdit:disabled, QComboBox:disabled {{ color: {theme.muted}; }}
    QComboBox {{ combobox-popup: 0; }}
    QComboBox QAbstractItemView {{ background: {theme.card}; color: {theme.ink}; border: 1px solid {theme.edge};
        selection-background-color: {theme.link}; selection-color: {theme.card}; outline: none; }}
    QComboBox QAbstractItemView::item {{ min-height: {px(24)}px; padding: 0 {px(5)}px; }}
    QCheckBox, QRadioButton {{ spacing: {px(8)}px; padding: {px(3)}px; border: 2px solid transparent;
        border-radius: {px(5)}px; }}
    QSlider {{ min-height: {px(24)}px; border: 2px solid transparent; border-radius: {px(5)}px; }}
    QSlider:focus {{ border-color: {theme.link}; }}
    QSlider::groove:horizontal {{ height: {px(4)}px; background: {theme.edge}; border-radius: {px(2)}px; }}
    QSlider::sub-page:horizontal {{ background: {theme.muted}; border-radius: {px(2)}px; }}
    QSlider::handle:horizontal {{ width: {px(16)}px; height: {px(16)}px; margin: {-px(6)}px 0;
        background: {theme.link}; border-radius: {px(8)}px; }}
    QCheckBox:focus, QRadioButton:focus {{ border: 2px solid {theme.link}; }}
    QCheckBox::indicator, QRadioButton::indicator {{ width: {box}px; height: {box}px; border: 2px solid {theme.muted};
        background: {theme.card}; border-radius: {px(4)}px; }}
    QRadioButton::indicator {{ border-radius: {box // 2 + 2}px; }}
    QCheckBox::indicator:checked {{ image: url("{_icon("tick", theme)}"); }}
    QSpinBox::up-button {{ subcontrol-origin: border; subcontrol-position: top right; border: none; width: 1px; }}
    QSpinBox::down-button {{ subcontrol-origin: border; subcontrol-position: bottom right; border: none; width: 1px; }}
    QComboBox::drop-down, QDateTimeEdit::drop-down {{ border: none; width: {px(26)}px; }}
    QComboBox::down-arrow, QDateTimeEdit::down-arrow {{ image: url("{_icon("down", theme)}"); width: {px(12)}px;
        height: {px(12)}px; }}
    QTextBrowser {{ background: {theme.card}; color: {theme.ink}; border: 1px solid {theme.edge};
        border-radius: {px(5)}px; font-size: {px(14)}px; selection-background-color: {theme.link};
        selection-color: {theme.card}; }}
    QPlainTextEdit {{ font-family: monospace; font-size: {px(12)}px; }}
    QPlainTextEdit[role="notes"] {{ font-family: sans-serif; font-size: {px(13)}px; }}
    QLabel[frame="true"] {{ border: 1px solid {theme.edge}; border-radius: {px(4)}px; }}
    QLineEdit, QComboBox, QDateTimeEdit, QSpinBox {{ min-height: {px(20)}px; }}
    QComboBox QLineEdit, QDateTimeEdit QLineEdit, QSpinBox QLineEdit {{ border: none; border-radius: 0; padding: 0;
        min-height: 0; background: transparent; }}
    QCheckBox::indicator:checked, QRadioButton::indicator:checked {{ background: {theme.link};
        border-color: {theme.link}; }}
    """


def _icon(name: str, theme: Theme) -> str:
    with as_file(files("studiowatch.resources").joinpath("icons", f"{name}-{theme.name}.svg")) as path:
        return path.as_posix()


def _bars(style: Style) -> str:
    theme, px = style.theme, style.px
    return f"""
    QMenuBar {{ background: {theme.ground}; color: {theme.muted}; padding: {px(2)}px {px(8)}px; }}
    QMenuBar::item {{ padding: {px(4)}px {px(9)}px; background: transparent; border-radius: {px(4)}px; }}
    QMenuBar::item:selected {{ background: {theme.card}; color: {theme.ink}; }}
    QMenu {{ background: {theme.card}; color: {theme.ink}; border: 1px solid {theme.edge}; padding: {px(5)}px; }}
    QMenu::item {{ padding: {px(7)}px {px(26)}px {px(7)}px {px(22)}px; border-radius: {px(4)}px; }}
    QMenu::item:selected {{ background: {theme.link}; color: {theme.card}; }}
    QMenu::item:disabled {{ color: {theme.muted}; }}
    QMenu::separator {{ height: 1px; background: {theme.rule}; margin: {px(5)}px {px(8)}px; }}
    QScrollBar {{ background: transparent; border: none; }}
    QScrollBar:vertical {{ width: {px(10)}px; }}
    QScrollBar:horizontal {{ height: {px(10)}px; }}
    QScrollBar::handle {{ background: {theme.edge}; border-radius: {px(4)}px; margin: 1px; }}
    QScrollBar::handle:vertical {{ min-height: {px(36)}px; }}
    QScrollBar::handle:horizontal {{ min-width: {px(36)}px; }}
    QScrollBar::handle:hover {{ background: {theme.muted}; }}
    QAbstractScrollArea::corner {{ background: transparent; border: none; }}
    QScrollBar::add-line, QScrollBar::sub-line {{ width: 0; height: 0; }}
    QScrollBar::add-page, QScrollBar::sub-page {{ background: transparent; }}
    """
