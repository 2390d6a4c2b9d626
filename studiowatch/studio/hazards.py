"""What can hurt someone at the step of laying this product now. The product's own sheet comes before all of it."""

from __future__ import annotations

from collections.abc import Sequence

from studiowatch.coats.vapour import VENTILATE
from studiowatch.speech.units import chosen
from studiowatch.speech.words import mark, say
from studiowatch.studio.prompts import no_torch_near

FLAMMABLE_C = 60.0  # °C, flash point up to which a liquid counts as flammable: UN GHS, chapter 2.6, category 3
SOLVENT_CAUTIONS = (
    mark("No torch anywhere near. Wear gloves; a respirator as the product's sheet says."),
    mark("Rags can catch fire by themselves: dry them flat outdoors, or keep them in a closed metal tin with water."),
)
TORCH_CAUTION = mark("Torch: extinguisher at hand, far from solvent and its vapour, and the mesh cover off.")
NO_TORCH_OF_IT = mark("No torch for this coat: its vapour burns. Break bubbles with the brush.")
_STANDING_KEY = "local codes"  # not said; a sheet that says this says the rest of the standing caution too
STANDING_CAUTION = mark("The product's own sheet, local codes and licensed advice come before this program.")
_VENTILATE_KEY = "ventilate"  # a sheet's caution that begins so is said by the one for the vapour


def first_hazards(
    *,
    solvent: bool,
    flash_point_C: float | None = None,
    vapour: Sequence[str] = (),
    torch: bool = False,
    vapour_near: str = "",
) -> tuple[str, ...]:
    """Return what bites first at the step of laying: vapour, flame, flash point.

    Parameters
    ----------
    solvent : bool
        Whether the product is solvent-borne.
    flash_point_C : float, optional
        The sheet's flash point, °C.
    vapour : sequence of str
        What the estimate of its vapour says, to ventilate first; none takes the plain caution.
    torch : bool
        Whether she means to use a torch.
    vapour_near : str
        Another coat in the room that gives off solvent vapour, in words, or "".
    """
    said: list[str] = []
    if solvent:
        said += vapour or (say(VENTILATE),)
    if torch and solvent:
        said.append(say(NO_TORCH_OF_IT))
    elif vapour_near and not solvent:
        said.append(no_torch_near(vapour_near))
    elif torch:
        said.append(say(TORCH_CAUTION))
    if solvent and flash_point_C is not None:
        said.append(flash_words(flash_point_C))
    return tuple(said)


def own_cautions(*, solvent: bool, sheet_cautions: Sequence[str]) -> tuple[str, ...]:
    """Return the sheet's own cautions and that it comes first; to ventilate is told apart, before them."""
    own = tuple(sheet_cautions) or (tuple(map(say, SOLVENT_CAUTIONS)) if solvent else ())
    if solvent:
        own = tuple(one for one in own if not one.lower().startswith(_VENTILATE_KEY))
    return own if any(_STANDING_KEY in one for one in own) else (*own, say(STANDING_CAUTION))


def flash_words(flash_point_C: float) -> str:
    """Return what a flash point means at the rack."""
    temperature = chosen().limit(flash_point_C)
    if flash_point_C <= FLAMMABLE_C:
        return say(
            "Flash point {temperature}: it counts as flammable ({limit} or less, UN GHS). Keep it away from "
            "heaters, flame and sparks, and never warm it.",
            temperature=temperature,
            limit=chosen().limit(FLAMMABLE_C),
        )
    return say("Flash point {temperature}: away from flame and anything hotter than that.", temperature=temperature)
