"""Holds what `heelrule mark` says against a second way to work it out: by_hand.py --heelrule PROGRAM.

Nothing of the engine is used but `heelrule grade`, on whole records:

    the shares of the difference between two scores, from the scores of all mixtures of the two records, over every
        order in which the traits that differ can be exchanged (Shapley, A value for n-person games, 1953);
    a panel's consensus of each measure, by Algorithm A as ISO 13528:2015 words it (from memory), with Python's own
        `statistics`;
    normalised errors, from the doubts in the rule set and ISO 13528:2015, 9.7 (from memory).
"""

import argparse
import itertools
import json
import math
import pathlib
import statistics
import subprocess
import tempfile

FOLDER = pathlib.Path(__file__).resolve().parents[2] / "examples" / "marking"
RULES = FOLDER / "lesson.yaml"
HEAD = {"rules": "lesson", "observer": "S-99", "client": "C-052", "shoe": {"label": "grey walking shoe"}}
DOUBT = 1.0  # of one reading of every length, as lesson.yaml states it

REFERENCE = {
    "foot_length": {"left": "243 mm", "right": "246 mm"}, "insole_length": "255 mm", "heel_hold": "gives",
    "heel_counter": {"left": "medium", "right": "firm"}, "fold_line": "at the ball", "loose_nail": "no",
    "creases": "deep", "seam_pressure": "nowhere",
}
RECORDS = [
    {"foot_length": {"left": "238 mm", "right": "241 mm"}, "insole_length": "246 mm", "heel_hold": "holds",
     "heel_counter": "soft", "fold_line": "at the arch", "loose_nail": "no", "creases": "not seen",
     "seam_pressure": "nowhere"},
    {"foot_length": {"left": "249 mm", "right": "251 mm"}, "insole_length": "not seen", "heel_hold": "slips",
     "heel_counter": "firm", "fold_line": "at the ball", "loose_nail": "yes", "creases": "shallow", "shank": "slack"},
]
PANELS = [[243, 246, 244], [243, 243.5, 250], [240, 241, 242, 243, 260], [250, 251], [244, 244, 244, 247]]


def run(program, *arguments):
    done = subprocess.run([program, *map(str, arguments)], capture_output=True, text=True, check=False)
    assert done.returncode == 0, done.stderr
    return json.loads(done.stdout)


def write(path, found):
    path.write_text(json.dumps({"inspection": HEAD, "found": found}), encoding="utf-8")
    return path


def score(program, folder, found):
    graded = run(program, "grade", RULES, write(folder / "mixture.json", found), "--exactly", "--as", "json")
    points = (graded[0] if isinstance(graded, list) else graded)["score"]["points"]
    return 0.0 if points is None else points


def shapley(traits, worth):
    """The mean over every order of what a trait adds to those before."""
    total = dict.fromkeys(traits, 0.0)
    orders = 0
    for order in itertools.permutations(traits):
        before = frozenset()
        for trait in order:
            total[trait] += worth[before | {trait}] - worth[before]
            before |= {trait}
        orders += 1
    return {trait: value / orders for trait, value in total.items()}


def mixtures(program, folder, record, traits):
    worth = {}
    for size in range(len(traits) + 1):
        for chosen in itertools.combinations(traits, size):
            found = {key: value for key, value in REFERENCE.items() if key not in chosen}
            found |= {key: record[key] for key in chosen if key in record}
            worth[frozenset(chosen)] = score(program, folder, found)
    return worth


def check_shares(program, folder):
    count = 0
    reference = write(folder / "reference.json", REFERENCE)
    for record in RECORDS:
        marked = run(program, "mark", RULES, "--reference", reference, write(folder / "record.json", record),
                     "--as", "json")["records"][0]["score_difference"]
        shares = {share["traits"][0]: share["points"] for share in marked["shares"]}
        expected = shapley(sorted(shares), mixtures(program, folder, record, sorted(shares)))
        assert len(shares) >= 5, shares
        for trait, points in expected.items():
            assert math.isclose(shares[trait], points, abs_tol=1e-9), (trait, shares[trait], points)
        assert math.isclose(sum(shares.values()), marked["points"], abs_tol=1e-9)
        count += len(shares)
    return count


def algorithm_a(readings):
    mean = statistics.median(readings)
    deviation = 1.483 * statistics.median(abs(reading - mean) for reading in readings)
    for _ in range(1000):
        moved = [min(max(reading, mean - 1.5 * deviation), mean + 1.5 * deviation) for reading in readings]
        mean, deviation = statistics.fmean(moved), 1.134 * statistics.stdev(moved)
    return mean, deviation


def check_panels(program, folder):
    for panel in PANELS:
        options = []
        for place, reading in enumerate(panel):
            found = {"foot_length": {"left": f"{reading} mm"}}
            options += ["--reference", write(folder / f"panel-{place}.json", found)]
        record = write(folder / "record.json", {"foot_length": {"left": "245 mm"}})
        (one,) = run(program, "mark", RULES, *options, record, "--as", "json")["records"][0]["traits"]
        mean, deviation = algorithm_a(panel)
        assert math.isclose(one["reference_number"], mean, abs_tol=1e-8), (panel, one, mean)
        assert math.isclose(one["panel"]["spread"], deviation, abs_tol=1e-8), (panel, one, deviation)
        near = sum(abs(reading - mean) <= 2 * math.sqrt(2) * DOUBT for reading in panel)
        assert one["panel"] | {"asked": len(panel), "agreed": near, "split": 2 * near <= len(panel)} == one["panel"]
        if not one["panel"]["split"]:
            uncertainty = math.hypot(DOUBT, 1.25 * deviation / math.sqrt(len(panel)))
            expected = abs(245 - mean) / math.sqrt((2 * DOUBT) ** 2 + (2 * uncertainty) ** 2)
            assert math.isclose(one["normalised_error"], expected, abs_tol=1e-8), (panel, one, expected)
            assert (one["outcome"] == "off") == (expected > 1)
    return len(PANELS)


def main():
    parser = argparse.ArgumentParser(description=__doc__.split("\n", maxsplit=1)[0])
    parser.add_argument("--heelrule", required=True, help="the program to run")
    program = parser.parse_args().heelrule
    with tempfile.TemporaryDirectory() as name:
        folder = pathlib.Path(name)
        shares, panels = check_shares(program, folder), check_panels(program, folder)
    print(f"{shares} shares and {panels} panels agree")


if __name__ == "__main__":
    main()
