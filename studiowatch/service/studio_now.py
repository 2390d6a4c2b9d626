"""The studio at one moment, as the window is told of it."""

from __future__ import annotations

from dataclasses import replace

from studiowatch.service.room_views import room_view
from studiowatch.service.rounds import Rounds
from studiowatch.service.snapshot import Snapshot
from studiowatch.service.verdicts import sentence_now
from studiowatch.studio.concern import Kind
from studiowatch.studio.sentence import OPENING


def studio_now(rounds: Rounds, now_ms: int, own_fault: str) -> Snapshot:
    """Return the studio as the last round left it; what was done before and has lapsed is forgotten."""
    desks = rounds.desks
    desks.undoable.forget_lapsed()
    rack, air = desks.seen.facts, desks.room.air_now(now_ms)
    silent = any(concern.kind is Kind.BOARD_SILENT for concern in desks.warnings.concerns)
    plans = desks.plans
    return Snapshot(
        time_ms=now_ms,
        board=replace(rounds.board, silent=silent, health=desks.room.health.sentence),
        room=room_view(desks.room, air, rack.at_risk, now_ms),
        sentence=OPENING.said
        if rounds.is_opening
        else sentence_now(rack, desks.room, desks.warnings, rounds.board, now_ms),
        pieces=plans.told(desks.seen.views(now_ms)),
        prompts=desks.prompts.views(now_ms),
        preparations=desks.preparations.views(desks.rack, now_ms),
        vapour_near=rack.vapour,
        warnings=desks.warnings.views(),
        room_checks=desks.checks.told(air, now_ms),
        learnt=desks.rack.learning.views(),
        calibrations=desks.calibrations.view(desks.rack),
        store_trouble=desks.ledger.trouble or desks.rack.trouble or rounds.unread,
        plan=plans.plan,
        best_hours=desks.best_hours.views(plans.plan, plans.hours, now_ms, desks.intentions.meant),
        intentions=desks.intentions.views(now_ms),
        recipes=plans.recipes,
        hours=plans.hours,
        own_fault=own_fault,
        archived=rack.archived,
        undo=desks.rack.pile.view(),
        room_band=desks.ahead.band,
        units=desks.warnings.units,
    )
