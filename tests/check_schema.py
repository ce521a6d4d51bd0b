"""Checks JSON reports against their description: check_schema.py SCHEMA FOLDER.

SCHEMA is one of engine/report/*.schema.json, a JSON Schema of 2020-12 (https://json-schema.org). FOLDER
holds cases of whole commands (see commands/run.py); what they are expected to print is looked at where
it is one report, a list of reports, or a report on each line. Three things must hold:

    every report is as the schema says, which allows no key that it does not describe;
    every key that the schema describes occurs in one of the reports;
    every key of the schema has a description.

A report on a line may leave keys out, and have those that are of short lines alone: `--brief` and `--failed` do.
"""

import json
import pathlib
import sys

import jsonschema


def resolved(schema, root):
    """The schema itself, where it only refers to another part of the document."""
    while "$ref" in schema:
        at = root
        for step in schema["$ref"].removeprefix("#/").split("/"):
            at = at[step]
        schema = at
    return schema


def described_keys(schema, root, place=""):
    """Every key that the schema describes, as a path such as `/findings/[]/weight`, with its schema."""
    schema = resolved(schema, root)
    for key, inner in schema.get("properties", {}).items():
        yield f"{place}/{key}", inner
        yield from described_keys(inner, root, f"{place}/{key}")
    if "items" in schema:
        yield from described_keys(schema["items"], root, f"{place}/[]")


def keys_of(report, place=""):
    """Every key that occurs in a report, as the same kind of path."""
    if isinstance(report, dict):
        for key, value in report.items():
            yield f"{place}/{key}"
            yield from keys_of(value, f"{place}/{key}")
    elif isinstance(report, list):
        for value in report:
            yield from keys_of(value, f"{place}/[]")


def reports_in(text, name):
    """The reports of this format in what a command printed, and whether each has a line to itself."""
    if not text.startswith(("{", "[")):
        return [], False
    try:
        content = json.loads(text)
        found, is_lines = content if isinstance(content, list) else [content], False
    except json.JSONDecodeError:
        found, is_lines = [json.loads(line) for line in text.splitlines()], True
    return [report for report in found if report.get("format") == name], is_lines


def complaints_of(schema, folder):
    whole = jsonschema.Draft202012Validator
    shortened = jsonschema.validators.extend(whole, {"required": lambda *_: ()})
    name = schema["properties"]["format"]["const"]
    occurring = set()
    for file in sorted(folder.glob("*/expected.stdout")):
        reports, is_lines = reports_in(file.read_text(encoding="utf-8", errors="replace"), name)
        validator = (shortened if is_lines else whole)(schema)
        for report in reports:
            occurring |= set(keys_of(report))
            for fault in validator.iter_errors(report):
                yield f"{file.parent.name}: {fault.json_path}: {fault.message}"
    for place, inner in described_keys(schema, schema):
        if place not in occurring:
            yield f"no report has {place}"
        if not inner.get("description"):
            yield f"{place} has no description"


def main():
    with open(sys.argv[1], encoding="utf-8") as opened:
        schema = json.load(opened)
    jsonschema.Draft202012Validator.check_schema(schema)
    complaints = list(complaints_of(schema, pathlib.Path(sys.argv[2])))
    print("\n".join(complaints) or "Every report is as the schema says")
    return 1 if complaints else 0


if __name__ == "__main__":
    sys.exit(main())
