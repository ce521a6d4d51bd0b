"""Records through a real pseudo-terminal: record_test.py --heelrule PROGRAM [--failing-calls LIBRARY] [TEST...].

Whatever happens to a sitting (kill -9 after every answer, Ctrl-C, a hang-up, a full disk, a folder that cannot be
written, a second person, calls that fail), nothing that was acknowledged may be lost, and no half record may stand
anywhere.
"""

import argparse
import errno
import json
import os
import pathlib
import resource
import signal
import stat
import subprocess
import sys
import tempfile
import termios

from terminal import Terminal
from typed_record import answers, filled

ROOT = pathlib.Path(__file__).resolve().parent.parent.parent
EXAMPLES = ROOT / "examples"
TOE_SPACE = str(EXAMPLES / "first-rule" / "toe-space.yaml")
SHORT = ["2026-10-03", "S-07", "C-014", "", "", "", "243 mm", "246, 247, 246 mm", "both 252 mm", "finish"]
# The same, wherever a sitting before broke off.
AGAIN = ["go inspection", *SHORT[:6], "go foot_length", *SHORT[6:8], "go insole_length", *SHORT[8:]]
NOBODY = 65534
MORE_CALLS_THAN_ONE_SITTING = 60


class Bench:
    """A folder to record in."""

    def __init__(self, program, folder):
        self.program, self.folder = program, pathlib.Path(folder)
        self.file = self.folder / "pair.yaml"
        self.journal = self.folder / "pair.yaml.journal"

    def run(self, *arguments, lines=None, environment=None, before=None):
        done = subprocess.run(
            [self.program, *map(str, arguments)],
            cwd=self.folder,
            input=None if lines is None else "".join(line + "\n" for line in lines),
            env=os.environ | (environment or {}),
            preexec_fn=before,
            capture_output=True,
            text=True,
            timeout=60,
            check=False,
        )
        return done

    def sit_down(self, rules=TOE_SPACE, *more, **surroundings):
        return Terminal([self.program, "record", rules, "--to", "pair.yaml", *more], self.folder, **surroundings)

    def verdict(self, rules, file=None):
        return json.loads(self.run("grade", rules, file or self.file, "--as", "json").stdout)


def typed_through(bench, rules, lines):
    """A whole sitting without a break."""
    terminal = bench.sit_down(rules)
    terminal.prompt()
    for line in lines:
        terminal.answer(line)
    terminal.type("finish")
    assert terminal.wait() == 0, terminal.shown
    return bench.file.read_text(encoding="utf-8")


def test_typed_and_written_by_hand_grade_alike(bench):
    for rules, folder in (("everyday", "office-worker"), ("child", "child"), ("older-adult", "older-adult")):
        example = EXAMPLES / folder / "inspection.yaml"
        blank = bench.run("sheet", rules).stdout
        typed_through(bench, rules, answers(blank, example))
        by_hand = bench.folder / "by-hand.yaml"
        by_hand.write_text(filled(blank, example), encoding="utf-8")
        assert bench.verdict(rules) == bench.verdict(rules, by_hand) == bench.verdict(rules, example), rules
        assert stat.S_IMODE(bench.file.stat().st_mode) == 0o600
        assert not bench.journal.exists()
        bench.file.unlink()


def test_killed_after_every_answer(bench):
    lines = answers(bench.run("sheet", "everyday").stdout, EXAMPLES / "office-worker" / "inspection.yaml")
    whole = typed_through(bench, "everyday", lines)
    bench.file.unlink()
    for line in lines:
        terminal = bench.sit_down("everyday")
        terminal.prompt()
        terminal.answer(line)
        terminal.kill()
        assert not bench.file.exists()
    terminal = bench.sit_down("everyday")
    terminal.prompt()
    terminal.type("finish")
    assert terminal.wait() == 0
    assert bench.file.read_text(encoding="utf-8") == whole


