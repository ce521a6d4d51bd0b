"""Times everything side by side and prints a table of ratios: table.py --bulk PROGRAM --heelrule PROGRAM.

Every figure is taken in this one run on this one machine, so the ratios can be compared and the
rates cannot be carried elsewhere. The scripts' verdicts are compared with heelrule's first.
"""

import argparse
import json
import os
import pathlib
import platform
import shutil
import subprocess
import sys
import tempfile
import time

HERE = pathlib.Path(__file__).resolve().parent


def made(folder, records):
    """The rules, the table and the records, as files."""
    for name, arguments in {
        "thirty.yaml": ["thirty.py", "yaml"],
        "thirty.json": ["thirty.py", "json"],
        "records.jsonl": ["records.py", str(records)],
    }.items():
        with open(folder / name, "wb") as file:
            subprocess.run([sys.executable, "-B", HERE / arguments[0], *arguments[1:]], stdout=file, check=True)


def stages(bulk, folder):
    """Records a second of each stage, in memory, one thread."""
    ran = subprocess.run(
        [bulk, "thirty.yaml", "records.jsonl", "--benchmark_format=json", "--benchmark_repetitions=5",
         "--benchmark_min_time=0.2", "--benchmark_enable_random_interleaving=true"],
        cwd=folder, capture_output=True, text=True, check=True,
    )
    found = json.loads(ran.stdout)["benchmarks"]
    best = {}
    for one in found:
        if one["run_type"] == "iteration":
            best[one["run_name"]] = max(best.get(one["run_name"], 0), one["items_per_second"])
    return best


def seconds(command, folder, output, turns=3):
    """The shortest of some runs of a command."""
    best = float("inf")
    for _ in range(turns):
        with open(output, "wb") as file:
            start = time.perf_counter()
            subprocess.run(command, cwd=folder, stdout=file, check=True)
            best = min(best, time.perf_counter() - start)
    return best


def same_verdicts(ours, theirs):
    """Sees that a script came to the same grades, scores and statuses."""
    for number, (mine, other) in enumerate(zip(ours.splitlines(), theirs.splitlines(), strict=True), 1):
        mine, other = json.loads(mine), json.loads(other)
        same = (
            mine["grade"]["name"] == other["grade"]
            and abs(mine["score"]["points"] - other["points"]) < 1e-9
            and [one["status"] for one in mine["findings"]] == [one["status"] for one in other["findings"]]
        )
        if not same:
            sys.exit(f"the script differs in record {number}")


def scripts(folder, heelrule, records):
    """Records a second of the scripts and of the command with one thread, each to a file."""
    grade = [heelrule, "grade", "thirty.yaml", "few.jsonl", "--threads", "1"]
    lines = (folder / "records.jsonl").read_bytes().splitlines(keepends=True)[: records // 4]
    (folder / "few.jsonl").write_bytes(b"".join(lines))
    rates = {"command, full": len(lines) / seconds(grade, folder, folder / "ours")}
    for name, command in {
        "Node script": ["node", HERE / "school.js", "thirty.json", "few.jsonl"],
        "Python script": [sys.executable, "-B", HERE / "school.py", "thirty.json", "few.jsonl"],
    }.items():
        if shutil.which(command[0]):
            rates[name] = len(lines) / seconds(command, folder, folder / "theirs", 2)
            same_verdicts((folder / "ours").read_text(), (folder / "theirs").read_text())
    return rates


def command_rates(folder, heelrule, records):
    grade = [heelrule, "grade", "thirty.yaml", "records.jsonl"]
    rates = {}
    for threads in ("1", "2"):
        for detail in ([], ["--brief"]):
            name = f"{threads} threads{' brief' if detail else ''}"
            command = [*grade, "--threads", threads, *detail]
            rates[name] = records / seconds(command, folder, "/dev/null")
    rates["1 threads to a file"] = records / seconds([*grade, "--threads", "1"], folder, folder / "ours")
    rates["1 threads brief to a file"] = records / seconds(
        [*grade, "--threads", "1", "--brief"], folder, folder / "ours")
    busy = subprocess.Popen([sys.executable, "-c", "while True: pass"])
    rates["2 threads beside a busy program"] = records / seconds([*grade, "--threads", "2"], folder, "/dev/null")
    rates["1 threads beside a busy program"] = records / seconds([*grade, "--threads", "1"], folder, "/dev/null")
    busy.kill()
    busy.wait()
    return rates


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
    yield "full explanations", full, full / stage["by_hand_full"], "hand-written scorer, same output", 0.7
    yield "`--brief`", brief, brief / stage["parse"], "parsing alone", 0.7
    yield "`--failed`", failed, failed / stage["parse"], "parsing alone", 0.7
    yield "`--brief`", brief, brief / stage["read_by_hand"], "parsing and reading, by hand", None
    yield "`--failed`", failed, failed / stage["read_by_hand"], "parsing and reading, by hand", None
    yield "parsing, reading, checking", stage["read"], stage["read"] / stage["read_by_hand"], "the same by hand", None
    yield "score only, 30 rules", stage["score/1"], stage["score/1"] / stage["score_by_hand"], \
        "hand-written scorer", 1.0
    yield "score only, 120 rules", stage["score/4"], 4 * stage["score/4"] / stage["score/1"], \
        "a quarter of 30 rules", 1.0
    yield "command, 2 threads", command["2 threads"], command["2 threads"] / command["1 threads"], "1 thread", 1.8
    yield "command, 2 threads, `--brief`", command["2 threads brief"], \
        command["2 threads brief"] / command["1 threads brief"], "1 thread", 1.8
    yield "2 threads beside a busy program", command["2 threads beside a busy program"], \
        command["2 threads beside a busy program"] / command["1 threads beside a busy program"], "1 thread", 1.0
    yield "command to a file", command["1 threads to a file"], \
        command["1 threads to a file"] / command["1 threads"], "to /dev/null", None
    yield "command to a file, `--brief`", command["1 threads brief to a file"], \
        command["1 threads brief to a file"] / command["1 threads brief"], "to /dev/null", None
    for name, wanted in (("Node script", 12), ("Python script", None)):
        if name in script:
            yield "command, full, to a file", script["command, full"], script["command, full"] / script[name], \
                f"plain {name} ({script[name]:,.0f} a second)", wanted


def main():
    parser = argparse.ArgumentParser(description=__doc__.split("\n", maxsplit=1)[0])
    parser.add_argument("--bulk", required=True, help="the program that times the stages")
    parser.add_argument("--heelrule", required=True, help="the command")
    parser.add_argument("--records", type=int, default=40_000)
    given = parser.parse_args()
    bulk, heelrule = (str(pathlib.Path(path).resolve()) for path in (given.bulk, given.heelrule))
    print(f"{machine()}; {given.records} records\n")
    with tempfile.TemporaryDirectory() as name:
        folder = pathlib.Path(name)
        made(folder, given.records)
        table = rows(stages(bulk, folder), command_rates(folder, heelrule, given.records),
                     scripts(folder, heelrule, given.records))
        print("| what | records a second | ratio | to | to reach |\n|---|---:|---:|---|---:|")
        for what, rate, ratio, to, wanted in table:
            print(f"| {what} | {rate:,.0f} | {ratio:.2f} | {to} | {wanted or ''} |")


if __name__ == "__main__":
    main()
