"""What is wrong with a coat as it was laid: too early over the one below, or one matting coat too many."""

from __future__ import annotations

from studiowatch.room.limits import RECOAT, Standing, matting_limit
from studiowatch.speech.words import say
from studiowatch.studio.concern import CoatAtRisk, Concern, Kind
from studiowatch.studio.counting import listed
from studiowatch.studio.scene import Scene, titles_of
from studiowatch.studio.words import Level, Sentence


def recoat_early(scene: Scene) -> Concern | None:
    """Say that a coat was laid before the one below was ready, while it can still cloud."""
    early = [(standing, coat) for coat in scene.coats if (standing := _early(coat)) > Standing.FINE]
    if not early:
        return None
    level = Level(int(max(standing for standing, _ in early)))
    coats = [coat for _, coat in early]
    worst = max(coats, key=lambda coat: coat.unready_below)
    titles = listed(titles_of(coats))
    if level is Level.ACT:
        detail = say(
            "The coat below was most likely not ready, and what is in it is sealed in: {titles}.", titles=titles
        )
    elif worst.unready_below > RECOAT.caution:
        detail = say("The coat below may not have been ready: {titles}.", titles=titles)
    else:
        wait = scene.units.plain(worst.sheet_wait_h or 0.0)
        detail = say("The sheet of the coat below says {wait} h: {titles}.", wait=wait, titles=titles)
    sentence = Sentence(
        level=level,
        headline=say("Laid too early") if level is Level.ACT else say("Laid rather early"),
        detail=detail,
        advice=say("Lay nothing more on it until it is clear and hard; give it dry air that does not move.")
        if not scene.has_solvent
        else say("Lay nothing more on it until it is clear and hard; keep fresh air coming in."),
    )
    began_ms = min(coat.laid_ms for coat in coats)
    return scene.concern(
        Kind.RECOAT_EARLY, coats, sentence, began_ms=began_ms, may_sound=level is Level.ACT, basis=RECOAT.basis
    )


def _early(coat: CoatAtRisk) -> Standing:
    by_model = RECOAT.standing(coat.unready_below)
    return max(by_model, Standing.CAUTION) if coat.sheet_wait_h is not None else by_model


def matting_build_up(scene: Scene) -> Concern | None:
    """Say that one coat with matting agent too many lies on a piece: it dulls the colours below."""
    standings = [
        (matting_limit(coat.max_matting_coats).standing(coat.matting_coats), coat)
        for coat in scene.coats
        if coat.matting_coats
    ]
    over = [(standing, coat) for standing, coat in standings if standing > Standing.FINE]
    if not over:
        return None
    level = Level(int(max(standing for standing, _ in over)))
    coats = [coat for _, coat in over]
    worst = max(coats, key=lambda coat: coat.matting_coats)
    limit = matting_limit(worst.max_matting_coats)
    sentence = Sentence(
        level=level,
        headline=say("Too many coats with matting agent"),
        detail=say(
            "{coats} lie on each other, {limit} are enough: {titles}.",
            coats=worst.matting_coats,
            limit=scene.units.plain(limit.caution),
            titles=listed(titles_of(coats)),
        ),
        advice=say("Lay no more satin or matt on it: each one dulls the dark colours below."),
    )
    began_ms = min(coat.laid_ms for coat in coats)
    return scene.concern(Kind.MATTING_BUILD_UP, coats, sentence, began_ms=began_ms, basis=limit.basis)
