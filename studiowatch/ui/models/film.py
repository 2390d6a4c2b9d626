"""The section through a piece: support, paint and each coat, to one scale for the whole rack."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from enum import StrEnum

from studiowatch.coats.solvent import WHITE_SPIRIT
from studiowatch.coats.stages import Surface
from studiowatch.coats.support import Support, support_of
from studiowatch.service.piece_view import CoatView, PieceView
from studiowatch.speech.words import say
from studiowatch.studio.supports import support_words
from studiowatch.ui.models.seen_words import SURFACE_WORDS

# Paint is often far thicker than the coats over it: beyond this it is drawn cut short, with a break mark.
PAINT_SHOWN_UM = 130.0
UNRECORDED_PAINT_UM = 90.0  # drawn where the paint was not recorded: assumption, for the picture only
LEAST_FULL_SCALE_UM = 260.0  # so that a lone thin coat is not drawn like a slab
_SUPPORT_SHARE = 0.10
_LEAST_SHOWN_UM = 8.0  # a thinner layer is drawn this thick, so that it can be seen
_WATER_UM_PER_G_M2 = 1.0  # µm per g/m²: water of 1000 kg/m³
_SOLVENT_UM_PER_G_M2 = 1000.0 / WHITE_SPIRIT.density_kg_m3  # µm per g/m²


class Base(StrEnum):
    """What a layer is made of."""

    SUPPORT = "support"
    PAINT = "paint"
    FILM = "film"


@dataclass(frozen=True, slots=True, kw_only=True)
class Layer:
    """One layer of a section, lowest first.

    Attributes
    ----------
    surface : Surface or None
        None while the coat is only planned.
    thickness_um : float or None
        Thickness now, µm: what is solid and the water still in it. None is drawn at a fixed height (the support).
    cut_short : bool
        True when it is thicker than drawn.
    """

    label: str
    base: Base
    surface: Surface | None
    thickness_um: float | None
    milky: bool = False
    cut_short: bool = False

    @property
    def words(self) -> str:
        """Return the label with the state that matters: "gloss 1, wet"."""
        if self.base is Base.SUPPORT:
            return self.label
        if self.milky:
            return say("{coat}, milky", coat=self.label)
        if self.surface in {Surface.WET, Surface.TACKY}:
            return f"{self.label}, {say(SURFACE_WORDS[self.surface])}"
        return self.label

    @property
    def fresh(self) -> bool:
        """Return True for the layer that wants watching."""
        return self.milky or self.surface in {Surface.WET, Surface.TACKY}


@dataclass(frozen=True, slots=True, kw_only=True)
class Section:
    """A piece cut through; `covered` is True while a mesh cover stands over its top coat."""

    layers: tuple[Layer, ...]
    covered: bool = False

    @property
    def spoken(self) -> str:
        """Return the section as one phrase, top layer first."""
        names = [
            say("{coat} planned", coat=one.words) if one.surface is None else one.words for one in reversed(self.layers)
        ]
        return say("Section from the top: {layers}", layers=", ".join(names))


@dataclass(frozen=True, slots=True, kw_only=True)
class Box:
    """Where a layer is drawn: `top` from the upper edge, `height` downward, in the caller's unit."""

    layer: Layer
    top: float
    height: float

    @property
    def middle(self) -> float:
        """Return the height of the middle line."""
        return self.top + self.height / 2


@dataclass(frozen=True, slots=True, kw_only=True)
class Tag:
    """Where a layer's label stands (`middle`), and the height in the section that it points to (`anchor`)."""

    layer: Layer
    middle: float
    anchor: float


