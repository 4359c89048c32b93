"""Measures the program as a player meets it, in a pseudo-terminal of 80x24 with a data folder of the caller's making.

Usage: speed.py DATA PROGRAM [ARGUMENT ...]. Prints, as medians (and the largest):
start    from the start of the process until the first screen has been sent, its title and key line included;
key      from a key pressed until the last byte of the repaint has come;
idle     processor time used while nothing is pressed, as a share of one processor;
memory   resident at the first screen, and the most resident by the end;
name     `name 2-4@2 x04600` as a whole process.
Linux only: memory and processor time are read from /proc.
"""

import fcntl
import os
import pty
import re
import select
import signal
import statistics
import struct
import subprocess
import sys
import termios
import time

STARTS = 9
KEYS = 60
IDLE_SECONDS = 20.0
QUIET_SECONDS = 0.12
TICKS = os.sysconf("SC_CLK_TCK")


class Terminal:
    """The program in a pseudo-terminal, and all that it has sent."""

    def __init__(self, command):
        self.begun = time.monotonic()
        self.pid, self.fd = pty.fork()
        if self.pid == 0:
            os.environ.update(TERM="xterm-256color", LANG="C.UTF-8", COLUMNS="", LINES="")
            fcntl.ioctl(0, termios.TIOCSWINSZ, struct.pack("HHHH", 24, 80, 0, 0))
            os.execvp(command[0], command)
        self.sent = b""

    def read(self, timeout):
        """What comes within a time, or nothing. Answers a question for the size, as terminals do."""
        if not select.select([self.fd], [], [], timeout)[0]:
            return b""
        try:
            chunk = os.read(self.fd, 65536)
        except OSError:
            return b""
        for _ in range(chunk.count(b"\x1b[18t")):
            os.write(self.fd, b"\x1b[8;24;80t")
        self.sent += chunk
        return chunk

    def until(self, words):
        """Seconds since the start until all words have been sent."""
        while not all(word in self.sent for word in words):
            if not self.read(20):
                sys.exit(f"the screen did not come: {self.sent[-400:]!r}")
        return time.monotonic() - self.begun

    def quiet(self, seconds):
        """Reads until nothing has come for so long, and gives the time of the last byte."""
        last = time.monotonic()
        while time.monotonic() - last < seconds:
            chunk = self.read(0.01)
            # Questions to the terminal and the hiding of the cursor are no repaint.
            if re.sub(rb"\x1b(\[18t|\[\?25l|\[1;1H|\]1[01];\?\x1b\\\\)", b"", chunk):
                last = time.monotonic()
        return last

    def press(self, key):
        """Seconds from a key to the last byte of the repaint; none if nothing was repainted."""
        before = len(self.sent)
        at = time.monotonic()
        os.write(self.fd, key)
        last = self.quiet(QUIET_SECONDS)
        return last - at if len(self.sent) > before else None

    def memory(self, what):
        with open(f"/proc/{self.pid}/status") as status:
            return int(re.search(what + r":\s+(\d+) kB", status.read())[1]) / 1024

    def ticks(self):
        with open(f"/proc/{self.pid}/stat") as stat:
            fields = stat.read().rsplit(")", 1)[1].split()
        return int(fields[11]) + int(fields[12])

    def end(self):
        os.kill(self.pid, signal.SIGTERM)
        while self.read(5):
            pass
        os.waitpid(self.pid, 0)
        os.close(self.fd)


def row(name, values, unit):
    print(f"{name:8} {statistics.median(values):8.1f} {unit}   largest {max(values):.1f}, {len(values)} times")


def main():
    data, program = sys.argv[1], sys.argv[2:]
    command = [*program, "--data", data]
    first_screen = [b"Clampwise", b"quit"]

    starts = []
    for _ in range(STARTS + 1):
        terminal = Terminal(command)
        starts.append(1000 * terminal.until(first_screen))
        terminal.end()
    row("start", starts[1:], "ms")

    terminal = Terminal(command)
    terminal.until(first_screen)
    terminal.quiet(1)
    resident = terminal.memory("VmRSS")
    # The list of drills: there an arrow changes what is drawn.
    terminal.press(b"d")
    keys = [terminal.press(b"\x1b[B" if i % 2 == 0 else b"\x1b[A") for i in range(KEYS)]
    row("key", [1000 * took for took in keys if took is not None], "ms")
    if None in keys:
        print(f"         {keys.count(None)} keys changed nothing")
    terminal.press(b"\x1b")
    terminal.press(b"\r")
    answers = [terminal.press(key) for _ in range(10) for key in (b"\x1b[18~", b"\r")]
    row("answer", [1000 * took for took in answers if took is not None], "ms")
    settled = time.monotonic()
    while time.monotonic() - settled < 2:
        terminal.read(0.1)
    before, at = terminal.ticks(), time.monotonic()
    while time.monotonic() - at < IDLE_SECONDS:
        terminal.read(1)
    used = (terminal.ticks() - before) / TICKS / (time.monotonic() - at)
    print(f"idle     {100 * used:8.2f} % of one processor, a question on the screen, over {IDLE_SECONDS:.0f} s")
    print(f"memory   {resident:8.1f} MB   largest {terminal.memory('VmHWM'):.1f}")
    terminal.end()

    names = []
    for _ in range(21):
        at = time.monotonic()
        subprocess.run([*program, "name", "2-4@2", "x04600"], check=True, stdout=subprocess.DEVNULL)
        names.append(1000 * (time.monotonic() - at))
    row("name", names[1:], "ms")


main()