def test_killed_while_typing(bench):
    terminal = bench.sit_down()
    terminal.prompt()
    for line in SHORT[:6]:
        terminal.answer(line)
    os.write(terminal.master, b"243")
    terminal.expect("243")
    terminal.kill()
    terminal = bench.sit_down()
    terminal.expect("Going on with what `pair.yaml.journal` kept.")
    terminal.expect("left> ")
    for line in SHORT[6:9]:
        terminal.answer(line)
    terminal.type("finish")
    assert terminal.wait() == 0
    assert bench.file.read_text(encoding="utf-8").count("243 mm") == 1


def test_torn_tail_of_a_journal(bench):
    terminal = bench.sit_down()
    terminal.prompt()
    for line in SHORT[:7]:
        terminal.answer(line)
    terminal.kill()
    whole = bench.journal.read_bytes()
    bench.journal.write_bytes(whole[:-5])
    terminal = bench.sit_down()
    terminal.expect("left> ")
    for line in SHORT[6:9]:
        terminal.answer(line)
    terminal.type("finish")
    assert terminal.wait() == 0


def test_signals_keep_the_journal_and_reach_the_shell(bench):
    for number, given in ((signal.SIGINT, "key"), (signal.SIGINT, "kill"), (signal.SIGTERM, "kill"), (signal.SIGHUP, "kill")):
        terminal = bench.sit_down()
        terminal.prompt()
        terminal.answer("" if not bench.journal.exists() else "back")
        if given == "key":
            os.write(terminal.master, b"\x03")
        else:
            terminal.process.send_signal(number)
        status = terminal.wait()
        assert status == -number, (number, given, status, terminal.shown)
        assert "is kept in `pair.yaml.journal`" in terminal.shown
        assert bench.journal.exists() and not bench.file.exists()
    terminal = bench.sit_down()
    terminal.prompt()
    assert terminal.hang_up() == -signal.SIGHUP
    assert bench.journal.exists()


def test_control_d_leaves_for_now(bench):
    terminal = bench.sit_down()
    terminal.prompt()
    terminal.answer("2026-10-03")
    os.write(terminal.master, b"\x04")
    assert terminal.wait() == 1
    assert "the same command goes on" in terminal.shown


def test_keys_edit_a_line_and_call_back_earlier_ones(bench):
    terminal = bench.sit_down()
    terminal.prompt()
    for line in SHORT[:6]:
        terminal.answer(line)
    terminal.answer("244 mmx\x7f\x01\x06\x06\x7f5")  # backspace; to the start, two on, 4 becomes 5
    terminal.answer("\x1b[A")  # up: the line before
    terminal.answer("both 252 mm # für den Bären\x7f\x7f\x7f\x7fä")
    terminal.type("finish")
    assert terminal.wait() == 0
    text = bench.file.read_text(encoding="utf-8")
    assert 'foot_length: {left: "254 mm", right: "254 mm"}' in text, text
    assert 'note: "für den Bä"' in text, text


def test_keys_typed_ahead_are_edited_too(bench):
    terminal = bench.sit_down()
    terminal.prompt()
    ahead = [*SHORT[:6], "244 mmx\x7f\x01\x06\x06\x7f5", "246 mm", "both 252 mm # Bären\x7f\x7f\x7f\x7fä"]
    os.write(terminal.master, "".join(line + "\r" for line in ahead).encode())
    terminal.expect("what next> ")
    terminal.type("finish")
    assert terminal.wait() == 0
    text = bench.file.read_text(encoding="utf-8")
    assert 'left: "254 mm"' in text and 'note: "Bä"' in text, text


def test_the_terminal_is_left_as_it_was(bench):
    for stop in (b"\x03", b"\x04", b"finish\rfinish\r"):
        terminal = bench.sit_down()
        terminal.prompt()
        assert not termios.tcgetattr(terminal.master)[3] & termios.ICANON
        os.write(terminal.master, stop)
        terminal.expect("pair.yaml")
        terminal.process.wait(60)
        asked_for = termios.ICANON | termios.ECHO | termios.ISIG
        assert termios.tcgetattr(terminal.master)[3] & asked_for == asked_for, stop
        os.close(terminal.master)


