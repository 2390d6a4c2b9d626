"""The finishing plan as other programs read it."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import UTC, datetime

from studiowatch.service.best_hours_view import BestHoursView
from studiowatch.service.snapshot import PromptView
from studiowatch.studio.plan_shapes import FinishingPlan, PiecePlan, PlannedCoat, Times
from studiowatch.studio.working_hours import DAYS, hours_text


def document(
    plan: FinishingPlan, prompts: Sequence[PromptView], best: Sequence[BestHoursView] = ()
) -> dict[str, object]:
    """Return the plan: times are ISO 8601 in UTC or null where they are not in sight, days those of her calendar.

    ``today`` is in the order in which to do it. Each piece has its coats to come with ``ready`` as a range,
    ``prepare``, ``lay`` and ``until``; ``fit`` for handle, wrap and ship with the basis; ``slack_days``, negative if
    late, or null; ``checks`` with the rule that each coat breaks. ``best_hours`` has, for each sheet that comes next,
    every full hour of the next two days to lay it at: the ``chance`` that the room keeps its limits until the coat is
    past clouding, and the ``reason`` against it, or null; none while too little is known of the room.
    """
    return {
        "made": _moment(plan.made_ms),
        "air": plan.air,
        "first": plan.first,
        "working_hours": {day: hours_text(hours) for day, hours in zip(DAYS, plan.hours.days, strict=True)},
        "today": [{"piece": step.piece_title, **_coat(step.coat)} for step in plan.today],
        "pieces": [_piece(piece) for piece in plan.pieces],
        "best_hours": [_best(one) for one in best],
        "prompts": [
            {
                "due": _moment(prompt.due_ms),
                "piece": prompt.piece_title,
                "text": prompt.text,
                "caution": prompt.caution,
                "overdue": prompt.overdue,
            }
            for prompt in prompts
        ],
    }


def _best(best: BestHoursView) -> dict[str, object]:
    return {
        "sheet": best.sheet,
        "pieces": list(best.piece_titles),
        "ready": _moment(best.ready_ms),
        "not_known": best.unknown,
        "caution": best.caution,
        "best": [
            {"from": _moment(one.first_ms), "last": _moment(one.last_ms), "chance": round(one.chance, 2)}
            for one in best.good
        ],
        "hours": [
            {
                "lay": _moment(hour.start_ms),
                "chance": round(hour.chance, 2),
                "reason": None if hour.reason is None else hour.reason.value,
            }
            for hour in best.hours
        ],
    }


def _piece(piece: PiecePlan) -> dict[str, object]:
    return {
        "piece": piece.title,
        "due": None if piece.due is None else piece.due.isoformat(),
        "slack_days": piece.slack_days,
        "late": piece.late,
        "helps": list(piece.helps),
        "not_known": piece.unsure,
        "coats": [_coat(coat) for coat in piece.coats],
        "fit": {
            milestone.kind.value: {**_range(milestone.times), "basis": milestone.basis}
            for milestone in piece.milestones
        },
        "checks": [
            {
                "rule": remark.rule.value,
                "coat": next(coat.coat.label for coat in piece.coats if coat.coat.key == remark.coat_key),
                "level": remark.level.name.lower(),
                "sentence": remark.sentence,
                "basis": remark.basis,
            }
            for remark in piece.remarks
        ],
    }


def _coat(planned: PlannedCoat) -> dict[str, object]:
    coat = planned.coat
    return {
        "label": coat.label,
        "sheet": coat.sheet,
        "volume_mL": None if coat.volume_mL is None else round(coat.volume_mL, 1),
        "ready": _range(planned.ready),
        "prepare": _moment(planned.start_ms),
        "lay": _moment(planned.lay_ms),
        "until": _moment(planned.end_ms),
        "why_first": planned.why_first,
    }


def _range(times: Times) -> dict[str, str | None]:
    return {"p10": _moment(times.p10), "p50": _moment(times.p50), "p90": _moment(times.p90)}


def _moment(time_ms: int | None) -> str | None:
    if time_ms is None:
        return None
    return datetime.fromtimestamp(time_ms / 1000, UTC).isoformat(timespec="seconds").replace("+00:00", "Z")
