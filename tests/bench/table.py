"""Times everything side by side and prints a table of ratios: table.py --bulk PROGRAM --heelrule PROGRAM.

Every figure is taken in this one run on this one machine, so the ratios can be compared and the
rates cannot be carried elsewhere. The scripts' lines are compared with heelrule's first.
"""

import argparse
import itertools
import json
import math
import os
import pathlib
import platform
import shutil
import subprocess
import sys
import tempfile
import time

HERE = pathlib.Path(__file__).resolve().parent
RULES = HERE.parent.parent / "rules"
RECORD = HERE.parent.parent / "examples" / "office-worker" / "inspection.yaml"


def made(folder, records):
    """The rules, the table and the records, as files."""
    for name, arguments in {
        "thirty.yaml": ["thirty.py", "yaml"],
        "thirty.json": ["thirty.py", "json"],
        "records.jsonl": ["records.py", str(records)],
        "records.csv": ["records.py", str(records), "--table"],
        "class.yaml": ["class_records.py", "rules"],
        "class.jsonl": ["class_records.py", "records"],
    }.items():
        with open(folder / name, "wb") as file:
            subprocess.run([sys.executable, "-B", HERE / arguments[0], *arguments[1:]], stdout=file, check=True)


def stages(bulk, folder):
    """Records a second of each stage, in memory, one thread, over and over: most words were met before."""
    ran = subprocess.run(
        [bulk, "thirty.yaml", "records.jsonl", "--benchmark_format=json", "--benchmark_repetitions=5",
         "--benchmark_min_time=0.3", "--benchmark_enable_random_interleaving=true"],
        cwd=folder, capture_output=True, text=True, check=True,
    )
    found = json.loads(ran.stdout)["benchmarks"]
    best = {}
    for one in found:
        if one["run_type"] == "iteration":
            best[one["run_name"]] = max(best.get(one["run_name"], 0), one["items_per_second"])
    return best


def once(command, folder, output):
    """The wall and the processor seconds of one run of a command."""
    with open(output, "wb") as file:
        start = time.perf_counter()
        process = subprocess.Popen(command, cwd=folder, stdout=file)
        _, status, used = os.wait4(process.pid, 0)
        wall = time.perf_counter() - start
    process.returncode = os.waitstatus_to_exitcode(status)
    if process.returncode != 0:
        sys.exit(f"{command}: status {process.returncode}")
    return wall, used.ru_utime + used.ru_stime


def side_by_side(commands, folder, turns=5):
    """Of each command (arguments, output) the least wall and processor seconds; all take turns."""
    best = {}
    for _ in range(turns):
        for name, (command, output) in commands.items():
            wall, used = once(command, folder, output)
            known = best.get(name, (wall, used))
            best[name] = (min(known[0], wall), min(known[1], used))
    return best


def is_number(one):
    return isinstance(one, (int, float)) and not isinstance(one, bool)


def first_difference(mine, other, key="line"):
    """The first key at which two parsed lines differ, or None. Numbers may differ by 1e-9 of themselves."""
    if isinstance(mine, dict) and isinstance(other, dict):
        for known, found in itertools.zip_longest(mine, other):
            if known != found:
                return f"{key}.{known or found}"
            if differs := first_difference(mine[known], other[known], f"{key}.{known}"):
                return differs
        return None
    if isinstance(mine, list) and isinstance(other, list):
        if len(mine) != len(other):
            return f"{key}, its length"
        pairs = enumerate(zip(mine, other))
        return next(filter(None, (first_difference(*pair, f"{key}[{i}]") for i, pair in pairs)), None)
    if is_number(mine) and is_number(other):
        same = math.isclose(mine, other, rel_tol=1e-9)
    else:
        same = type(mine) is type(other) and mine == other
    return None if same else key


def same_lines(ours, theirs):
    """Sees that a script wrote the same lines: the same keys in the same order, with the same values."""
    for number, (mine, other) in enumerate(zip(ours.splitlines(), theirs.splitlines(), strict=True), 1):
        if differs := first_difference(json.loads(mine), json.loads(other)):
            sys.exit(f"the script differs in record {number} at {differs}")


