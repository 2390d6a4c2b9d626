"""Products of the made-up studios: their sheets, what was learnt of one, the vapour of another."""

from __future__ import annotations

from studiowatch.service.piece_view import SolventView
from studiowatch.service.product_views import LearntView, SheetChoice

SHEETS = (
    SheetChoice(
        name="isolation-waterborne",
        title="Isolation coat, water-borne",
        sheen="gloss",
        clear_film=True,
        solvent=False,
        wet_um=90,
        density_kg_m3=1030,
        cautions=("Keep the torch away until the mesh cover is off and no solvent stands open.",),
    ),
    SheetChoice(
        name="gloss-waterborne",
        title="Gloss varnish, water-borne",
        sheen="gloss",
        clear_film=True,
        solvent=False,
        wet_um=100,
        density_kg_m3=1040,
    ),
    SheetChoice(
        name="satin-waterborne",
        title="Satin varnish, water-borne",
        sheen="satin",
        clear_film=True,
        solvent=False,
        wet_um=80,
        density_kg_m3=1040,
        cautions=("One or two coats with matting agent at most: more dull the colours below.",),
    ),
    SheetChoice(
        name="gloss-solvent",
        title="Gloss varnish, solvent-borne",
        sheen="gloss",
        clear_film=True,
        solvent=True,
        wet_um=70,
        density_kg_m3=880,
    ),
)
PAINT_SHEET = SheetChoice(
    name="paint-poured",
    title="Acrylic paint, poured layer",
    sheen="",
    clear_film=False,
    solvent=False,
    wet_um=1500,
    density_kg_m3=1200,
)
LEARNT = LearntView(
    sheet="gloss-waterborne",
    times_as_long=1.3,
    low=1.1,
    high=1.6,
    tests=3,
    coats=2,
    sentence="Gloss varnish, water-borne dries 1.3 times as long here as its sheet says (1.1 to 1.6), from 3 tests.",
)
# 0.54 m² at 70 µm is 37.8 mL; at 0.4 of solids 22.7 mL of solvent of 0.78 g/mL: 17.7 g.
VAPOUR = (SolventView(sheet="gloss-solvent", solvent_g=17.7, over_h=1.0),)
