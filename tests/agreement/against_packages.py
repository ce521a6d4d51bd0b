"""Holds `heelrule agree --ratings` against two general-purpose statistics packages.

    against_packages.py --heelrule PROGRAM      compares with what they gave, tests/data/agreement_packages.json
    against_packages.py --record                works that out anew

Made-up tables of ratings (fixed seeds) go through both. To work the figures out anew takes statsmodels, scikit-learn
and scipy, in Debian python3-statsmodels and python3-sklearn (0.13.5 and 1.2.1 when these were recorded); comparing
takes neither. Where a package has no such figure, it is put together from its parts: intraclass correlations from the
mean squares of its analysis of variance, with quantiles of scipy.
"""

import argparse
import json
import math
import pathlib
import random
import subprocess
import sys
import tempfile

RECORDED = pathlib.Path(__file__).resolve().parent.parent / "data" / "agreement_packages.json"
LEVELS = ["a", "b", "c", "d"]
TOLERANCE = 1e-9


def level_table(seed, subjects, observers, skill):
    """Observers who see the true level with chance `skill`, and its neighbours or anything else otherwise."""
    source = random.Random(seed)
    rows = []
    for _ in range(subjects):
        true = source.randrange(len(LEVELS))
        row = []
        for _ in range(observers):
            seen = true if source.random() < skill else max(0, min(3, true + source.choice([-1, 1, 2])))
            row.append(LEVELS[seen])
        rows.append(row)
    return rows


def number_table(seed, subjects, observers):
    source = random.Random(seed)
    habits = [source.gauss(0, 1) for _ in range(observers)]
    rows = []
    for _ in range(subjects):
        true = source.gauss(250, 3)
        rows.append([round(true + habit + source.gauss(0, 1), 1) for habit in habits])
    return rows


def tables():
    for number, (subjects, observers, skill) in enumerate([(30, 2, 0.7), (50, 2, 0.4), (25, 5, 0.6), (40, 3, 0.9)]):
        yield f"levels {number + 1}", level_table(number + 1, subjects, observers, skill), True
    for number, (subjects, observers) in enumerate([(20, 2), (15, 4), (30, 6)]):
        yield f"numbers {number + 1}", number_table(number + 11, subjects, observers), False


def level_figures(rows):
    """By statsmodels and scikit-learn."""
    import numpy
    from sklearn.metrics import cohen_kappa_score
    from statsmodels.stats import inter_rater

    codes = numpy.array([[LEVELS.index(cell) for cell in row] for row in rows])
    counts, _ = inter_rater.aggregate_raters(codes, n_cat=len(LEVELS))
    figures = {"statsmodels fleiss_kappa": inter_rater.fleiss_kappa(counts)}
    figures["statsmodels free_margin_kappa"] = inter_rater.fleiss_kappa(counts, method="randolph")
    cross = numpy.zeros((len(LEVELS), len(LEVELS)))
    for first, second in codes[:, :2]:
        cross[first, second] += 1
    for name, weights, score in (("unweighted", None, None), ("linear", "linear", "linear"), ("quadratic", "fc", "quadratic")):
        found = inter_rater.cohens_kappa(cross, wt=weights)
        figures[f"statsmodels cohen_kappa {name}"] = found.kappa
        figures[f"statsmodels cohen_kappa {name} standard_error"] = math.sqrt(found.var_kappa)
        figures[f"statsmodels cohen_kappa {name} null_error"] = math.sqrt(found.var_kappa0)
        figures[f"sklearn cohen_kappa {name}"] = cohen_kappa_score(
            codes[:, 0], codes[:, 1], labels=range(len(LEVELS)), weights=score
        )
    return {name: float(value) for name, value in figures.items()}


