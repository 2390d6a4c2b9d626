"""`why`: the review of one coat, from files or from the records."""

from __future__ import annotations

import argparse
from collections.abc import Iterator, Sequence
from textwrap import wrap

from studiowatch.board.room_log_header import CLIMATE
from studiowatch.cli import inputs
from studiowatch.cli.answers import DONE, WrongCall, print_document, wrong
from studiowatch.cli.called import called
from studiowatch.cli.recorded_words import told
from studiowatch.physics.ranges import OutOfRange
from studiowatch.service.local_time import when_text
from studiowatch.service.review_log import LogInMemory, ReviewedCoat, room_from, stack_of
from studiowatch.service.reviewer import reviewer_of
from studiowatch.service.sheet_shelf import SheetShelf
from studiowatch.speech.units import chosen
from studiowatch.speech.words import say
from studiowatch.store.database import looking
from studiowatch.store.folder import StudioFolder
from studiowatch.store.kept_severities import KeptSeverities
from studiowatch.store.review_records import ReviewRecords
from studiowatch.studio.pieces import Piece
from studiowatch.studio.review import Setting, review
from studiowatch.studio.review_views import Figures, Remedy, Review, verdict
from studiowatch.studio.review_words import amount, lasted

WIDTH = 100  # characters of a line for people
LEAST_SHOWN = 0.02  # share from which a cause is printed for people
HOUR_MS = 3_600_000


def run(call: argparse.Namespace, folder: StudioFolder) -> int:
    """Answer the call."""
    if (call.studio is None) != (call.room is None):
        given, lacking = ("--studio", "--room") if call.room is None else ("--room", "--studio")
        wrong(
            say("{given} needs {lacking} beside it; without both, the records are asked.", given=given, lacking=lacking)
        )
    try:
        shelf = SheetShelf.open(folder.sheets)
        found = _from_records(call, shelf, folder) if call.studio is None else _from_files(call, shelf)
    except (ReviewedCoat, OutOfRange) as fault:
        raise WrongCall(str(fault)) from fault
    if call.json:
        print_document(document(found))
    else:
        for line in lines(found):
            print(line)
    return DONE


def _from_files(call: argparse.Namespace, shelf: SheetShelf) -> Review:
    pieces, shelf = inputs.studio(call.studio, shelf)
    log = inputs.room_log(call.room, inputs.log_form(call, CLIMATE))
    stack = stack_of(piece_called(pieces, call.piece, str(call.studio)), shelf, call.coat)
    return review(stack, room_from(LogInMemory(readings=log.readings()), stack), Setting(when_text=when_text))


def _from_records(call: argparse.Namespace, shelf: SheetShelf, folder: StudioFolder) -> Review:
    inputs.refuse_log_form(call)
    with looking(folder.database) as database:
        reviewer = reviewer_of(ReviewRecords(database), shelf, KeptSeverities(path=folder.severities))
        return reviewer.review(piece_called(reviewer.pieces, call.piece, str(folder.database)), call.coat)


def piece_called(pieces: Sequence[Piece], title: str, origin: str) -> Piece:
    """Return the piece with this title, or refuse the call."""
    found = called(title, pieces, origin)
    if found is None:
        titles = ", ".join(piece.title for piece in pieces)
        wrong(
            say(
                "There is no piece {given} in {origin}; it has {titles}.",
                given=repr(title),
                origin=origin,
                titles=titles or say("none"),
            )
        )
    return found


def document(found: Review) -> dict[str, object]:
    """Return a review in the form that other programs read."""
    return {
        "piece": found.piece_title,
        "coat": found.coat_number,
        "outcome": None if found.outcome is None else found.outcome.value,
        "chance_of_clouding": round(found.chance, 4),
        "causes": [
            {
                "cause": cause.cause.value,
                "share": round(cause.share, 4),
                "evidence": list(cause.evidence),
                "severity": None if cause.severity is None else round(cause.severity, 4),
                "unit": cause.unit,
            }
            for cause in found.causes
        ],
        "what_would_have_changed_it": [
            {"change": change.change, "chance_of_clouding": round(change.chance, 4)} for change in found.changes
        ],
        "blind_spots": list(found.blind_spots),
    }


def lines(found: Review) -> Iterator[str]:
    """Yield a review for people."""
    yield say(
        "{title}, coat {number} ({coat}), laid {time}, {outcome}",
        title=found.piece_title,
        number=found.coat_number,
        coat=found.coat_label,
        time=when_text(found.laid_ms, 0),
        outcome=_outcome(found),
    )
    yield found.headline
    yield ""
    yield say("Likely causes, strongest first")
    for cause in found.causes:
        if cause.share >= LEAST_SHOWN:
            yield f"{100 * cause.share:4.0f} %  {cause.title}"
            yield from _wrapped([*cause.evidence, *([cause.often] if cause.often else [])])
    yield ""
    yield from _table(found)
    if found.blind_spots:
        yield say("What the records do not show")
        yield from _wrapped(found.blind_spots)
        yield ""
    yield from _what_to_do(found.remedy)


def _outcome(found: Review) -> str:
    if found.outcome is None:
        return say("outcome not recorded")
    outcome = told(found.outcome)
    if found.seen_ms is None:
        return say("recorded as {outcome}", outcome=outcome)
    return say("recorded as {outcome} {time}", outcome=outcome, time=when_text(found.seen_ms, found.laid_ms))


def _table(found: Review) -> Iterator[str]:
    heads = (say("coat below"), say("room while wet"), say("sealed in"))
    yield f"{say('What would have changed it'):<44}{heads[0]:>12}{heads[1]:>17}{heads[2]:>11}  {say('chance')}"
    rows = [(say("As it was"), found.as_it_was, found.chance)]
    rows += [(change.change, change.figures, change.chance) for change in found.changes]
    for words, met, chance in rows:
        below, room, sealed = _cells(met)
        yield f"{words:<44}{below:>12}{room:>17}{sealed:>11}  {100 * chance:.0f} %, {verdict(chance)}"
    yield ""


def _cells(met: Figures) -> tuple[str, str, str]:
    below = say("none") if met.below_age_ms is None else lasted(met.below_age_ms)
    room = say("not known")
    if met.temperature_C is not None and met.humidity_pct is not None:
        room = f"{chosen().temperature(met.temperature_C)}, {met.humidity_pct:.0f} %"
    return below, room, f"{amount(met.sealed_in_g_m2)} g/m²"


def _what_to_do(remedy: Remedy) -> Iterator[str]:
    yield say("What to do now")
    for number, step in enumerate(remedy.steps, start=1):
        yield from wrap(step, WIDTH, initial_indent=f"  {number} ", subsequent_indent="    ")
    for caution in remedy.cautions:
        yield from wrap(caution, WIDTH, initial_indent="  ! ", subsequent_indent="    ")


def _wrapped(sentences: Sequence[str]) -> Iterator[str]:
    for sentence in sentences:
        yield from wrap(sentence, WIDTH, initial_indent="        ", subsequent_indent="        ")
