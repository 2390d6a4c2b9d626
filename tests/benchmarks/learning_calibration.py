"""Whether the 80 % ranges hold 80 % of the truths, before and after learning. A script, run by hand.

    python tests/benchmarks/learning_calibration.py --studios 200 --coats 4

For each moment and stage it prints the share of the truths inside p10 to p90, with the standard error of that share,
and the mean width of the range. A range that is honest holds 75 to 85 %.
"""

from __future__ import annotations

import argparse
import sys
from dataclasses import replace
from math import sqrt
from pathlib import Path

sys.path.insert(0, str(Path(__file__).resolve().parents[1] / "coats"))

from synthetic_studios import Plan, pooled, run_group

from studiowatch.service.sheet_shelf import built_in_sheets

SHEETS = ("gloss-waterborne", "satin-waterborne", "matt-waterborne", "isolation-waterborne")
HONEST = (0.75, 0.85)


def main() -> None:
    """Run the studios and print the table."""
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--studios", type=int, default=200)
    parser.add_argument("--coats", type=int, default=4)
    parser.add_argument("--seed", type=int, default=1)
    parser.add_argument("--measured", action="store_true", help="she weighs the bottle each time")
    call = parser.parse_args()
    shelf = built_in_sheets()
    plan = Plan(studios=call.studios // len(SHEETS), coats=call.coats, seed=call.seed, measured=call.measured)
    groups = [run_group(shelf[name], replace(plan, seed=call.seed + 100 * at)) for at, name in enumerate(SHEETS)]
    print(f"{'':<34}{'stage':<16}{'held':>7}{'± s.e.':>8}{'p90/p10':>9}")
    for (moment, stage), score in pooled(groups).items():
        error = sqrt(score.share_held * (1.0 - score.share_held) / len(score.held))
        mark = "" if HONEST[0] <= score.share_held <= HONEST[1] else "  outside 75 to 85 %"
        print(f"{moment:<34}{stage.value:<16}{score.share_held:7.1%}{error:8.1%}{score.width:9.2f}{mark}")


if __name__ == "__main__":
    main()
