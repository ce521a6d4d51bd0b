"""A pseudo-terminal with a program at it, as a person would use it."""

import os
import pty
import select
import signal
import subprocess
import time

SECONDS_ALLOWED = 60


class Ended(Exception):
    """The program ended before it printed what was waited for."""


class Terminal:
    def __init__(self, command, folder, environment=None, before=None):
        self.master, slave = pty.openpty()
        self.shown = ""
        self.unread = ""

        # So that Ctrl-C and a hang-up reach the program, it gets the terminal for its own.
        def prepare():
            os.setsid()
            import fcntl
            import termios

            fcntl.ioctl(0, termios.TIOCSCTTY, 0)
            if before:
                before()

        self.process = subprocess.Popen(
            command,
            cwd=folder,
            stdin=slave,
            stdout=slave,
            stderr=slave,
            env={"TERM": "vt100", "PATH": os.environ["PATH"], "LC_ALL": "C"} | (environment or {}),
            preexec_fn=prepare,
        )
        os.close(slave)

    def _read(self, until):
        """Takes in what is printed; False at its end."""
        ready, _, _ = select.select([self.master], [], [], max(0, until - time.monotonic()))
        if not ready:
            raise TimeoutError(f"waited in vain; on the screen stands:\n{self.shown[-2000:]}")
        try:
            piece = os.read(self.master, 65536).decode(errors="replace")
        except OSError:
            piece = ""
        self.shown += piece
        self.unread += piece
        return piece != ""

    def expect(self, words):
        """Waits until `words` are printed, after what was waited for before."""
        until = time.monotonic() + SECONDS_ALLOWED
        while words not in self.unread:
            if not self._read(until):
                raise Ended(self.shown)
        self.unread = self.unread[self.unread.index(words) + len(words):]

    def prompt(self):
        """Waits for the next prompt."""
        self.expect("> ")

    def type(self, line):
        os.write(self.master, (line + "\r").encode())

    def answer(self, line):
        """Types a line, and waits until it was taken and the next question stands there."""
        self.type(line)
        self.expect("\n")
        self.prompt()

    def kill(self):
        self.process.send_signal(signal.SIGKILL)
        self.wait()

    def hang_up(self):
        os.close(self.master)
        self.master = None
        return self.process.wait(SECONDS_ALLOWED)

    def wait(self):
        """The exit status; below 0 where a signal ended it."""
        until = time.monotonic() + SECONDS_ALLOWED
        while self._read(until):
            pass
        status = self.process.wait(SECONDS_ALLOWED)
        os.close(self.master)
        self.master = None
        return status
