"""Whether `agree` takes apart classes like the example's: planted_faults.py --heelrule PROGRAM.

examples/class/make-records plants three faults in an invented class: a lenient student, a question that confuses
everybody, a trait that is rare. One class might be found out by luck, so here are many, each from another seed. The
sentences must name what was planted nearly always, and hardly ever anything else.
"""

import argparse
import importlib.machinery
import importlib.util
import json
import pathlib
import random
import subprocess
import sys
import tempfile

EXAMPLE = pathlib.Path(__file__).resolve().parent.parent.parent / "examples" / "class"
CLASSES = 10


def example():
    """The script that makes the example's records, as a module."""
    loader = importlib.machinery.SourceFileLoader("make_records", str(EXAMPLE / "make-records"))
    made = importlib.util.module_from_spec(importlib.util.spec_from_loader("make_records", loader))
    loader.exec_module(made)
    return made


def agreement(heelrule, made, seed, folder):
    source = random.Random(seed)
    records = folder / "records.jsonl"
    records.write_text("".join(
        json.dumps(made.record(source, student, shoe)) + "\n" for shoe in made.SHOES for student in made.STUDENTS),
        encoding="utf-8")
    ran = subprocess.run([heelrule, "agree", str(EXAMPLE / "bench.yaml"), str(records), "--as", "json"],
                         capture_output=True, text=True, check=True)
    return json.loads(ran.stdout)


def main():
    parser = argparse.ArgumentParser(description=__doc__.split("\n", maxsplit=1)[0])
    parser.add_argument("--heelrule", required=True, help="the program to run")
    heelrule = str(pathlib.Path(parser.parse_args().heelrule).resolve())
    made = example()
    lenient = confusing = rare = others_apart = others_confusing = 0
    with tempfile.TemporaryDirectory() as folder:
        for seed in range(CLASSES):
            found = agreement(heelrule, made, seed, pathlib.Path(folder))
            apart = [(one["student"], one["how"]) for one in found["stands_apart"]]
            questions = [one["trait"] for one in found["confusing"]]
            said = [line for topic in found["topics"] if topic["name"] == "loose_nail" for line in topic["said"]]
            lenient += (made.LENIENT, "lenient") in apart
            confusing += "fold_line" in questions
            rare += any("`no`" in line for line in said)
            others_apart += sum(student != made.LENIENT for student, _ in apart)
            others_confusing += len(set(questions) - {"fold_line"})
    print(f"of {CLASSES} classes: lenient student named in {lenient}, confusing question in {confusing}, rare trait in "
          f"{rare}; others named: {others_apart} students, {others_confusing} questions")
    # Of 11 students who do nothing unusual one in 20 would stand apart at the 5 % level, were that all that is asked.
    found_out = lenient >= CLASSES - 1 and confusing >= CLASSES - 1 and rare >= CLASSES - 1
    sys.exit(0 if found_out and others_apart <= CLASSES / 2 and others_confusing <= 1 else 1)


if __name__ == "__main__":
    main()
