"""Makes up records of the thirty traits, one a line: records.py COUNT [SEED] [--table].

With --table they are rows of a table with a column for each side; notes are left out there.

The same count and seed give the same bytes everywhere. About one value in thirty is missing or not
seen, one record in twenty has a note, and one line is about a kilobyte. Nobody's feet are meant.
"""

import csv
import json
import random
import sys

import thirty


def reading(chance, unit, usual, spread, step, low, high):
    value = usual + spread * (sum(chance.random() for _ in range(4)) - 2) * 1.7
    value = min(max(round(round(value / step) * step, 2), low), high)
    return thirty.with_unit(value, unit)


def two(left, right):
    return {"left": left, "right": right}


def measure(chance, one):
    _, unit, per, low, high, usual, spread, step = one
    if not per:
        return reading(chance, unit, usual, spread, step, low, high)
    centre = usual + spread * (chance.random() + chance.random() - 1) * 1.7
    close = (unit, centre, spread / 8, step, low, high)
    return two(reading(chance, *close), reading(chance, *close))


def level(chance, one):
    _, per, levels, weights = one
    left, right = chance.choices(levels, weights, k=2)
    return two(left, left if chance.random() < 0.8 else right) if per else left


def record(number, chance):
    found = {}
    for one in thirty.MEASURES:
        found[one[0]] = measure(chance, one)
    for one in thirty.LEVELS + thirty.CHOICES:
        found[one[0]] = level(chance, one)
    for name, yes in thirty.ANSWERS:
        found[name] = "yes" if chance.random() < yes else "no"
    for name in list(found):
        luck = chance.random()
        if luck < 0.02:
            del found[name]
        elif luck < 0.03:
            found[name] = "not seen"
        elif luck < 0.032 and not isinstance(found[name], dict):
            found[name] = {"value": found[name], "note": "seen under the lamp"}
    return {
        "inspection": {
            "rules": "thirty",
            "date": f"2026-{chance.randint(1, 12):02}-{chance.randint(1, 28):02}",
            "observer": f"S-{chance.randint(1, 24):02}",
            "client": f"C-{number:07}",
            "shoe": {"label": chance.choice(["navy lace-up", "black slip-on", "brown boot", "white trainer"])},
        },
        "found": found,
    }


def columns():
    """Trait and side of each column that holds a value."""
    for name, has_sides, *_ in thirty.recorded():
        yield from ((name, side) for side in (("left", "right") if has_sides else ("",)))


def cell(value, side):
    if isinstance(value, dict):
        value = value.get(side or "value", value.get("value", ""))
    return value


def row(one):
    head = one["inspection"]
    return [head["client"], head["date"], head["observer"], head["shoe"]["label"]] + \
        [cell(one["found"].get(name, ""), side) for name, side in columns()]


def main(count, seed, as_table):
    chance = random.Random(seed)
    table = csv.writer(sys.stdout, lineterminator="\n")
    if as_table:
        table.writerow(["client", "date", "observer", "shoe"] + [".".join(filter(None, one)) for one in columns()])
    for number in range(1, count + 1):
        one = record(number, chance)
        if as_table:
            table.writerow(row(one))
        else:
            print(json.dumps(one, ensure_ascii=False, separators=(",", ":")))


if __name__ == "__main__":
    numbers = [int(argument) for argument in sys.argv[1:] if argument != "--table"]
    main(numbers[0], numbers[1] if len(numbers) > 1 else 20261103, "--table" in sys.argv)
