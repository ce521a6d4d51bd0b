"""Keeps README.md true: check_readme.py --heelrule PROGRAM [--update].

Runs every `$ heelrule ...` line of its console blocks in the examples folder and compares what follows it with what the
command prints, errors included. A block headed `file=PATH` must hold that file. --update writes what is true.
"""

import argparse
import os
import pathlib
import re
import subprocess
import sys
import tempfile

ROOT = pathlib.Path(__file__).resolve().parent.parent
README = ROOT / "README.md"
BLOCK = re.compile(r"^```(console|yaml file=(\S+))\n(.*?)^```$", re.MULTILINE | re.DOTALL)


def printed(command, folder):
    """What a command prints in the examples folder, standard error and output as a person sees them."""
    environment = os.environ | {"PATH": f"{folder}{os.pathsep}{os.environ['PATH']}", "LC_ALL": "C"}
    done = subprocess.run(
        ["bash", "-c", f"{{ {command} ; }} 2>&1"],
        cwd=ROOT / "examples",
        env=environment,
        capture_output=True,
        text=True,
        check=False,
        timeout=60,
    )
    return done.stdout


def true_block(match, folder):
    """The block as it should be."""
    head, path, body = match.group(1), match.group(2), match.group(3)
    if path:
        return f"```{head}\n{(ROOT / path).read_text(encoding='utf-8')}```"
    commands = [line[2:] for line in body.splitlines() if line.startswith("$ ")]
    parts = [f"$ {command}\n{printed(command, folder)}" for command in commands]
    return "```console\n" + "\n".join(parts) + "```"


def main():
    parser = argparse.ArgumentParser(description=__doc__.split("\n", maxsplit=1)[0])
    parser.add_argument("--heelrule", required=True)
    parser.add_argument("--update", action="store_true")
    arguments = parser.parse_args()
    text = README.read_text(encoding="utf-8")
    with tempfile.TemporaryDirectory() as folder:
        (pathlib.Path(folder) / "heelrule").symlink_to(pathlib.Path(arguments.heelrule).resolve())
        blocks = list(BLOCK.finditer(text))
        wrong = [match for match in blocks if match.group(0) != true_block(match, folder)]
        if arguments.update:
            README.write_text(BLOCK.sub(lambda match: true_block(match, folder), text), encoding="utf-8")
            return 0
    for match in wrong:
        line = text.count("\n", 0, match.start()) + 1
        print(f"README.md:{line}: this block is not what the command prints or the file holds")
    print(f"{len(blocks) - len(wrong)} passed, {len(wrong)} failed")
    return 1 if wrong or not blocks else 0


if __name__ == "__main__":
    sys.exit(main())
