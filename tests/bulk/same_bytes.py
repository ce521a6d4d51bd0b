"""Sees that many records give the same bytes, however they are fed: same_bytes.py --heelrule PROGRAM.

With 1, 2 and 7 threads, through a pipe, from a file, in a hundred pieces, and by GNU parallel, which
splits the input itself. Also that an interruption ends after a whole line, and that memory does not
grow with the input. Ends with 77 where all is well but GNU parallel is not on this machine.
"""

import argparse
import hashlib
import pathlib
import random
import shutil
import signal
import subprocess
import sys
import tempfile

ROOT = pathlib.Path(__file__).resolve().parent.parent.parent
SKIPPED = 77


def records(folder, count):
    """A file of records of the thirty traits of the timings; now and then a faulty one."""
    bench = ROOT / "tests" / "bench"
    made = subprocess.run(
        [sys.executable, "-B", bench / "records.py", str(count)], capture_output=True, check=True
    ).stdout
    lines = made.splitlines(keepends=True)
    chance = random.Random(3)
    for at in chance.sample(range(len(lines)), count // 200):
        lines[at] = lines[at][: chance.randrange(len(lines[at]))].rstrip(b"\n") + b"\n"
    rules = subprocess.run(
        [sys.executable, "-B", bench / "thirty.py", "yaml"], capture_output=True, check=True
    ).stdout
    (folder / "thirty.yaml").write_bytes(rules)
    (folder / "records.jsonl").write_bytes(b"".join(lines))
    return lines


class Fed:
    """The program, fed in several ways from one folder."""

    def __init__(self, heelrule, folder, options):
        self.start = [heelrule, "grade", "thirty.yaml"]
        self.options = options
        self.folder = folder

    def run(self, source, *more, **given):
        done = subprocess.run(
            [*self.start, source, *self.options, *more],
            cwd=self.folder, capture_output=True, timeout=3600, check=False, **given,
        )
        assert done.returncode in (0, 65), done.stderr.decode()
        return done.stdout

    def in_pieces(self, lines, count):
        size = len(lines) // count
        return b"".join(
            self.run("-", "--threads", "2", input=b"".join(lines[at : at + size]))
            for at in range(0, len(lines), size)
        )

    def by_parallel(self, text):
        command = " ".join([*self.start, "-", *self.options, "--threads", "1", "2>/dev/null"])
        return subprocess.run(
            ["parallel", "--pipe", "--keep-order", "--block", "1M", "--will-cite", command],
            cwd=self.folder, input=text, capture_output=True, timeout=3600, check=False,
        ).stdout


def ways(fed, lines):
    """Each way of feeding the records, with what came out."""
    text = b"".join(lines)
    yield "1 thread, from a file", fed.run("records.jsonl", "--threads", "1")
    yield "2 threads, from a file", fed.run("records.jsonl", "--threads", "2")
    yield "7 threads, from a file", fed.run("records.jsonl", "--threads", "7")
    yield "all threads, through a pipe", fed.run("-", input=text)
    yield "no line feed at the end", fed.run("-", "--threads", "3", input=text.rstrip(b"\n"))
    yield "a hundred pieces", fed.in_pieces(lines, 100)
    if shutil.which("parallel"):
        yield "GNU parallel", fed.by_parallel(text)


def same_bytes(fed, lines):
    faults = []
    expected = None
    for way, output in ways(fed, lines):
        digest = hashlib.sha256(output).hexdigest()
        print(f"{digest[:16]}  {output.count(10)} lines  {way}  {' '.join(fed.options)}")
        if output.count(b"\n") != len(lines) or not output.endswith(b"\n"):
            faults.append(f"{way}: not one line for each record")
        expected = expected or digest
        if digest != expected:
            faults.append(f"{way}: other bytes")
    return faults


def interruption(fed, lines):
    """Interrupts a run whose input stays open; what was read by then is graded in whole lines."""
    with subprocess.Popen(
        [*fed.start, "-", *fed.options], cwd=fed.folder,
        stdin=subprocess.PIPE, stdout=subprocess.PIPE, stderr=subprocess.PIPE,
    ) as process:
        process.stdin.write(b"".join(lines[:500]))
        process.stdin.flush()
        first = process.stdout.read(1)
        process.send_signal(signal.SIGINT)
        output = first + process.stdout.read()
        process.stdin.close()
        code = process.wait(timeout=60)
    whole = fed.run("-", input=b"".join(lines[:500]))
    print(f"interrupted after {output.count(10)} lines, status {code}")
    if code != -signal.SIGINT:
        return [f"an interruption ended with {code}"]
    if not output.endswith(b"\n") or not whole.startswith(output):
        return ["an interruption left something else than whole lines"]
    return []


# A process of its own, because the most memory of a child counts what its parent had when it began.
MEASURE = """
import resource, subprocess, sys
subprocess.run(sys.argv[1:], stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL, check=False)
print(resource.getrusage(resource.RUSAGE_CHILDREN).ru_maxrss)
"""


def memory(fed, allowed):
    """The most memory that a full run takes: far less than it reads and writes."""
    measured = subprocess.run(
        [sys.executable, "-c", MEASURE, *fed.start, "records.jsonl", "--threads", "2"],
        cwd=fed.folder, capture_output=True, text=True, timeout=3600, check=True,
    )
    megabytes = int(measured.stdout) / 1024
    print(f"at most {megabytes:.0f} MB of memory")
    return [f"{megabytes:.0f} MB of memory"] if megabytes > allowed else []


def main():
    parser = argparse.ArgumentParser(description=__doc__.split("\n", maxsplit=1)[0])
    parser.add_argument("--heelrule", required=True, help="the program to run")
    parser.add_argument("--megabytes", type=int, default=64, help="how much memory a run may take")
    parser.add_argument("--lines", type=int, default=20_000, help="how many records (a million takes 5 GB of memory)")
    parser.add_argument("--only", choices=("full", "failed", "brief"), help="compare one kind of line alone")
    arguments = parser.parse_args()
    kinds = {"brief": ["--brief"], "failed": ["--failed"], "full": []}
    heelrule = str(pathlib.Path(arguments.heelrule).resolve())
    with tempfile.TemporaryDirectory() as made:
        folder = pathlib.Path(made)
        lines = records(folder, arguments.lines)
        faults = interruption(Fed(heelrule, folder, ["--brief"]), lines)
        for options in [kinds[arguments.only]] if arguments.only else kinds.values():
            faults += same_bytes(Fed(heelrule, folder, options), lines)
        faults += memory(Fed(heelrule, folder, []), arguments.megabytes)
    for fault in faults:
        print(f"error: {fault}")
    if faults:
        return 1
    if not shutil.which("parallel"):
        print("GNU parallel is not here (Debian package `parallel`): that way was left out")
        return SKIPPED
    return 0


if __name__ == "__main__":
    sys.exit(main())