def number_figures(rows):
    """By the analysis of variance of statsmodels and the distributions of scipy."""
    import pandas
    from scipy import stats
    from statsmodels.formula.api import ols
    from statsmodels.stats.anova import anova_lm

    cells = [
        {"subject": f"s{i}", "observer": f"o{j}", "rating": rating}
        for i, row in enumerate(rows)
        for j, rating in enumerate(row)
    ]
    subjects, observers = len(rows), len(rows[0])
    variance = anova_lm(ols("rating ~ C(subject) + C(observer)", pandas.DataFrame(cells)).fit())["mean_sq"]
    between, observer, residual = variance["C(subject)"], variance["C(observer)"], variance["Residual"]
    figures = {
        "statsmodels between_subjects": between,
        "statsmodels between_observers": observer,
        "statsmodels residual": residual,
        "statsmodels icc_3_1": (between - residual) / (between + (observers - 1) * residual),
        "statsmodels icc_2_1": (between - residual)
        / (between + (observers - 1) * residual + observers * (observer - residual) / subjects),
    }
    above, below = subjects - 1, (subjects - 1) * (observers - 1)
    low = between / residual / stats.f.ppf(0.975, above, below)
    high = between / residual * stats.f.ppf(0.975, below, above)
    figures["scipy icc_3_1 low"] = (low - 1) / (low + observers - 1)
    figures["scipy icc_3_1 high"] = (high - 1) / (high + observers - 1)
    differences = [row[0] - row[1] for row in rows]
    interval = stats.t.interval(0.95, subjects - 1, loc=sum(differences) / subjects, scale=stats.sem(differences))
    figures["scipy bias low"], figures["scipy bias high"] = interval
    figures["scipy correlation"] = stats.pearsonr([row[0] for row in rows], [row[1] for row in rows])[0]
    return {name: float(value) for name, value in figures.items()}


def run(program, rows, is_levels):
    with tempfile.NamedTemporaryFile("w", suffix=".csv") as table:
        print(",".join(f"observer {i}" for i in range(len(rows[0]))), file=table)
        for row in rows:
            print(",".join(map(str, row)), file=table)
        table.flush()
        scale = ["--scale", ",".join(LEVELS)] if is_levels else []
        command = [program, "agree", "--ratings", table.name, *scale, "--as", "json"]
        return json.loads(subprocess.run(command, check=True, capture_output=True, timeout=60).stdout)


def figure(report, name):
    """The figure of a report that a recorded one stands for: its words after the package."""
    words = name.split()[1:]
    pair = report["pairs"][0]
    if words[0] == "bias":
        return pair["limits_of_agreement"]["bias"][words[1]]
    if words[0] == "correlation":
        return pair["limits_of_agreement"]["correlation"]
    if words[0] in (report["mean_squares"] or {}):
        return report["mean_squares"][words[0]]
    place = pair["coefficients"] if words[0] == "cohen_kappa" else report["coefficients"]
    weights = next((word for word in words[1:] if word in ("unweighted", "linear", "quadratic")), None)
    found = next(one for one in place if one["name"] == words[0] and (not weights or one["weights"] == weights))
    return found[words[-1] if words[-1] in found else "value"]


def main():
    parser = argparse.ArgumentParser(description=__doc__.split("\n", maxsplit=1)[0])
    parser.add_argument("--heelrule")
    parser.add_argument("--record", action="store_true")
    arguments = parser.parse_args()
    if arguments.record:
        recorded = {name: level_figures(rows) if is_levels else number_figures(rows) for name, rows, is_levels in tables()}
        RECORDED.write_text(json.dumps(recorded, indent=1) + "\n", encoding="utf-8")
        return 0
    recorded = json.loads(RECORDED.read_text(encoding="utf-8"))
    compared, faults = 0, 0
    for name, rows, is_levels in tables():
        report = run(arguments.heelrule, rows, is_levels)
        for what, expected in recorded[name].items():
            found = figure(report, what)
            compared += 1
            if abs(found - expected) > TOLERANCE * max(1, abs(expected)):
                faults += 1
                print(f"{name}: {what}: {expected}, here {found}")
    print(f"{compared} figures compared, {faults} differ")
    return 1 if faults or compared < 80 else 0


if __name__ == "__main__":
    sys.exit(main())