def test_refused_at_once_and_asked_again(bench):
    terminal = bench.sit_down()
    terminal.prompt()
    terminal.answer("yesterday")
    assert "is no date" in terminal.shown
    for line in SHORT[:6]:
        terminal.answer(line)
    terminal.answer("243")
    assert "243 mm" in terminal.shown
    terminal.answer("243 mn")
    assert "did you mean `mm`?" in terminal.shown
    terminal.kill()
    assert bench.journal.read_text(encoding="utf-8").count("foot_length") == 0


def test_two_people_on_one_file(bench):
    first = bench.sit_down()
    first.prompt()
    second = bench.sit_down()
    assert second.wait() == 73
    assert "somebody else is recording into `pair.yaml`" in second.shown
    first.answer("2026-10-03")
    first.kill()
    third = bench.sit_down()
    third.expect("Going on")
    third.kill()


def test_a_file_that_is_there_is_kept(bench):
    bench.file.write_text("mine\n", encoding="utf-8")
    refused = bench.run("record", TOE_SPACE, "--to", "pair.yaml", lines=SHORT)
    assert refused.returncode == 73 and "`pair.yaml` is there already" in refused.stderr
    assert bench.file.read_text(encoding="utf-8") == "mine\n" and not bench.journal.exists()
    # Somebody else makes it while the questions are asked.
    bench.file.unlink()
    terminal = bench.sit_down()
    terminal.prompt()
    for line in SHORT[:9]:
        terminal.answer(line)
    bench.file.write_text("theirs\n", encoding="utf-8")
    terminal.type("finish")
    assert terminal.wait() == 73
    assert bench.file.read_text(encoding="utf-8") == "theirs\n" and bench.journal.exists()
    bench.file.unlink()
    assert bench.sit_down().wait() == 0
    assert "252 mm" in bench.file.read_text(encoding="utf-8") and not bench.journal.exists()


def test_replace(bench):
    bench.file.write_text("old\n", encoding="utf-8")
    done = bench.run("record", TOE_SPACE, "--to", "pair.yaml", "--replace", lines=SHORT)
    assert done.returncode == 0, done.stderr
    assert "252 mm" in bench.file.read_text(encoding="utf-8")


def test_links_are_not_followed(bench):
    victim = bench.folder / "victim"
    victim.write_text("mine\n", encoding="utf-8")
    for link in (bench.file, bench.journal):
        link.symlink_to(victim)
        done = bench.run("record", TOE_SPACE, "--to", "pair.yaml", "--replace", lines=SHORT)
        assert done.returncode == 73 and "is a link" in done.stderr, done
        assert victim.read_text(encoding="utf-8") == "mine\n"
        for name in (bench.file, bench.journal):
            name.unlink(missing_ok=True)


def test_a_pipe_stops_at_the_first_refusal(bench):
    lines = SHORT[:6] + ["243", "246 mm"]
    done = bench.run("record", TOE_SPACE, "--to", "pair.yaml", lines=lines)
    assert done.returncode == 65 and "line 7 of the answers" in done.stderr, done.stderr
    assert not bench.file.exists()
    done = bench.run("record", TOE_SPACE, "--to", "pair.yaml", lines=SHORT[6:])
    assert done.returncode == 0
    unfinished = bench.run("record", TOE_SPACE, "--to", "other.yaml", lines=SHORT[:8])
    assert unfinished.returncode == 1 and not (bench.folder / "other.yaml").exists()


def test_a_damaged_journal_is_not_gone_over(bench):
    bench.run("record", TOE_SPACE, "--to", "pair.yaml", lines=SHORT[:8])
    text = bench.journal.read_text(encoding="utf-8")
    bench.journal.write_text(text.replace("C-014", "C-015"), encoding="utf-8")
    done = bench.run("record", TOE_SPACE, "--to", "pair.yaml", lines=[])
    assert done.returncode == 65 and "is not as it was written" in done.stderr
    assert "C-015" in bench.journal.read_text(encoding="utf-8")


