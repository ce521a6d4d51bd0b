"""Proves that check_schema.py finds what it looks for: check_schema_test.py BUILD_FOLDER.

Each test changes one key of a report or of the schema, and runs the check on them.
"""

import copy
import json
import pathlib
import subprocess
import sys
import tempfile
import unittest

CHECK = pathlib.Path(__file__).with_name("check_schema.py")
SCHEMA = {
    "$schema": "https://json-schema.org/draft/2020-12/schema",
    "type": "object",
    "additionalProperties": False,
    "required": ["format", "score"],
    "properties": {
        "format": {"const": "heelrule verdict", "description": "What it is."},
        "score": {"$ref": "#/$defs/score", "description": "The score."},
    },
    "$defs": {
        "score": {
            "type": "object",
            "additionalProperties": False,
            "properties": {"points": {"type": "number", "description": "Points of 100."}},
        }
    },
}
REPORT = {"format": "heelrule verdict", "score": {"points": 80}}
build_folder = None


def check(printed, schema=SCHEMA):
    """The exit code and the output of the check over one case that printed a text."""
    with tempfile.TemporaryDirectory(dir=build_folder) as made:
        folder = pathlib.Path(made)
        (folder / "schema.json").write_text(json.dumps(schema), encoding="utf-8")
        (folder / "case").mkdir()
        (folder / "case" / "expected.stdout").write_text(printed, encoding="utf-8")
        ran = subprocess.run(
            [sys.executable, "-B", CHECK, folder / "schema.json", folder],
            capture_output=True,
            text=True,
            check=False,
        )
        return ran.returncode, ran.stdout


class SchemaTest(unittest.TestCase):
    def test_a_report_as_described_passes_alone_in_a_list_and_on_lines(self):
        one = json.dumps(REPORT)
        for printed in [one, f"[{one}, {one}]", f"{one}\n{one}\n"]:
            self.assertEqual(check(printed), (0, "Every report is as the schema says\n"))

    def test_a_key_that_is_not_described_fails(self):
        code, output = check(json.dumps(REPORT | {"mood": "good"}))
        self.assertEqual(code, 1)
        self.assertIn("case: $: Additional properties are not allowed ('mood' was unexpected)", output)

    def test_a_key_that_is_missing_fails_but_on_a_line(self):
        short = {"format": "heelrule verdict"}
        code, output = check(json.dumps([REPORT, short]))
        self.assertEqual(code, 1)
        self.assertIn("case: $: 'score' is a required property", output)
        self.assertEqual(check(f"{json.dumps(REPORT)}\n{json.dumps(short)}\n")[0], 0)

    def test_a_value_of_another_kind_fails(self):
        code, output = check(json.dumps(REPORT | {"score": {"points": "80"}}))
        self.assertEqual(code, 1)
        self.assertIn("case: $.score.points: '80' is not of type 'number'", output)

    def test_a_described_key_that_no_report_has_fails(self):
        self.assertEqual(
            check(json.dumps(REPORT | {"score": {}})), (1, "no report has /score/points\n")
        )
        self.assertEqual(check("Grade: sound\n")[0], 1)

    def test_a_key_without_a_description_fails(self):
        schema = copy.deepcopy(SCHEMA)
        del schema["$defs"]["score"]["properties"]["points"]["description"]
        self.assertEqual(
            check(json.dumps(REPORT), schema), (1, "/score/points has no description\n")
        )


if __name__ == "__main__":
    build_folder = sys.argv.pop(1)
    unittest.main()