def section_of(piece: PieceView) -> Section:
    """Return the section through `piece`."""
    layers = [
        Layer(
            label=support_words(piece.support) or say("support"),
            base=Base.SUPPORT,
            surface=Surface.DRY,
            thickness_um=None,
        )
    ]
    if support_of(piece.support) is Support.SEALED and all(coat.clear_film for coat in piece.coats):
        layers.append(Layer(label=say("paint"), base=Base.PAINT, surface=Surface.DRY, thickness_um=UNRECORDED_PAINT_UM))
    layers += [_layer(coat) for coat in piece.coats]
    top = piece.top
    return Section(layers=tuple(layers), covered=top is not None and top.covered)


def film_um(coat: CoatView) -> float:
    """Return how thick the film is now, µm: dry when planned or dry, else what is solid and what has yet to leave."""
    if coat.surface is None or (coat.water_g_m2 is None and coat.surface is not Surface.WET):
        return coat.dry_um
    if coat.water_g_m2 is None:
        return coat.wet_um
    um_per_g_m2 = _SOLVENT_UM_PER_G_M2 if coat.solvent else _WATER_UM_PER_G_M2
    return min(coat.dry_um + coat.water_g_m2 * um_per_g_m2, max(coat.wet_um, coat.dry_um))


def _layer(coat: CoatView) -> Layer:
    thick_um = film_um(coat)
    cut = not coat.clear_film and thick_um > PAINT_SHOWN_UM
    return Layer(
        label=say("{coat}, not watched", coat=coat.label) if coat.unwatched else coat.label,
        base=Base.FILM if coat.clear_film else Base.PAINT,
        surface=Surface.DRY if coat.surface is None and coat.laid_ms is not None else coat.surface,
        thickness_um=PAINT_SHOWN_UM if cut else thick_um,
        milky=coat.milky and coat.laid_ms is not None,
        cut_short=cut,
    )


def full_scale_um(sections: Sequence[Section]) -> float:
    """Return the thickness that fills a section's height, µm: that of the thickest stack in the rack."""
    return max([LEAST_FULL_SCALE_UM, *(_stack_um(section) for section in sections)])


def _stack_um(section: Section) -> float:
    return sum(_shown_um(layer) for layer in section.layers)


def _shown_um(layer: Layer) -> float:
    return 0.0 if layer.thickness_um is None else max(_LEAST_SHOWN_UM, layer.thickness_um)


def boxes(section: Section, height: float, full_um: float) -> tuple[Box, ...]:
    """Return where each layer is drawn in a section `height` tall, lowest layer first.

    Thickness is to scale, `full_um` to the room above the support; a layer is never thinner than can be seen.
    """
    bottom = height
    support = height * _SUPPORT_SHARE
    per_um = (height - support) / full_um
    drawn = []
    for layer in section.layers:
        tall = support if layer.thickness_um is None else _shown_um(layer) * per_um
        drawn.append(Box(layer=layer, top=bottom - tall, height=tall))
        bottom -= tall
    return tuple(drawn)


def look_of(section: Section, height: int, full_um: float) -> tuple[object, ...]:
    """Return what a section `height` pixels tall looks like: one that differs in nothing here is drawn alike.

    A wet film loses far less than a pixel between two readings.
    """
    drawn = [
        (round(box.top), round(box.top + box.height), *_ink_of(box.layer)) for box in boxes(section, height, full_um)
    ]
    return (height, section.covered, *drawn)


def _ink_of(layer: Layer) -> tuple[object, ...]:
    return layer.label, layer.base, layer.surface, layer.milky, layer.cut_short


def tags(drawn: Sequence[Box], height: float, line: float) -> tuple[Tag, ...]:
    """Return where the labels stand: beside their layers, but never nearer to each other than `line`."""
    middles: list[float] = []
    floor = height - line / 2
    for index, box in enumerate(drawn):
        middles.append(min(box.middle, floor if index == 0 else middles[-1] - line))
    ceiling = line / 2
    for index in reversed(range(len(middles))):
        middles[index] = max(middles[index], ceiling)
        ceiling = middles[index] + line
    return tuple(
        Tag(layer=box.layer, middle=middle, anchor=box.middle) for box, middle in zip(drawn, middles, strict=True)
    )