def test_other_rules_do_not_go_on(bench):
    bench.run("record", TOE_SPACE, "--to", "pair.yaml", lines=SHORT[:8])
    done = bench.run("record", "everyday", "--to", "pair.yaml", lines=["finish"])
    assert done.returncode == 65 and "was begun with the rules `toe-space" in done.stderr


def test_a_read_only_folder(bench):
    if os.geteuid() == 0:
        def before():
            os.setgid(NOBODY)
            os.setuid(NOBODY)
    else:
        before = None
    bench.folder.chmod(0o555)
    done = bench.run("record", TOE_SPACE, "--to", "pair.yaml", lines=SHORT, before=before)
    bench.folder.chmod(0o755)
    assert done.returncode == 73 and "cannot write `pair.yaml.journal`: Permission denied" in done.stderr, done.stderr
    assert sorted(bench.folder.iterdir()) == []


def test_a_full_disk_loses_nothing_that_was_kept(bench):
    for limit in range(100, 1400, 100):
        def before():
            resource.setrlimit(resource.RLIMIT_FSIZE, (limit, resource.RLIM_INFINITY))

        done = bench.run("record", TOE_SPACE, "--to", "pair.yaml", lines=SHORT, before=before)
        assert done.returncode in (0, 73), done
        if done.returncode == 73:
            assert "File too large" in done.stderr and not bench.file.exists()
            kept = bench.journal.read_text(encoding="utf-8").count("\n") if bench.journal.exists() else 0
            done = bench.run("record", TOE_SPACE, "--to", "pair.yaml", lines=AGAIN)
            assert done.returncode == 0, (limit, kept, done.stderr)
        assert "252 mm" in bench.file.read_text(encoding="utf-8")
        assert [bench.file] == list(bench.folder.iterdir())
        bench.file.unlink()


def test_each_call_that_can_fail(bench, library):
    """Makes the first, second, third … call fail that touches a file, until a run goes through."""
    whole = None
    for reason in (errno.EIO, errno.ENOSPC):
        for at in range(0, MORE_CALLS_THAN_ONE_SITTING):
            environment = {"LD_PRELOAD": library, "FAIL_AT": str(at), "FAIL_WITH": str(reason)}
            done = bench.run("record", TOE_SPACE, "--to", "pair.yaml", lines=SHORT, environment=environment)
            if at == 0:
                assert done.returncode == 0, done.stderr
                whole = bench.file.read_text(encoding="utf-8")
                bench.file.unlink()
                continue
            if bench.file.exists():
                assert bench.file.read_text(encoding="utf-8") == whole, at
            if done.returncode == 0 and not bench.journal.exists():
                bench.file.unlink()
                continue
            assert at < MORE_CALLS_THAN_ONE_SITTING - 1, "count further"
            assert done.returncode in (73, 74), (at, done)
            assert "cannot" in done.stderr, (at, done)
            again = bench.run("record", TOE_SPACE, "--to", "pair.yaml", lines=AGAIN)
            assert again.returncode == 0, (at, again)
            assert bench.file.read_text(encoding="utf-8") == whole, at
            assert not bench.journal.exists()
            bench.file.unlink()