def scripts(folder, heelrule, records):
    """Records a second of processor time of the scripts and of the command, each to a file."""
    lines = (folder / "records.jsonl").read_bytes().splitlines(keepends=True)[: records // 4]
    (folder / "few.jsonl").write_bytes(b"".join(lines))
    commands = {"command, full": ([heelrule, "grade", "thirty.yaml", "few.jsonl", "--threads", "1"], folder / "ours")}
    for name, command in {
        "Node script": ["node", HERE / "school.js", "thirty.json", "few.jsonl"],
        "Python script": [sys.executable, "-B", HERE / "school.py", "thirty.json", "few.jsonl"],
    }.items():
        if shutil.which(command[0]):
            commands[name] = (command, folder / name)
    taken = side_by_side(commands, folder, 3)
    for name in list(commands)[1:]:
        same_lines((folder / "ours").read_text(), (folder / name).read_text())
    return {name: len(lines) / used for name, (_, used) in taken.items()}


def command_rates(folder, heelrule, records):
    """Records a second of wall and of processor time."""
    def order(threads, *more, source="many.jsonl", output="/dev/null"):
        return [heelrule, "grade", "thirty.yaml", source, "--threads", threads, *more], output

    # So many that starting up is no part of it.
    times = 5
    with open(folder / "many.jsonl", "wb") as many:
        for _ in range(times):
            many.write((folder / "records.jsonl").read_bytes())
    taken = side_by_side({
        "1": order("1"), "2": order("2"), "1 brief": order("1", "--brief"), "2 brief": order("2", "--brief"),
        "1 brief to a file": order("1", "--brief", output=folder / "out"),
    }, folder)
    busy = subprocess.Popen([sys.executable, "-c", "while True: pass"])
    beside = side_by_side({"1 beside": order("1"), "2 beside": order("2")}, folder, 3)
    busy.kill()
    busy.wait()
    few = side_by_side({
        "few": order("1", source="records.jsonl"),
        "few to a file": order("1", source="records.jsonl", output=folder / "out"),
        "few brief": order("1", "--brief", source="records.jsonl"),
        "few rows brief": order("1", "--brief", source="records.csv"),
    }, folder)
    return {name: (times * records / wall, times * records / used) for name, (wall, used) in (taken | beside).items()} | \
        {name: (records / wall, records / used) for name, (wall, used) in few.items()}


def steps_of(program):
    """The steps that a program times with one record of `everyday`, in the unit in which it gives them."""
    ran = subprocess.run([program, RULES, "everyday", RECORD, "--benchmark_format=json", "--benchmark_min_time=0.2"],
                         capture_output=True, text=True, check=True)
    return {one["name"]: one["cpu_time"] for one in json.loads(ran.stdout)["benchmarks"]}


def cold_start(cold, heelrule, folder):
    """Milliseconds of each step of one inspection, and of the whole process."""
    steps = {name: time / 1000 for name, time in steps_of(cold).items()}
    command = {"whole": ([heelrule, "grade", "everyday", RECORD, "--exactly"], "/dev/null"),
               "empty": (["true"], "/dev/null")}
    taken = side_by_side(command, folder, 20)
    yield "rule files: YAML events to trees", steps["events"]
    yield "rule files: found, read, joined, made into a rule set", steps["load"] - steps["events"]
    yield "rule set checked and compiled", steps["compile"]
    yield "record read", steps["record"]
    yield "graded", steps["grade"]
    yield "report written", steps["print"]
    yield "whole process, start and end included (processor time)", taken["whole"][1] * 1000
    yield "whole process (wall; to reach: under 25)", taken["whole"][0] * 1000
    yield "a process that does nothing (wall)", taken["empty"][0] * 1000


def class_report(heelrule, folder):
    """Seconds of processor time of one report on 40 students, 50 shoes and 60 questions of both sides."""
    command = {"agree": ([heelrule, "agree", "class.yaml", "class.jsonl"], "/dev/null")}
    return side_by_side(command, folder, 3)["agree"][1]


def machine():
    try:
        text = pathlib.Path("/proc/cpuinfo").read_text(encoding="utf-8")
        name = next(line.split(":")[1].strip() for line in text.splitlines() if line.startswith("model name"))
    except (OSError, StopIteration):
        name = platform.processor()
    return f"{name}, {os.cpu_count()} processors, load {os.getloadavg()[0]:.1f}"


def rows(stage, command, script):
    """What is compared, its rate, the ratio, to what, and the ratio to reach."""
    full, brief, failed = stage["full"], stage["brief"], stage["failed"]
    parsing = "the same parser alone: every value read and checked, nothing after it"
    document = "simdjson alone: every line to a document, no value looked at"
    by_hand = "hand-written scorer, same reader, same output"
    yield "full explanations", full, full / stage["by_hand_full"], by_hand, 0.7
    yield "`--brief`", brief, brief / stage["by_hand_brief"], by_hand, None
    yield "`--failed`", failed, failed / stage["by_hand_failed"], by_hand, None
    yield "`--brief`", brief, brief / stage["read"], parsing, 0.7
    yield "`--failed`", failed, failed / stage["read"], parsing, 0.7
    yield "`--brief`", brief, brief / stage["parse"], document, None
    yield "parsing, reading, checking", stage["read"], stage["read"] / stage["parse"], document, None
    yield "score only, 30 rules", stage["score/1"], stage["score/1"] / stage["score_by_hand"], \
        "hand-written scorer", 1.0
    yield "score only, 120 rules", stage["score/4"], 4 * stage["score/4"] / stage["score/1"], \
        "a quarter of 30 rules", 1.0
    for kind, name in (("", ""), (" brief", ", `--brief`")):
        one, two = command["1" + kind], command["2" + kind]
        yield f"command, 2 threads{name}", two[0], two[0] / one[0], "1 thread, wall time", 1.8
        yield f"command, 2 threads{name}", two[1], two[1] / one[1], "1 thread, processor time of all threads", 1.0
    to_file = command["few to a file"]
    yield "command to a file", to_file[1], to_file[1] / command["few"][1], "to /dev/null, processor time", None
    to_file = command["1 brief to a file"]
    yield "command to a file, `--brief`", to_file[1], to_file[1] / command["1 brief"][1], \
        "to /dev/null, processor time", None
    table = command["few rows brief"]
    yield "command, from a table, `--brief`", table[1], table[1] / command["few brief"][1], \
        "from JSON Lines, processor time", None
    yield "2 threads beside a busy program", command["2 beside"][0], \
        command["2 beside"][0] / command["1 beside"][0], "1 thread beside it, wall time", 1.0
    for name, wanted in (("Node script", 12), ("Python script", None)):
        if name in script:
            yield "command, full, to a file", script["command, full"], script["command, full"] / script[name], \
                f"plain {name}, same lines ({script[name]:,.0f} a second)", wanted


def main():
    parser = argparse.ArgumentParser(description=__doc__.split("\n", maxsplit=1)[0])
    parser.add_argument("--bulk", required=True, help="the program that times the stages")
    parser.add_argument("--cold", required=True, help="the program that times a cold start")
    parser.add_argument("--draws", required=True, help="the program that times doubt")
    parser.add_argument("--heelrule", required=True, help="the command")
    parser.add_argument("--records", type=int, default=20_000)
    given = parser.parse_args()
    bulk, cold, draws, heelrule = (
        str(pathlib.Path(path).resolve()) for path in (given.bulk, given.cold, given.draws, given.heelrule))
    print(f"{machine()}; {given.records} records\n")
    with tempfile.TemporaryDirectory() as name:
        folder = pathlib.Path(name)
        made(folder, given.records)
        table = rows(stages(bulk, folder), command_rates(folder, heelrule, given.records),
                     scripts(folder, heelrule, given.records))
        print("| what | records a second | ratio | to | to reach |\n|---|---:|---:|---|---:|")
        for what, rate, ratio, to, wanted in table:
            print(f"| {what} | {rate:,.0f} | {ratio:.2f} | {to} | {wanted or ''} |")
        print("\n| one inspection from a cold start, `everyday` | ms |\n|---|---:|")
        for what, milliseconds in cold_start(cold, heelrule, folder):
            print(f"| {what} | {milliseconds:.2f} |")
        print("\n| how sure one grade of `everyday` is, one thread | ms |\n|---|---:|")
        for what, milliseconds in steps_of(draws).items():
            print(f"| {what} | {milliseconds:.1f} |")
        print(f"\n`agree`, 40 students, 50 shoes, 60 questions: {class_report(heelrule, folder):.2f} s of one processor")


if __name__ == "__main__":
    main()
