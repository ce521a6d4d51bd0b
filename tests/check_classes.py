#!/usr/bin/env python3
"""Sees that every class on our pages has a rule of style, and every rule a class: check_classes.py ROOT.

A class counts as given where a template, a source or a script has it in a class attribute; a rule also has
one where its name stands as a word of a text, for sources put classes together.
"""

import pathlib
import re
import sys

EVERY_PAGE = ["engine/report/page.css", "engine/drawing/drawing.css"]
WRITERS = [  # what writes markup, and the styles that reach it
    (["engine/report/*.mustache", "engine/report/*.cpp", "engine/drawing/*.cpp"], []),
    (["engine/recording/*.mustache", "engine/recording/*.cpp"], ["engine/recording/paper_sheet.css"]),
    (["cli/page/*.mustache", "cli/page/*.js", "cli/*.cpp"], ["cli/page/sheet.css"]),
]

SELECTOR = re.compile(r"([^{}]*)\{")
CLASS = re.compile(r"\.([a-z][\w-]*)")
GIVEN = re.compile(r'\bclass(?:=\\?"|: ")([^"\\]*)')
SCOPE = re.compile(r"@scope \(\.([a-z][\w-]*)\)")
TEXT = re.compile(r'"((?:[^"\\\n]|\\.)*)"')
IN_BRACES = re.compile(r"\{\{?[^{}]*\}?\}")


def texts_of(root, globs):
    return [path.read_text(encoding="utf-8") for glob in globs for path in sorted(root.glob(glob))]


def classes_with_a_rule(styles):
    rules = re.sub(r"/\*.*?\*/", "", "\n".join(styles), flags=re.DOTALL)
    return {name for selector in SELECTOR.findall(rules) for name in CLASS.findall(selector)}


def given_classes(text):
    return {name for given in GIVEN.findall(text) for name in IN_BRACES.sub(" ", given).split()}


def words_in_texts(text):
    return {word for words in TEXT.findall(text) for word in re.findall(r"[a-z][\w-]*", words)}


def faults(root):
    shared = classes_with_a_rule(texts_of(root, EVERY_PAGE))
    everywhere = set()
    for globs, styles in WRITERS:
        texts = "\n".join(texts_of(root, globs))
        own = classes_with_a_rule(texts_of(root, styles))
        scopes = set(SCOPE.findall(texts))
        said = words_in_texts(texts) | given_classes(texts)
        everywhere |= said
        for name in sorted(given_classes(texts) - shared - own - scopes):
            yield f"no rule for the class `{name}` of {globs[0]}"
        for name in sorted(own - everywhere):
            yield f"no class `{name}` for its rule in {styles[0]}"
    for name in sorted(shared - everywhere):
        yield f"no class `{name}` for its rule in {' or '.join(EVERY_PAGE)}"


def main(root):
    found = list(faults(root))
    for line in found:
        print(line)
    print(f"{len(found)} faults")
    return 1 if found else 0


if __name__ == "__main__":
    sys.exit(main(pathlib.Path(sys.argv[1])))
