"""A fan that she means to have on while a coat is still wet: said before it blows over it."""

from __future__ import annotations

from studiowatch.room.limits import AIR_SPEED
from studiowatch.speech.words import say, say_counted
from studiowatch.studio.concern import Concern, Kind
from studiowatch.studio.counting import listed, number_word
from studiowatch.studio.scene import Scene, titles_of
from studiowatch.studio.words import Level, Sentence


def fan_meant(scene: Scene) -> Concern | None:
    """Return a caution where a fan is meant to go on over a bare coat that will still be wet then."""
    at_ms = scene.heading.fan_from_ms(scene.now_ms)
    if at_ms is None:
        return None
    wet = [
        coat for coat in scene.coats if coat.wet and not coat.covered and (coat.safe_ms is None or at_ms < coat.safe_ms)
    ]
    if not wet:
        return None
    time, titles = scene.clock_text(at_ms), titles_of(wet)
    sentence = Sentence(
        level=Level.CAUTION,
        headline=say_counted(
            len(wet),
            "You mean to have a fan on from {time}, over a wet coat",
            "You mean to have a fan on from {time}, over {n} wet coats",
            n=number_word(len(wet)),
            time=time,
        ),
        detail=say_counted(
            len(titles),
            "{titles} is likely still wet then.",
            "{titles} are likely still wet then.",
            titles=listed(titles),
        ),
        advice=say("Have it on later, or turn it away from the pieces; change it under what you mean to do."),
    )
    return scene.concern(Kind.AIR_MOVING, wet, sentence, basis=AIR_SPEED.basis, expected_ms=at_ms, is_ahead=True)
