"""How sure a grade is, worked out a second time: monte_carlo.py --heelrule PROGRAM.

Written from the description alone ("Doubt" in rules/README.md) and from JCGM 101:2008, "Propagation of distributions
using a Monte Carlo method": every reading of an example is drawn anew, a thousand times and more, by its own standard
uncertainty; every drawn record is graded as if it were exact; and what comes out is counted. The shares must be those
that `heelrule grade` states for the record itself, within the interval that so many draws leave (5.9.1: a share p of N
draws has a standard error of √(p (1 − p) / N); the report itself rests on 10,000 draws of its own).

Of the rules it reads only what is known of each reading: `doubt`, `resolution` and `confusion`.
"""

import argparse
import collections
import json
import math
import pathlib
import random
import statistics
import subprocess
import sys

import yaml

ROOT = pathlib.Path(__file__).resolve().parent.parent.parent
NORMAL = statistics.NormalDist()
OWN_DRAWS = 10_000  # on which the report rests
ERRORS_ALLOWED = 4.5  # standard errors; of the some 300 shares that are compared none is beyond by chance

# 97.5 % of the t distribution lie below, for 1, 2, … degrees of freedom (JCGM 100:2008, table G.2).
T_QUANTILES = (12.71, 4.30, 3.18, 2.78, 2.57, 2.45, 2.36, 2.31, 2.26, 2.23)
SIZES = {"mm": 1, "cm": 10, "in": 25.4, "month": 1, "months": 1, "years": 12}  # in mm, in months


def load(path):
    """A YAML file with every scalar as it is written: no `no` that becomes False."""
    return yaml.load(path.read_text(encoding="utf-8"), Loader=getattr(yaml, "CBaseLoader", yaml.BaseLoader))


def traits_of(name):
    """All traits of a shipped rule set and of those that it builds on."""
    rules = load(ROOT / "rules" / f"{name}.yaml")
    joined = {}
    for base in rules.get("extends", []):
        for trait, keys in traits_of(base).items():
            joined[trait] = joined.get(trait, {}) | keys
    for trait, keys in rules.get("traits", {}).items():
        joined[trait] = joined.get(trait, {}) | keys
    return joined


def amount(text):
    """`2.5 mm` as 2.5 and `mm`; `7°` as 7 and `°`."""
    digits = text.rstrip("abcdefghijklmnopqrstuvwxyz/·°%N ")
    return float(digits), text[len(digits):].strip()


def in_unit(text, unit):
    number, own = amount(text)
    return number if own == unit else number * SIZES[own] / SIZES[unit]


def uncertainty(repeats, doubt, step):
    """Put together after JCGM 100: what is known of one reading, half a step over √3, and s/√n of repeats; widened by
    t over z at the degrees of freedom of Welch and Satterthwaite, cut to a whole number."""
    known = doubt**2 + step**2 / 12
    if len(repeats) < 2 or len(set(repeats)) == 1:
        return math.sqrt(known)
    scatter = statistics.variance(repeats) / len(repeats)
    freedom = int((known + scatter) ** 2 / scatter**2 * (len(repeats) - 1))
    wide = T_QUANTILES[freedom - 1] if freedom <= len(T_QUANTILES) else 1.96 + 2.37 / freedom + 2.8 / freedom**2
    return math.sqrt(known + scatter) * wide / 1.96


class Reading:
    """One reading of a record, which can be drawn."""

    def __init__(self, trait, recorded):
        self.trait = trait
        self.recorded = recorded
        value = recorded["value"] if isinstance(recorded, dict) and "value" in recorded else recorded
        self.levels = list(trait.get("scale", []))
        self.confusion = float(trait["confusion"].rstrip(" %")) / 100 if "confusion" in trait else 0
        self.spread = 0
        if "measure" in trait:
            unit = trait["measure"]
            repeats = value if isinstance(value, list) else [value]
            unit_of_all = amount(repeats[-1])[1]
            repeats = [in_unit(one if amount(one)[1] else f"{one} {unit_of_all}", unit) for one in repeats]
            of_trait = recorded.get("doubt", trait.get("doubt", f"0 {unit}")) if isinstance(recorded, dict) \
                else trait.get("doubt", f"0 {unit}")
            step = in_unit(trait.get("resolution", f"0 {unit}"), unit)
            self.value, self.unit = statistics.fmean(repeats), unit
            self.spread = uncertainty(repeats, in_unit(of_trait, unit), step)
        elif self.levels:
            self.value = value

    def drawn(self, source):
        """The record's own words for one value that the truth may have."""
        if self.spread > 0:
            value = self.value + self.spread * NORMAL.inv_cdf(source.random() or 0.5)
            return {"value": f"{value:.9f} {self.unit}", "confirmed": "yes"}
        if self.confusion > 0:
            place = self.levels.index(self.value)
            drawn = source.random()
            step = -1 if drawn < self.confusion / 2 else 1 if drawn > 1 - self.confusion / 2 else 0
            return self.levels[min(max(place + step, 0), len(self.levels) - 1)]
        return self.recorded


