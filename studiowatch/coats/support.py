"""What the lowest coat lies on, and how much of its water a bare, absorbing support takes up as it is laid."""

from __future__ import annotations

import re
from enum import StrEnum

from studiowatch.speech.units import chosen
from studiowatch.speech.words import mark, say


class Support(StrEnum):
    """A support as the brush meets it."""

    SEALED = "sealed"
    PANEL = "bare panel"  # not said
    CANVAS = "raw canvas"  # not said
    PAPER = "bare paper"  # not said


SOAKED_SHARE = {  # of the free water; suction ends where the polymer packs, whatever the share; assumption
    Support.SEALED: 0.0,
    Support.PANEL: 0.10,
    Support.CANVAS: 0.20,
    Support.PAPER: 0.35,
}


def _bent(*stems: str) -> frozenset[str]:
    """Return German words with their endings: "roh" stands for "rohe" and "rohes" too."""
    return frozenset(f"{stem}{ending}" for stem in stems for ending in ("", "e", "em", "en", "er", "es"))


# fmt: off
_BARE = (
    frozenset({"bare", "raw", "unprimed", "unsealed", "unsized"})
    | _bent("roh", "ungrundiert", "ungeleimt", "unversiegelt")
)
_COATED = (
    frozenset({"not", "painted", "primed", "sealed", "sized", "nicht"})
    | _bent("bemalt", "gestrichen", "grundiert", "geleimt", "versiegelt")
)
_MATERIALS = {
    **dict.fromkeys(("canvas", "cotton", "jute", "linen", "leinwand", "baumwolle", "leinen"), Support.CANVAS),
    **dict.fromkeys((
        "board", "hardboard", "panel", "plywood", "wood", "brett", "hartfaserplatte", "holz", "holztafel", "platte",
        "sperrholz", "tafel",
    ), Support.PANEL),
    **dict.fromkeys(("card", "cardboard", "paper", "karton", "papier", "pappe"), Support.PAPER),
}
# fmt: on


def support_of(words: str) -> Support:
    """Return what a support in her own words, English or German, is to the brush.

    It absorbs only where the words say so, as "raw canvas" or "unprimed panel" do: what is called just "canvas" is a
    painting, or was primed, and so is whatever the words leave open. Of "bare paper on panel" the first is met.
    """
    said = re.findall(r"[^\W\d_]+", words.lower())
    if _BARE.isdisjoint(said) or not _COATED.isdisjoint(said):
        return Support.SEALED
    return next((_MATERIALS[word] for word in said if word in _MATERIALS), Support.SEALED)


def soaked_sentence(support: Support, soaked_g_m2: float) -> str:
    """Return what is taken to happen on `support`, and that it is an assumption: one sentence."""
    return say(
        _SOAKED[support], lost=chosen().number(soaked_g_m2, 1), share=chosen().number(100.0 * SOAKED_SHARE[support])
    )


_SOAKED = {
    Support.PANEL: mark(
        "laid straight on bare panel, the coat is taken to lose {lost} g/m² to it at once, up to {share} % of what is "
        "free to leave: an assumption; where paint, primer or size lies between, the support is sealed, and nothing is "
        "taken up"
    ),
    Support.CANVAS: mark(
        "laid straight on raw canvas, the coat is taken to lose {lost} g/m² to it at once, up to {share} % of what is "
        "free to leave: an assumption; where paint, primer or size lies between, the support is sealed, and nothing is "
        "taken up"
    ),
    Support.PAPER: mark(
        "laid straight on bare paper, the coat is taken to lose {lost} g/m² to it at once, up to {share} % of what is "
        "free to leave: an assumption; where paint, primer or size lies between, the support is sealed, and nothing is "
        "taken up"
    ),
}
