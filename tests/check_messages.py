#!/usr/bin/env python3
"""Sees that every sentence which the engine can say of a rule file or a record is pinned by a test.

    check_messages.py ROOT

A sentence is a text of two words or more in the sources that read, compile and report faults.
It is pinned where a file below tests/diagnostics, what a whole command is expected to print, or a
unit test, holds it word for word, with anything at all in place of `{}`.
"""

import pathlib
import re
import sys

SOURCES = ["engine/source/*.cpp", "engine/reading/*.cpp", "engine/formula/*.cpp",
           "engine/scoring/check_*.cpp", "engine/scoring/compile.cpp",
           "engine/scoring/derive_types.cpp", "engine/scoring/phrase.cpp"]
TESTS = ["tests/diagnostics/**/*.expected", "tests/commands/*/expected.std*", "tests/unit/source/*.cpp", "tests/unit/reading/*.cpp",
         "tests/unit/formula/*.cpp"]

# What a parser of others says, and nobody reads.
NO_SENTENCES = {"hex number", "map value", "block entry", "end of map", "end of sequence",
                "unknown token", "block scalar", "referenced anchor"}

LITERALS = re.compile(r'(?:"(?:[^"\\\n]|\\.)*"\s*)+')
PIECE = re.compile(r'"((?:[^"\\\n]|\\.)*)"')
COMMENT = re.compile(r"^\s*//.*$|^#include.*$", re.MULTILINE)
CHARACTER = re.compile(r"'(?:[^'\\\n]|\\.)'")


def spelled_out(text):
    return text.replace("\\n", "\n").replace('\\"', '"').replace("\\\\", "\\")


def literals_in(source):
    """Every text of a source, adjacent ones joined as the compiler joins them."""
    source = CHARACTER.sub("' '", COMMENT.sub("", source))
    for match in LITERALS.finditer(source):
        yield "".join(spelled_out(piece) for piece in PIECE.findall(match[0]))


def is_sentence(text):
    return text not in NO_SENTENCES and len(re.findall(r"[A-Za-z]{2,}", text)) >= 2 and " " in text.strip()


def pattern(text):
    """A text with whatever stands in its places; `{{` is a brace."""
    pieces = re.split(r"(\{\{|\}\}|\{[^{}]*\})", text)
    out = ""
    for piece in pieces:
        if piece in ("{{", "}}"):
            out += re.escape(piece[0])
        elif re.fullmatch(r"\{(:[^{}]*)?\}", piece):
            out += ".*"
        else:
            out += re.escape(piece)
    return re.compile(out)


def main(root):
    pinned = "\n".join(path.read_text(encoding="utf-8", errors="replace")
                       for glob in TESTS for path in sorted(root.glob(glob)))
    pinned += "\n" + spelled_out(pinned)
    missing = []
    for glob in SOURCES:
        for path in sorted(root.glob(glob)):
            for text in literals_in(path.read_text(encoding="utf-8")):
                # A text that is handed to fmt has doubled braces; one that is not has them as they are.
                if is_sentence(text) and text not in pinned and not pattern(text).search(pinned):
                    missing.append(f"{path.relative_to(root)}: {text}")
    for line in missing:
        print(line)
    print(f"{len(missing)} sentences are pinned by no test")
    return 1 if missing else 0


if __name__ == "__main__":
    sys.exit(main(pathlib.Path(sys.argv[1])))
