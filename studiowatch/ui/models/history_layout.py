"""Where the parts of the room history stand, from its size and the height of a line of text."""

from __future__ import annotations

from dataclasses import dataclass

from studiowatch.ui.models.history_lanes import LaneRows, lane_rows

LEAST_LANE_LINES = 1.5
LEAST_NAMES_SHARE = 0.19  # of the width for the names of pieces, always
MOST_NAMES_SHARE = 0.32  # of the width, where the curves keep enough for it
CURVES_LINES = 34  # of text, as a width: what the curves keep before names get more
MOST_LANE_LINES = 2.9
LANES_SHARE = 0.44  # of the height shared by panels and lanes, at most
LEAST_PLOT_LINES = 1.7
PANEL_WEIGHTS = (1.3, 1.0, 1.0)
LINES_PER_TICK = 1.35
MOST_TICKS = 5
PADDING_LINES = 0.7
ROOMY_FROM_LINES = 28  # below that height, spaces shrink before the curves do


@dataclass(frozen=True, slots=True, kw_only=True)
class Spacing:
    """Heights of what is neither curve nor lane, in lines of text, so that all grows with the text.

    `marks` is the space between a panel's title and its plot, for the tips of warnings.
    """

    head: float
    title: float
    marks: float
    gap: float
    lanes_title: float
    foot: float


ROOMY = Spacing(head=1.75, title=1.35, marks=0.5, gap=0.5, lanes_title=1.35, foot=1.75)
TIGHT = Spacing(head=1.3, title=1.15, marks=0.35, gap=0.15, lanes_title=0.0, foot=1.45)


@dataclass(frozen=True, slots=True, kw_only=True)
class Band:
    """A horizontal band, px."""

    top_px: float
    height_px: float

    @property
    def bottom_px(self) -> float:
        """Its lower edge, px."""
        return self.top_px + self.height_px

    def holds(self, y_px: float) -> bool:
        """Return whether `y_px` lies in the band."""
        return self.top_px <= y_px < self.bottom_px


@dataclass(frozen=True, slots=True, kw_only=True)
class PanelBand:
    """A panel's title and, below it, its plot."""

    title: Band
    plot: Band
    most_ticks: int


@dataclass(frozen=True, slots=True, kw_only=True)
class Layout:
    """The whole picture, px: a head for "now" and the words under the pointer, panels, lanes, the time axis."""

    left_px: float
    width_px: float
    head: Band
    panels: tuple[PanelBand, ...]
    lanes_title: Band
    lanes: Band
    rows: LaneRows
    foot: Band


def names_px(widest_px: float, width_px: float, line_px: float) -> float:
    """Return the width for the names of pieces, of which the widest needs `widest_px`: all of it where there is room.

    A narrow picture keeps its width for the curves, and long names are cut.
    """
    spare_px = min(width_px - CURVES_LINES * line_px, MOST_NAMES_SHARE * width_px)
    return min(widest_px, max(spare_px, LEAST_NAMES_SHARE * width_px))


def layout_of(width_px: float, height_px: float, *, line_px: float, gutter_px: float, lane_count: int) -> Layout:
    """Share out the picture.

    Parameters
    ----------
    width_px, height_px : float
        Size of the picture.
    line_px : float
        Height of a line of text.
    gutter_px : float
        Width kept at the left for names and values.
    lane_count : int
        Number of lanes; without any, the panels take their room.
    """
    spacing = ROOMY if height_px >= ROOMY_FROM_LINES * line_px else TIGHT
    padding_px = PADDING_LINES * line_px
    head = Band(top_px=padding_px / 2, height_px=spacing.head * line_px)
    lanes_title_px = spacing.lanes_title * line_px if lane_count else 0.0
    foot_px = spacing.foot * line_px
    shared_px = max(height_px - head.bottom_px - foot_px - padding_px / 2 - lanes_title_px, line_px)
    least_px = len(PANEL_WEIGHTS) * (spacing.title + spacing.marks + spacing.gap + LEAST_PLOT_LINES) * line_px
    lanes_px = max(min(LANES_SHARE * shared_px, shared_px - least_px), LEAST_LANE_LINES * line_px)
    rows = lane_rows(lane_count, lanes_px, LEAST_LANE_LINES * line_px, MOST_LANE_LINES * line_px)
    panels = _panels(head.bottom_px, shared_px - rows.part_px, line_px, spacing)
    lanes_title = Band(top_px=panels[-1].plot.bottom_px + spacing.gap * line_px, height_px=lanes_title_px)
    lanes = Band(top_px=lanes_title.bottom_px, height_px=rows.part_px)
    return Layout(
        left_px=padding_px + gutter_px,
        width_px=max(width_px - gutter_px - 2 * padding_px, 1.0),
        head=head,
        panels=panels,
        lanes_title=lanes_title,
        lanes=lanes,
        rows=rows,
        foot=Band(top_px=lanes.bottom_px, height_px=foot_px),
    )


def _panels(top_px: float, room_px: float, line_px: float, spacing: Spacing) -> tuple[PanelBand, ...]:
    title_px, marks_px, gap_px = (lines * line_px for lines in (spacing.title, spacing.marks, spacing.gap))
    count = len(PANEL_WEIGHTS)
    plots_px = max(room_px - count * (title_px + marks_px + gap_px), count * line_px)
    bands = []
    for weight in PANEL_WEIGHTS:
        height_px = plots_px * weight / sum(PANEL_WEIGHTS)
        title = Band(top_px=top_px, height_px=title_px)
        plot = Band(top_px=title.bottom_px + marks_px, height_px=height_px)
        ticks = min(max(int(height_px / (LINES_PER_TICK * line_px)), 1), MOST_TICKS)
        bands.append(PanelBand(title=title, plot=plot, most_ticks=ticks))
        top_px = plot.bottom_px + gap_px
    return tuple(bands)