def is_not_seen(recorded):
    return recorded == "not seen" or (isinstance(recorded, dict) and "not seen" in recorded)


def drawer(record, traits):
    """A function that gives the record with all its readings drawn anew, as a line of JSON."""
    parts = {}
    for name, recorded in record["found"].items():
        by_side = isinstance(recorded, dict) and set(recorded) <= {"left", "right"}
        sides = recorded if by_side else {"": recorded}
        parts[name] = {
            side: one if is_not_seen(one) else Reading(traits[name], one) for side, one in sides.items()
        }

    def draw(source):
        found = {}
        for name, sides in parts.items():
            drawn = {side: one.drawn(source) if isinstance(one, Reading) else one for side, one in sides.items()}
            found[name] = drawn[""] if "" in drawn else drawn
        return json.dumps(record | {"found": found})

    return draw


def graded(heelrule, rules, lines):
    """A verdict for each line."""
    ran = subprocess.run([heelrule, "grade", rules, "-"], input="\n".join(lines) + "\n", capture_output=True, text=True,
                         check=False)
    if ran.returncode != 0:
        sys.exit(f"{rules}: exit status {ran.returncode}: {ran.stderr[:1000]}")
    return [json.loads(line) for line in ran.stdout.splitlines()]


class Comparison:
    """Shares that were stated, beside those that were counted."""

    def __init__(self, draws):
        self.draws = draws
        self.faults = []
        self.compared = 0
        self.between = 0  # shares that are neither 0 nor 1

    def share(self, what, stated, count, exact=False):
        counted = count / self.draws
        middle = (stated + counted) / 2
        error = math.sqrt(middle * (1 - middle) * (1 / self.draws + (0 if exact else 1 / OWN_DRAWS)))
        allowed = ERRORS_ALLOWED * error + 2 / self.draws
        self.compared += 1
        self.between += 0 < counted < 1
        if abs(stated - counted) > allowed:
            self.faults.append(f"{what}: {stated:.4f} is stated, {counted:.4f} comes out (±{allowed:.4f})")


def compare_grades(stated, drawn, names, comparison):
    """The chance of each grade, and the two ends between which what was not seen lets it lie."""
    order = {name: place for place, name in enumerate(names)}
    for one in stated["doubt"]["grades"]:
        own = order[one["name"]]

        def reach(record):
            grade = record["grade"]
            return order[grade["best_possible"]], order[grade["worst_possible"]]

        comparison.share(f"grade {one['name']}", one["chance"],
                         sum(record["grade"]["name"] == one["name"] for record in drawn))
        comparison.share(f"grade {one['name']}, surely", one["lowest"],
                         sum(reach(record) == (own, own) for record in drawn))
        comparison.share(f"grade {one['name']}, possibly", one["highest"],
                         sum(reach(record)[0] <= own <= reach(record)[1] for record in drawn))


def compare_findings(stated, drawn, comparison):
    """How often each finding is a fail, and how often in part; what is left is a pass, or open."""
    counts = collections.Counter(
        (finding["title"], finding["status"]) for record in drawn for finding in record["findings"])
    for finding in stated["findings"]:
        for status in ("fail", "part"):
            comparison.share(f"{finding['title']}: {status}", finding["doubt"][status],
                             counts[finding["title"], status])


def check(heelrule, rules, path, draws, seed):
    record = load(path)
    stated = json.loads(subprocess.run([heelrule, "grade", rules, str(path), "--as", "json"], capture_output=True,
                                       text=True, check=True).stdout)
    draw = drawer(record, traits_of(rules))
    source = random.Random(seed)
    drawn = graded(heelrule, rules, [draw(source) for _ in range(draws)])
    comparison = Comparison(draws)
    compare_grades(stated, drawn, [one["name"] for one in stated["doubt"]["grades"]], comparison)
    compare_findings(stated, drawn, comparison)
    name = path.parent.name
    print(f"{name}: {comparison.compared} shares of {draws} draws, {comparison.between} of them neither 0 nor 1")
    if comparison.between == 0:
        comparison.faults.append("nothing was in doubt, so nothing was put to the test")
    return [f"{name}: {fault}" for fault in comparison.faults]


def main():
    parser = argparse.ArgumentParser(description=__doc__.split("\n", maxsplit=1)[0])
    parser.add_argument("--heelrule", required=True, help="the program to run")
    parser.add_argument("--draws", type=int, default=250, help="of each example")
    given = parser.parse_args()
    heelrule = str(pathlib.Path(given.heelrule).resolve())
    examples = ROOT / "examples"
    faults = []
    for seed, (rules, example) in enumerate([("older-adult",) * 2, ("everyday", "office-worker"), ("child",) * 2]):
        faults += check(heelrule, rules, examples / example / "inspection.yaml", given.draws, seed)
    for fault in faults:
        print(f"FAILED {fault}")
    sys.exit(1 if faults else 0)


if __name__ == "__main__":
    main()
