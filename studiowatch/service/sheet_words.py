"""What the built-in sheets say to people, in her language.

The files stay as anyone may copy them, in English; what a list, the form or a record shows of them
is said. A text that is new in a built-in file is added here, which a test holds.
"""

from __future__ import annotations

from dataclasses import replace

from studiowatch.coats.data_sheet import DataSheet
from studiowatch.speech.words import mark, say

GENERIC = mark("(generic)")  # ends every title below, and is left out of the title of a copy
TEXTS = frozenset(
    (
        mark("Gloss varnish, solvent-borne (generic)"),
        mark("This sheet is generic. Your product's own sheet, local codes and licensed advice come first."),
        mark("Ventilate: fresh air through the room without blowing on the piece. It comes before a perfect coat."),
        mark(
            "Flammable: no flame, torch, heater or spark while it is open or wet, and no warming above its flash point."
        ),
        mark("Gloves; a respirator as the product's sheet says."),
        mark(
            "Rags can ignite by themselves: dry them flat outdoors, or keep them in a closed "
            "metal container with water."
        ),
        mark("what the product's own sheet names, mostly white spirit"),
        mark("Gloss varnish, water-borne, thick coat (generic)"),
        mark(
            "Bubbles and a small torch: extinguisher at hand, no solvent or solvent-borne coat in "
            "the room, no mesh cover on."
        ),
        mark("A thick coat stays open to dust and fingers much longer than a thin one: level, covered, and no fan."),
        mark("Taking varnish off may need solvent: ventilate, gloves, no flame or spark; do a test patch first."),
        mark("what the product's own sheet names"),
        mark("Gloss varnish, water-borne, thin coat (generic)"),
        mark("Gloss varnish, water-borne (generic)"),
        mark("Isolation coat, water-borne (generic)"),
        mark("not meant to be removed: it keeps the paint safe when the varnish over it is taken off"),
        mark("Matt varnish, water-borne (generic)"),
        mark(
            "Roll the bottle gently before use: matting agent settles. Gloss first, matt last, "
            "and no more such coats than named."
        ),
        mark("Acrylic paint, brushed layer (generic)"),
        mark("Dry on top is not dry below: test an edge before the isolation coat."),
        mark("Sanding dry paint: a respirator as the product's sheet says, and wipe up the dust damp."),
        mark("not meant to be removed"),
        mark("Acrylic paint, poured layer (generic)"),
        mark("Satin varnish, solvent-borne (generic)"),
        mark("Satin varnish, water-borne (generic)"),
        mark(
            "Roll the bottle gently before use: matting agent settles. Gloss first, satin last, "
            "and no more such coats than named."
        ),
    )
)


def in_her_language(sheet: DataSheet) -> DataSheet:
    """Return a built-in sheet with its title, its cautions and what takes it off in the language that is spoken."""
    taken_off = sheet.removable_with
    return replace(
        sheet,
        title=say(sheet.title),
        cautions=tuple(say(caution) for caution in sheet.cautions),
        removable_with=say(taken_off) if taken_off else taken_off,
    )
