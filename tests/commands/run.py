"""Runs whole commands and compares what they print: run.py --heelrule PROGRAM [CASE...].

A case is a folder beside this file. It holds `cmd`, one shell line, the files that the line reads,
and what is expected of it: expected.stdout, expected.stderr and expected.code. The line runs in an
empty folder with the case's own files in it, and may use

    $HEELRULE    the program          $RULES       the shipped rule sets
    $EXAMPLES    the examples

Each case runs twice, in a plain environment and in one with a decimal comma and an unusual time
zone; both must print the same. Paths and the version number are replaced by their names before
comparing. UPDATE_GOLDENS=1 writes what was printed as what is expected.
"""

import argparse
import concurrent.futures
import difflib
import os
import pathlib
import re
import shutil
import signal
import subprocess
import sys
import tempfile

CASES = pathlib.Path(__file__).resolve().parent
ROOT = CASES.parent.parent
EXPECTED = ("expected.stdout", "expected.stderr", "expected.code")
SECONDS_ALLOWED = 20
PLAIN = {"LC_ALL": "C", "TZ": "UTC"}
UNUSUAL = {"LC_ALL": "de_DE.UTF-8", "TZ": "Asia/Kathmandu"}  # a decimal comma, and +05:45
PASSED_ON = ("PATH", "ASAN_OPTIONS", "UBSAN_OPTIONS")


def parse_arguments():
    parser = argparse.ArgumentParser(description=__doc__.split("\n", maxsplit=1)[0])
    parser.add_argument("--heelrule", required=True, help="the program to run")
    parser.add_argument("--version", help="its version number, replaced by $VERSION in what it prints")
    parser.add_argument("--locales", help="a folder with the locale of the second run, if not the system's")
    parser.add_argument("cases", nargs="*", metavar="CASE", help="only these cases")
    arguments = parser.parse_args()
    if not arguments.locales:
        built = pathlib.Path(arguments.heelrule).resolve().parent.parent / "tests" / "locale"
        arguments.locales = str(built) if built.is_dir() else None
    return arguments


def both_surroundings(locales):
    """The plain surroundings and the unusual ones, with a decimal comma if this machine has one."""
    unusual = dict(UNUSUAL)
    if locales:
        unusual["LOCPATH"] = str(pathlib.Path(locales).resolve())
    asked = subprocess.run(
        ["locale", "decimal_point"], env=os.environ | unusual, capture_output=True, check=False
    )
    if asked.stdout.strip() != b",":
        print(f"No locale {UNUSUAL['LC_ALL']} here: the second run changes the time zone alone")
        unusual["LC_ALL"] = PLAIN["LC_ALL"]
    return PLAIN, unusual


def scrub(text, names, version):
    """The text with each path in names replaced by its name, longest path first."""
    for path in sorted(names, key=len, reverse=True):
        text = text.replace(path, names[path])
    if version:
        text = re.sub(rf"(?<![\w.]){re.escape(version)}(?!\w|\.\w)", "$VERSION", text)
    return text


def run_line(line, folder, environment):
    """Exit code, output and error output of a shell line; the code is None if it took too long."""
    with subprocess.Popen(
        ["bash", "-c", line],
        cwd=folder,
        env=environment,
        stdin=subprocess.DEVNULL,
        stdout=subprocess.PIPE,
        stderr=subprocess.PIPE,
        start_new_session=True,
    ) as process:
        try:
            output, errors = process.communicate(timeout=SECONDS_ALLOWED)
            code = process.returncode
        except subprocess.TimeoutExpired:
            os.killpg(process.pid, signal.SIGKILL)
            output, errors = process.communicate()
            code = None
    return code, output.decode(errors="surrogateescape"), errors.decode(errors="surrogateescape")


def run_case(case, arguments, surroundings):
    """What the three expected files would hold after one run of a case."""
    program = str(pathlib.Path(arguments.heelrule).resolve())
    with tempfile.TemporaryDirectory() as made:
        folder = os.path.realpath(made)
        for file in case.iterdir():
            if file.name == "cmd" or file.name in EXPECTED:
                continue
            copy = shutil.copytree if file.is_dir() else shutil.copy
            copy(file, os.path.join(folder, file.name))

        names = {
            program: "$HEELRULE",
            str(ROOT / "examples"): "$EXAMPLES",
            str(ROOT / "rules"): "$RULES",
            folder: "$HERE",
        }
        environment = {name: os.environ[name] for name in PASSED_ON if name in os.environ}
        environment |= {name[1:]: path for path, name in names.items() if name != "$HERE"}
        environment |= {"HOME": folder} | surroundings

        line = (case / "cmd").read_text(encoding="utf-8")
        code, output, errors = run_line(line, folder, environment)
        told = f"no end after {SECONDS_ALLOWED} s" if code is None else str(code)
        return {
            "expected.stdout": scrub(output, names, arguments.version),
            "expected.stderr": scrub(errors, names, arguments.version),
            "expected.code": told + "\n",
        }


def read_expected(case, name):
    file = case / name
    return file.read_bytes().decode(errors="surrogateescape") if file.exists() else None


def difference(case, name, printed, surroundings):
    """A unified diff between what is expected and what was printed, or nothing."""
    expected = read_expected(case, name)
    if expected == printed:
        return []
    if expected is None:
        return [f"{case.name}/{name} is not there; UPDATE_GOLDENS=1 writes it"]
    lines = difflib.unified_diff(
        expected.split("\n"),
        printed.split("\n"),
        f"{case.name}/{name}",
        f"printed with LC_ALL={surroundings['LC_ALL']} TZ={surroundings['TZ']}",
        lineterm="",
    )
    return list(lines)


def complaints_of(case, arguments, both, update):
    """What is wrong with a case, line by line; nothing if it passed."""
    if not (case / "cmd").is_file():
        return ["there is no cmd here: a leftover?"]
    stray = {file.name for file in case.glob("expected.*")} - set(EXPECTED)
    if stray:
        return [f"nothing reads {', '.join(sorted(stray))}"]

    if update:
        for name, text in run_case(case, arguments, PLAIN).items():
            (case / name).write_bytes(text.encode(errors="surrogateescape"))
    complaints = []
    for surroundings in both:
        for name, printed in run_case(case, arguments, surroundings).items():
            complaints += difference(case, name, printed, surroundings)
        if complaints:
            break
    return complaints


def main():
    arguments = parse_arguments()
    update = os.environ.get("UPDATE_GOLDENS") == "1"
    present = sorted(path for path in CASES.iterdir() if path.is_dir() and path.name != "__pycache__")
    cases = [CASES / name for name in arguments.cases] or present

    both = both_surroundings(arguments.locales)

    failed = 0
    with concurrent.futures.ThreadPoolExecutor(os.cpu_count()) as pool:
        results = pool.map(lambda case: complaints_of(case, arguments, both, update), cases)
        for case, complaints in zip(cases, results):
            if complaints:
                failed += 1
                text = "\n".join([f"FAILED {case.name}", *(f"  {line}" for line in complaints)])
                sys.stdout.buffer.write(text.encode(errors="backslashreplace") + b"\n")
                sys.stdout.flush()
    print(f"{len(cases) - failed} passed, {failed} failed")
    return 1 if failed or not cases else 0


if __name__ == "__main__":
    sys.exit(main())