def test_amend_keeps_what_was_there(bench):
    bench.run("record", TOE_SPACE, "--to", "pair.yaml", lines=SHORT)
    before = bench.file.read_text(encoding="utf-8")
    amend = ["record", "--amend", "pair.yaml", TOE_SPACE]
    unchanged = bench.run(*amend, lines=["A-02", "", "finish"])
    assert unchanged.returncode == 0 and "Nothing was changed." in unchanged.stdout
    assert bench.file.read_text(encoding="utf-8") == before
    lines = ["A-02", "misread", "go foot_length.right", "245 mm"]
    broken_off = bench.run(*amend, lines=lines)
    assert broken_off.returncode == 1 and bench.file.read_text(encoding="utf-8") == before
    done = bench.run(*amend, lines=["go inspection.client", "C-041", "finish"])
    assert done.returncode == 0, done.stderr
    text = bench.file.read_text(encoding="utf-8")
    assert 'right: "245 mm"' in text and 'client: "C-041"' in text
    assert '{answer: "foot_length.right", was: "246, 247, 246 mm", when: "' in text, text
    assert 'was: "C-014"' in text and text.count('by: "A-02", because: "misread"') == 2
    again = bench.run(*amend, lines=["A-03", "", "go foot_length.left", "241 mm", "finish"])
    assert again.returncode == 0
    text = bench.file.read_text(encoding="utf-8")
    assert text.count("answer:") == 3 and 'was: "246, 247, 246 mm"' in text and 'was: "243 mm"' in text
    report = bench.run("grade", TOE_SPACE, "pair.yaml").stdout
    assert "Amended after it was recorded" in report and "It was: 243 mm" in report, report


def test_what_cannot_be_shown_is_not_asked(bench):
    with open("/dev/full", "w", encoding="utf-8") as full:
        done = subprocess.run([bench.program, "record", TOE_SPACE, "--to", "pair.yaml"], cwd=bench.folder, stdout=full,
                              input="\n" * 20, stderr=subprocess.PIPE, text=True, timeout=60, check=False)
    assert done.returncode == 74 and done.stderr.count("cannot write to standard output") == 1, done


def test_an_amended_record_stays_what_it_was(bench):
    record = bench.folder / "pair.json"
    record.write_text('{"inspection": {"client": "C-014"}, "found": {"insole_length": "252 mm"}}', encoding="utf-8")
    done = bench.run("record", "--amend", "pair.json", TOE_SPACE, lines=["A-02", "", "go insole_length", "both 25 cm", "finish"])
    assert done.returncode == 0, done.stderr
    written = json.loads(record.read_text(encoding="utf-8"))
    assert written["found"] == {"insole_length": "25 cm"}, written
    assert written["amended"][0]["was"] == "252 mm", written


def test_amend_is_not_begun_on_one_record_and_ended_on_another(bench):
    bench.run("record", TOE_SPACE, "--to", "pair.yaml", lines=SHORT)
    amend = ["record", "--amend", "pair.yaml", TOE_SPACE]
    bench.run(*amend, lines=["A-02", "", "go foot_length", "245 mm"])
    bench.file.write_text(bench.file.read_text(encoding="utf-8").replace("C-014", "C-015"), encoding="utf-8")
    done = bench.run(*amend, lines=["finish"])
    assert done.returncode == 65 and "is not as it was when" in done.stderr


def main():
    parser = argparse.ArgumentParser(description=__doc__.split("\n", maxsplit=1)[0])
    parser.add_argument("--heelrule", required=True)
    parser.add_argument("--failing-calls", help="the library that makes calls fail; left out: those tests are not run")
    parser.add_argument("tests", nargs="*")
    arguments = parser.parse_args()
    program = str(pathlib.Path(arguments.heelrule).resolve())
    failed, passed = 0, 0
    for name, test in list(globals().items()):
        if not name.startswith("test_") or (arguments.tests and name not in arguments.tests):
            continue
        more = []
        if test.__code__.co_varnames[: test.__code__.co_argcount] == ("bench", "library"):
            if not arguments.failing_calls:
                continue
            more = [str(pathlib.Path(arguments.failing_calls).resolve())]
        with tempfile.TemporaryDirectory() as folder:
            os.chmod(folder, 0o755)
            try:
                test(Bench(program, folder), *more)
                passed += 1
            except Exception as fault:
                failed += 1
                print(f"FAILED {name}: {type(fault).__name__}: {fault}")
    print(f"{passed} passed, {failed} failed")
    return 1 if failed or not passed else 0


if __name__ == "__main__":
    sys.exit(main())
