"""Colours of the window, by what they mean. Every meaning also has a shape or a word: colour never stands alone."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True, slots=True, kw_only=True)
class Theme:
    """One set of colours, each ``#rrggbb``, named for its meaning."""

    name: str
    ground: str
    card: str
    edge: str
    ink: str
    muted: str
    rule: str
    link: str
    act: str
    act_wash: str
    caution: str
    caution_wash: str
    good: str
    good_wash: str
    film_wet: str
    film_wet_mark: str
    film_tacky: str
    film_dry: str
    film_dry_mark: str
    paint: str
    support: str
    dew: str
    ahead: str


LIGHT = Theme(
    name="light",
    ground="#f2f0eb",
    card="#ffffff",
    edge="#dcd8cf",
    ink="#22211e",
    muted="#66635b",
    rule="#e6e2d9",
    link="#1a6690",
    act="#ab3026",
    act_wash="#fbecea",
    caution="#856200",
    caution_wash="#fbf4e0",
    good="#2b6a4d",
    good_wash="#e8f2ec",
    film_wet="#1b6a8e",
    film_wet_mark="#d5ecf6",
    film_tacky="#86b9d0",
    film_dry="#dad3c4",
    film_dry_mark="#a89f8c",
    paint="#8a6a9b",
    support="#eadfc9",
    dew="#2f7f9e",
    ahead="#f6f4ee",
)

NIGHT = Theme(
    name="night",
    ground="#191a1c",
    card="#222427",
    edge="#393c41",
    ink="#eceae4",
    muted="#a5a39b",
    rule="#313439",
    link="#7cc0e4",
    act="#ff8d80",
    act_wash="#3d2422",
    caution="#e3b94e",
    caution_wash="#38301a",
    good="#7fcaa3",
    good_wash="#1f3329",
    film_wet="#3a9cc8",
    film_wet_mark="#0d2a38",
    film_tacky="#2f6680",
    film_dry="#5a564c",
    film_dry_mark="#8a8475",
    paint="#9b7bb0",
    support="#6d624d",
    dew="#6cc0de",
    ahead="#26282b",
)

CONTRAST = Theme(
    name="contrast",
    ground="#ffffff",
    card="#ffffff",
    edge="#4a4843",
    ink="#000000",
    muted="#38362f",
    rule="#6b6862",
    link="#003c6e",
    act="#8c0b06",
    act_wash="#fff3f1",
    caution="#573d00",
    caution_wash="#fff9e6",
    good="#08482a",
    good_wash="#effaf3",
    film_wet="#00466b",
    film_wet_mark="#ffffff",
    film_tacky="#3b6f8a",
    film_dry="#efe9dc",
    film_dry_mark="#5a5140",
    paint="#6a4280",
    support="#fbf3df",
    dew="#00587a",
    ahead="#f6f4ee",
)

THEMES = (LIGHT, NIGHT, CONTRAST)
