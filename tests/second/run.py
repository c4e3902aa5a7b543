"""Works random jobs apart from the program and compares every figure with the program's evaluations.

python run.py EVALUATE [COUNT [SEED]], where EVALUATE is the program that reads jobs from standard input (`evaluate -`).
Prints how far each figure is off at most, and the first differences; ends with status 1 where any figure differs.
"""

import json
import subprocess
import sys
from collections import defaultdict

from energy import of_a_year
from figures import opinion
from jobs import jobs
from units import FOOT, si
from whole import FILE, written

# Depths of a change are found to within this.
DEPTH = 1e-5 * FOOT
# Of so many jobs a figure has to be compared at least, as a share, or the comparison says little.
LEAST = 0.1


class Seen:
    """What was compared so far."""

    def __init__(self):
        self.count, self.worst, self.wrong = defaultdict(int), defaultdict(float), []

    def number(self, job, name, ours, theirs, tolerance, least):
        off = abs(ours - theirs) / max(abs(ours), least, 1e-300)
        self.count[name] += 1
        self.worst[name] = max(self.worst[name], off)
        # Written so that NaN differs.
        self.judge(job, name, ours, theirs, off <= tolerance)

    def judge(self, job, name, ours, theirs, alike):
        if not alike:
            self.wrong.append(f"{job['name']}: {name} {theirs!r}, second opinion {ours!r}")

    def same(self, job, name, ours, theirs):
        self.count[name] += 1
        self.judge(job, name, ours, theirs, ours == theirs)


def pick(evaluation, path):
    for part in path.split("."):
        evaluation = evaluation.get(part) if isinstance(evaluation, dict) else None
    return evaluation


def figures(seen, job, evaluation, ours):
    for path, value in ours.items():
        theirs = pick(evaluation, path)
        name = path.replace("240 V", "lead").replace("480 V", "lead")
        if not isinstance(value, tuple):
            seen.same(job, name, value, theirs)
        # More than a pump's or a motor's formulas hold for is not told.
        elif theirs is not None:
            seen.number(job, name, value[0], si(theirs), *value[1:])


def break_even(seen, job, evaluation, ours):
    for basis, (first, found) in ours.items():
        theirs = evaluation["break_even"][basis]
        name = f"break_even.{basis}"
        seen.same(job, f"{name}.cheaper_first", first, theirs["cheaper_first"])
        told = [(change["cheaper_below"], si(change["depth"])) for change in theirs["changes"]]
        alike = len(told) == len(found) and all(a[0] == b[0] and abs(a[1] - b[1]) < DEPTH for a, b in zip(told, found))
        seen.count[name] += 1
        seen.judge(job, name, found, told, alike)


def lifetimes(seen, job, evaluation, price, worth):
    """The energy of a year, and what the years cost today: first cost, and that energy's price times their worth."""
    for way in (evaluation["power"] or {}).get("ways", []):
        cost = way["cost"] or {}
        energy = of_a_year(job, way) if cost.get("energy_in_a_year") else None
        if energy is not None:
            seen.number(job, "ways.energy_in_a_year", energy, si(cost["energy_in_a_year"]), 1e-6, 0)
        if cost.get("lifetime"):
            years = si(cost["energy_in_a_year"]) * price * worth
            seen.number(job, "ways.lifetime", si(cost["first"]) + years, si(cost["lifetime"]), 1e-9, 0)


def evaluated(program, all_jobs):
    """Each job with the program's evaluation, some at a time, since an evaluation is long."""
    for start in range(0, len(all_jobs), 200):
        some = all_jobs[start : start + 200]
        told = subprocess.run([program, "-"], input=json.dumps(some), capture_output=True, text=True, check=False)
        if told.returncode != 0:
            sys.exit(f"the program refused a job: {told.stdout}{told.stderr}")
        yield from zip(some, json.loads(told.stdout), strict=True)


def main():
    program, *numbers = sys.argv[1:]
    count, seed = [int(number) for number in numbers] + [5000, 20261127][len(numbers):]
    seen = Seen()
    for job, evaluation in evaluated(program, jobs(seed, count)):
        ours, even, years = opinion(job)
        figures(seen, job, evaluation, ours)
        break_even(seen, job, evaluation, even)
        lifetimes(seen, job, evaluation, *years)
    seen.same({"name": "whole.json"}, "whole jobs as they are kept", written(), FILE.read_text(encoding="utf-8"))
    for name in sorted(seen.count):
        print(f"{name}: {seen.count[name]} compared, at most {seen.worst[name]:.1e} off")
        if 1 < seen.count[name] < LEAST * count:
            seen.wrong.append(f"{name} was compared {seen.count[name]} times only")
    print("\n".join(seen.wrong[:25]))
    values = sum(seen.count.values())
    print(f"second opinion: {count} jobs, {len(seen.count)} figures, {values} values, {len(seen.wrong)} differ")
    sys.exit(1 if seen.wrong else 0)


if __name__ == "__main__":
    main()
