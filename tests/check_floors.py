"""Sees that includes only go down: check_floors.py ROOT.

The folders of engine/ are floors. A file includes its own floor and those below it; files of one
floor include each other in no circle. Five libraries and a few headers have one place each. A source
includes its own header before anything else, so that a header that lacks an include does not compile.
Nothing in the engine but the reading of YAML throws or catches. Prints each fault with its place, in GNU form, and ends with 1 if there is any.
"""

import pathlib
import re
import sys

FLOORS = [
    "quantity",
    "source",
    "model",
    "fitting",
    "reading",
    "formula",
    "scoring",
    "doubt",
    "agreement",
    "marking",
    "drawing",
    "report",
    "recording",
    "page",
]

# What may be included in some files alone: the include, the files, and how to say so.
RESERVED = [
    (r"yaml-cpp/.*", r"engine/reading/yaml_tree\.cpp", "engine/reading/yaml_tree.cpp"),
    (r"simdjson(/.*|\.h)", r"(?!)", "tests, since the engine also runs where that library does not"),
    (r"kainjow/.*", r"engine/report/fill_template\.cpp", "engine/report/fill_template.cpp"),
    (r"boost/math/.*", r"engine/(agreement/distribution|doubt/conformity)\.cpp", "engine/agreement/distribution.cpp and engine/doubt/conformity.cpp"),
    (r"boost/program_options(/.*|\.hpp)", r"cli/command_line.*", "cli/command_line*"),
    (
        r"filesystem|format|fstream|future|iomanip|iostream|locale|mutex|regex|sstream|thread",
        r"cli/.*|engine/reading/yaml.*\.cpp",
        "cli, since the engine also runs where there are no files, threads, locale or exceptions",
    ),
]

MAY_THROW = r"engine/reading/yaml_tree\.cpp|cli/.*"
NO_CODE = re.compile(r'"(?:\\.|[^"\\])*"|//.*')
EXCEPTION = re.compile(r"\bthrow\b|\btry\s*\{|\bcatch\s*\(")

INCLUDE = re.compile(r'\s*#\s*include\s*[<"]([^>"]+)[>"]')


def floor_of(path):
    """The height of a file of engine/ or cli/; a file right under engine/ stands above all floors."""
    folders = path.split("/")[:-1]
    if folders[0] == "cli":
        return len(FLOORS) + 1
    if folders == ["engine"]:
        return len(FLOORS)
    return FLOORS.index(folders[1]) if folders[1] in FLOORS else None


def name_of(path):
    folders = path.split("/")[:-1]
    return folders[1] if len(folders) > 1 else folders[0]


def includes_of(root, path):
    """The includes of a file, each with its line number."""
    lines = (root / path).read_text(encoding="utf-8").splitlines()
    matches = ((number, INCLUDE.match(line)) for number, line in enumerate(lines, 1))
    return [(number, match[1]) for number, match in matches if match]


def include_fault(path, included):
    """What is wrong with one include, or None."""
    for what, where, told in RESERVED:
        if re.fullmatch(what, included) and not re.fullmatch(where, path):
            return f"'{included}' is for {told}"
    if not included.startswith(("engine/", "cli/")):
        return None
    if floor_of(included) is None:
        return f"'{included}' is on no floor; floors are {', '.join(FLOORS)}"
    if floor_of(included) > floor_of(path):
        return f"{name_of(path)} lies below {name_of(included)} and must not include '{included}'"
    return None


def order_fault(path, lines, files):
    """What is wrong with the first include of a source, or None."""
    header = path.removesuffix(".cpp") + ".hpp"
    if path.endswith(".cpp") and header in files and (not lines or lines[0][1] != header):
        return lines[0][0] if lines else 1, f"'{header}' comes first here, to see that it compiles alone"
    return None


def exceptions_in(root, path):
    """The lines of a file that throw or catch though it must not."""
    if re.fullmatch(MAY_THROW, path):
        return []
    lines = (root / path).read_text(encoding="utf-8").splitlines()
    return [number for number, line in enumerate(lines, 1) if EXCEPTION.search(NO_CODE.sub("", line))]


def circles(includes):
    """One fault for each header that leads back to itself, at the include where the way begins."""
    for start in sorted(includes):
        for number, first in includes[start]:
            seen, waiting = set(), [first]
            while waiting:
                path = waiting.pop()
                if path not in seen and path in includes:
                    seen.add(path)
                    waiting += [included for _, included in includes[path]]
            if start in seen:
                yield start, number, f"'{first}' leads back to this file"


def faults(root):
    """All faults below a root, by place."""
    files = sorted(
        path.relative_to(root).as_posix()
        for folder in ("engine", "cli")
        for path in (root / folder).rglob("*")
        if path.suffix in (".cpp", ".hpp")
    )
    includes = {path: includes_of(root, path) for path in files if floor_of(path) is not None}
    found = [
        (path, 1, f"this folder is no floor; floors are {', '.join(FLOORS)}")
        for path in files
        if path not in includes
    ]
    for path, lines in includes.items():
        found += [
            (path, number, fault)
            for number, included in lines
            if (fault := include_fault(path, included))
        ]
        found += [
            (path, number, "nothing here throws or catches, since pages run it without exceptions")
            for number in exceptions_in(root, path)
        ]
        if late := order_fault(path, lines, includes):
            found.append((path, *late))
    return sorted(found + list(circles(includes))), len(files)


def main(root):
    found, count = faults(pathlib.Path(root))
    for path, number, fault in found:
        print(f"{path}:{number}: error: {fault}")
    print(f"{count} files, {len(found)} faults")
    return 1 if found or not count else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1]))
