"""Sees that CMake knows every source: check_listed.py ROOT.

Sources are listed by name, never found by pattern, so a file that was left out of its list would
go uncompiled, and a test that was left out would go unrun, without a word. Prints each such file,
each listed file that is not there, and ends with 1 if there is any.
"""

import pathlib
import re
import sys

# Each list, and what it must name; folders with a CMakeLists.txt of their own have their own list.
LISTS = [
    ("engine", ("*.cpp", "*.hpp")),
    ("cli", ("*.cpp",)),
    ("tests", ("*.cpp",)),
    ("tests/fuzz", ("*.cpp",)),
    ("tests/bench", ("*.cpp",)),
]


def listed_in(folder):
    text = (folder / "CMakeLists.txt").read_text(encoding="utf-8")
    return set(re.findall(r"^ +([\w/]+\.[ch]pp)$", text, re.MULTILINE))


def present_in(folder, patterns):
    elsewhere = [file.parent for file in folder.glob("*/**/CMakeLists.txt")]
    return {
        path.relative_to(folder).as_posix()
        for pattern in patterns
        for path in folder.rglob(pattern)
        if not any(path.is_relative_to(other) for other in elsewhere)
    }


def main(root):
    faults = count = 0
    for name, patterns in LISTS:
        folder = pathlib.Path(root, name)
        listed, present = listed_in(folder), present_in(folder, patterns)
        for path in sorted(present - listed):
            print(f"{name}/CMakeLists.txt: error: {path} is not listed")
        for path in sorted(listed - present):
            print(f"{name}/CMakeLists.txt: error: {path} is listed, and is not there")
        faults += len(present ^ listed)
        count += len(listed)
    print(f"{count} files listed, {faults} faults")
    return 1 if faults or not count else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1]))
