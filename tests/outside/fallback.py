"""Tries both ways to read the terminal: our own, and the library's, which is used where the library's inside has changed.

Usage: fallback.py HARNESS_DLL [untimed] (tests/Clampwise.Screens.Harness, built; untimed: no judgement by the clock, for busy machines). In a pseudo-terminal of 80x24: the time from a key to the end of
its repaint, at moments that know nothing of the library's pace (seeded), and sequences that the library fails on or does not know. Exit
code 1 if a key takes more than 20 ms at the median, or a sequence is not read whole, or the program ends.
"""

import fcntl
import os
import pty
import random
import re
import select
import statistics
import struct
import sys
import tempfile
import termios
import time

KEYS = 100
MOST_MS = 20.0
# Menu, F13, F20, a code that is no character, a number too large, rxvt's Home; each must come as at most one key, and none as text.
STRANGE = [b"\x1b[29~", b"\x1b[25~", b"\x1b[34~", b"\x1b[1114112u", b"\x1b[99999999999u", b"\x1b[7~"]


class Page:
    def __init__(self, harness, way):
        self.pid, self.fd = pty.fork()
        if self.pid == 0:
            os.environ.update(TERM="xterm-256color", LANG="C.UTF-8")
            fcntl.ioctl(0, termios.TIOCSWINSZ, struct.pack("HHHH", 24, 80, 0, 0))
            folder = tempfile.mkdtemp(prefix="clampwise-fallback-")
            os.execvp("dotnet", ["dotnet", harness, "--data", folder] + ([way] if way else []))
        self.sent = b""
        if not self.until(b"Waiting to fail", 30):
            raise SystemExit(f"no first screen: {self.sent!r}")

    def read(self, timeout):
        if not select.select([self.fd], [], [], timeout)[0]:
            return b""
        try:
            chunk = os.read(self.fd, 65536)
        except OSError:
            return b""
        self.sent += chunk
        return chunk

    def until(self, words, seconds):
        end = time.monotonic() + seconds
        while words not in self.sent:
            if time.monotonic() > end:
                return False
            self.read(0.5)
        return True

    def settle(self, seconds=0.4):
        end = time.monotonic() + seconds
        while time.monotonic() < end:
            self.read(0.05)

    def type(self, keys):
        self.sent = b""
        start = time.monotonic()
        os.write(self.fd, keys)
        while time.monotonic() - start < 2 and not self.read(0.5):
            pass
        return (time.monotonic() - start) * 1000


def main(harness, is_timed):
    chance = random.Random(9)
    bad = 0
    for way, name in (("", "our own"), ("library", "the library's")):
        page = Page(harness, way)
        page.settle(1.5)
        times = []
        for index in range(KEYS):
            page.settle(0.03 + chance.random() * 0.05)
            times.append(page.type(b"ab"[index % 2 : index % 2 + 1]))
        median = statistics.median(times)
        bad += is_timed and median > MOST_MS
        print(f"{name}: key to repaint {median:.1f} ms at the median, at most {max(times):.1f}")
        for strange in STRANGE:
            page.settle(0.2)
            page.sent = b""
            os.write(page.fd, strange)
            page.settle(0.3)
            # Typed text would show as its last character.
            as_text = re.search(rb": [0-9~u\[;]\.", page.sent)
            page.type(b"a")
            page.settle(0.2)
            lives = page.type(b"b") < 1900
            bad += bool(as_text) or not lives
            print(f"{name}: {strange!r} {'READ IN PIECES' if as_text else 'whole'}{'' if lives else ', AND THE PROGRAM ENDED'}")
        os.write(page.fd, b"\x1b")
        page.settle(0.5)
        os.close(page.fd)
        os.waitpid(page.pid, 0)
    return 1 if bad else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1], sys.argv[2:] != ["untimed"]))
