"""Proves that check_floors.py finds what it looks for: check_floors_test.py BUILD_FOLDER.

Each test writes a small tree with one fault planted in it to the build folder, and runs the check on it.
"""

import pathlib
import subprocess
import sys
import tempfile
import unittest

CHECK = pathlib.Path(__file__).with_name("check_floors.py")
build_folder = None

SOUND = {
    "engine/quantity/unit.hpp": "#pragma once\n#include <string>\n",
    "engine/model/trait.hpp": '#pragma once\n#include "engine/quantity/unit.hpp"\n',
    "engine/reading/yaml_tree.cpp": "#include <yaml-cpp/eventhandler.h>\n",
    "engine/report/fill_template.cpp": "#include <kainjow/mustache.hpp>\n",
    "cli/command_line.cpp": '#include <boost/program_options.hpp>\n#include "engine/model/trait.hpp"\n',
}


def check(**planted):
    """The exit code and the output of the check over the sound tree with files added or replaced."""
    with tempfile.TemporaryDirectory(dir=build_folder) as folder:
        for path, text in (SOUND | planted.get("files", {})).items():
            file = pathlib.Path(folder, path)
            file.parent.mkdir(parents=True, exist_ok=True)
            file.write_text(text, encoding="utf-8")
        ran = subprocess.run(
            [sys.executable, "-B", CHECK, folder], capture_output=True, text=True, check=False
        )
        return ran.returncode, ran.stdout


class FloorsTest(unittest.TestCase):
    def test_a_sound_tree_passes(self):
        self.assertEqual(check(), (0, "5 files, 0 faults\n"))

    def test_an_include_of_a_higher_floor_fails(self):
        upward = {"engine/quantity/unit.hpp": '#pragma once\n#include "engine/report/text.hpp"\n'}
        self.assertEqual(
            check(files=upward),
            (
                1,
                "engine/quantity/unit.hpp:2: error: quantity lies below report"
                " and must not include 'engine/report/text.hpp'\n"
                "5 files, 1 faults\n",
            ),
        )

    def test_the_engine_does_not_include_the_command_line(self):
        code, output = check(files={"engine/report/text.cpp": '#include "cli/exit_code.hpp"\n'})
        self.assertEqual(code, 1)
        self.assertIn("report lies below cli and must not include 'cli/exit_code.hpp'", output)

    def test_a_library_outside_its_one_place_fails(self):
        for included, path in [
            ("<yaml-cpp/yaml.h>", "engine/reading/read_rules.cpp"),
            ("<simdjson.h>", "engine/scoring/score.cpp"),
            ("<boost/program_options.hpp>", "cli/main.cpp"),
            ("<fstream>", "engine/report/text.cpp"),
        ]:
            with self.subTest(included):
                code, output = check(files={path: f"\n#include {included}\n"})
                self.assertEqual(code, 1)
                self.assertIn(f"{path}:2: error: '{included[1:-1]}' is for ", output)

    def test_headers_that_include_each_other_in_a_circle_fail(self):
        circle = {
            "engine/model/rule.hpp": '#include "engine/model/band.hpp"\n',
            "engine/model/band.hpp": '#include "engine/model/rule.hpp"\n',
        }
        code, output = check(files=circle)
        self.assertEqual(code, 1)
        self.assertIn("engine/model/band.hpp:1: error: 'engine/model/rule.hpp' leads back", output)

    def test_a_source_that_includes_its_own_header_late_fails(self):
        late = {"engine/model/trait.cpp": '\n#include <string>\n#include "engine/model/trait.hpp"\n'}
        code, output = check(files=late)
        self.assertEqual(code, 1)
        self.assertIn("engine/model/trait.cpp:2: error: 'engine/model/trait.hpp' comes first", output)

    def test_what_throws_outside_of_its_one_place_fails(self):
        thrown = {"engine/model/rule.cpp": '// try {\nauto words = "throw";\nvoid fail() { throw 1; }\n'}
        code, output = check(files=thrown)
        self.assertEqual(code, 1)
        self.assertIn("engine/model/rule.cpp:3: error: nothing here throws or catches", output)
        self.assertIn(" 1 faults", output)

    def test_a_folder_that_is_no_floor_fails(self):
        code, output = check(files={"engine/attic/old.hpp": "#pragma once\n"})
        self.assertEqual(code, 1)
        self.assertIn("engine/attic/old.hpp:1: error: this folder is no floor", output)


if __name__ == "__main__":
    build_folder = sys.argv.pop(1)
    unittest.main()
