"""A made-up class for the timing of `agree`: class_records.py rules|records.

40 students look at 50 shoes by 60 questions of both sides: 30 scales, 20 measures, 10 that ask for yes or no. The seed is
fixed.
"""

import json
import random
import sys

STUDENTS, SHOES = 40, 50
LEVELS = ("poor", "fair", "good", "best")
KINDS = {"scale": 30, "measure": 20, "answer": 10}
TRAITS = [(f"{kind}_{number}", kind) for kind, count in KINDS.items() for number in range(count)]
TRAIT = {
    "scale": "scale: [poor, fair, good, best]",
    "measure": "measure: mm, doubt: 1 mm",
    "answer": "answer: yes or no",
}
CREDIT = {
    "scale": "levels: {poor: 0, fair: 40 %, good: 80 %, best: 100 %}",
    "measure": "bands: [{name: short, below: 10 mm, earns: 0}, {name: right, up to: 15 mm, earns: 100 %}, "
               "{name: long, earns: 50 %}]",
    "answer": "levels: {yes: 0, no: 100 %}",
}


def rules():
    yield "title: A class of forty"
    yield "sections: {a: {title: A}, b: {title: B}, c: {title: C}, d: {title: D}}"
    yield "traits:"
    for name, kind in TRAITS:
        yield f"  {name}: {{ask: Ask {name}, {TRAIT[kind]}, per: shoe}}"
    yield "rules:"
    for place, (name, kind) in enumerate(TRAITS):
        yield f"  {name}: {{section: {'abcd'[place % 4]}, weight: {1 + place % 5}, reads: {name}, {CREDIT[kind]}, " \
              "because: It counts., source: common practice}"
    yield "grades: {good: {from: 60, means: Good.}, fair: {from: 40, means: Fair.}, bad: {from: 0, means: Bad.}}"


def true_value(source, kind):
    return {"scale": source.randrange(4), "measure": source.gauss(12, 3), "answer": source.random() < 0.3}[kind]


def recorded(source, kind, true):
    """What a student writes down: a level off now and then, a millimetre or so, a wrong yes now and then."""
    if kind == "scale":
        return LEVELS[max(0, min(3, true + (source.choice([-1, 1]) if source.random() < 0.15 else 0)))]
    if kind == "measure":
        return f"{max(0, round(source.gauss(true, 1)))} mm"
    return "yes" if true != (source.random() < 0.05) else "no"


def records():
    source = random.Random(3)
    for shoe in range(SHOES):
        true = {(name, side): true_value(source, kind) for name, kind in TRAITS for side in ("left", "right")}
        for student in range(STUDENTS):
            found = {
                name: {side: recorded(source, kind, true[name, side]) for side in ("left", "right")}
                for name, kind in TRAITS
            }
            head = {"rules": "class", "observer": f"S-{student:02d}", "client": f"C-{shoe:02d}"}
            yield json.dumps({"inspection": head, "found": found})


if __name__ == "__main__":
    for line in {"rules": rules, "records": records}[sys.argv[1]]():
        print(line)
