#!/usr/bin/env bash
# Every way in which the program can end leaves the terminal as it was found and keeps what was answered. Runs it in a real terminal,
# ends it, and looks at the line discipline (stty), at the modes that the terminal reports, at the raw stream that was sent, at the exit
# code and at the data. Needs tmux. Usage: endings.sh [PROGRAM], by default the debug build.
set -u
cd "$(dirname "$0")/../.."
program=${1:-"dotnet src/Clampwise/bin/Debug/net10.0/clampwise.dll"}
failing="dotnet tests/Clampwise.Screens.Harness/bin/Debug/net10.0/Clampwise.Screens.Harness.dll"
scratch=$(mktemp -d)
runs=0
faults=0
. tests/outside/terminal.bash
trap 'tmux -L "$socket" kill-server 2>/dev/null; rm -rf "$scratch"' EXIT

fault() { faults=$((faults + 1)); echo "FAULT: $name: $1"; }

until_there() { # until_there FILE
  for _ in $(seq 100); do
    [ -e "$1" ] && return 0
    sleep 0.1
  done
  fault "$1 did not come"
  return 1
}

# The two settings of the line discipline that tell whether the terminal is the program's: -icanon -echo.
line_of_terminal() { # as another process sees them
  stty -a <"$(tmux -L "$socket" display -p '#{pane_tty}')" | grep -oE -- '-?(icanon|echo)\b' | sort | tr '\n' ' '
}

at_work_again() { # at_work_again SCREEN: the terminal is the program's once more, and shows what it showed
  for _ in $(seq 30); do
    [ "$1" = "$(screen | sed '1d')" ] && [ "$(line_of_terminal)" = "-echo -icanon " ] && break
    sleep 0.1
  done
  [ "$1" = "$(screen | sed '1d')" ] || { fault "the screen is another one"; screen; }
  # The runtime could set the line discipline again when all seems well.
  sleep 0.3
  [ "$(line_of_terminal)" = "-echo -icanon " ] || fault "the line discipline is not the program's: $(line_of_terminal)"
  # The alternate screen, no cursor; the mouse is left to the terminal.
  [ "$(modes | cut -d' ' -f1-3)" = "1 0 0" ] || fault "the terminal is not the program's: $(modes)"
}

# What a terminal can tell of itself: alternate screen, cursor, mouse, keypad and cursor keys, title.
modes() {
  tmux -L "$socket" display -p '#{alternate_on} #{cursor_flag} #{mouse_any_flag} #{mouse_sgr_flag} #{keypad_flag} #{keypad_cursor_flag} #{bracket_paste_flag} #{pane_title}'
}

last_of() { # last_of MODE: whether it was set (h) or reset (l) last
  grep -aoE "$(printf '\033')\[\?$1[hl]" "$scratch/stream" | tail -n 1 | tail -c 2
}

begin() { # begin NAME COMMAND...: a shell in a terminal with a title of its own, and the command in it
  name=$1
  shift
  runs=$((runs + 1))
  socket=clampwise-endings-$$-$runs
  data=$scratch/data-$runs
  mkdir -p "$data"
  printf '[screen]\nwelcome = false\n' >"$data/settings.toml"
  tmux -L "$socket" -f /dev/null new-session -d -x 80 -y 24 "env LANG=C.UTF-8 TERM=tmux-256color PS1='ready> ' bash --norc --noprofile"
  expect "ready>" || return
  keys "printf '\\033]2;before\\033\\\\'; bind 'set enable-bracketed-paste off'; stty -a >$scratch/before; clear" Enter
  sleep 0.5
  before=$(modes)
  : >"$scratch/stream"
  tmux -L "$socket" pipe-pane "cat >>$scratch/stream"
  keys "$* --data $data; echo [left with \$?]" Enter
}

pid() { pgrep -f -- "--data $data\$" | tail -n 1; }

runs() { # runs PID: whether it has not ended, whether or not its parent has taken note of that
  case "$(ps -o stat= -p "$1")" in "" | Z*) return 1 ;; esac
}

answer() { # begins a session and answers one question
  expect "The daily drill" && keys Enter && expect "0 answered" && past_cards && keys k && expect "1 answered"
}

as_found() { # as_found CODE: the shell is back, with this exit code, and nothing is left of the program
  expect "[left with $1]" || return
  sleep 0.3
  after=$(modes)
  [ "$before" = "$after" ] || fault "modes before: $before, after: $after"
  rm -f "$scratch/after" "$scratch/after-done"
  keys "stty -a >$scratch/after; touch $scratch/after-done" Enter
  until_there "$scratch/after-done" || return
  diff "$scratch/before" "$scratch/after" || fault "the line discipline changed"
  for mode in 1003 1006 1015 2004 1004 1049; do
    grep -qaF "$(printf '\033')[?${mode}h" "$scratch/stream" || fault "mode $mode was never set: the check sees nothing"
    [ "$(last_of "$mode")" = l ] || fault "mode $mode was left on"
  done
  screen | grep -qE '^ +at |Unhandled exception|Exception:' && { fault "a stack trace is on the screen"; screen; }
}

kept() { # kept COUNT: that many answers are in the data
  count=$($program data export --data "$data" | grep -c '"kind":"attempt"')
  [ "$count" -eq "$1" ] || fault "$count answers in the data, $1 given"
}

end() {
  tmux -L "$socket" kill-server 2>/dev/null
  echo "done: $name"
}

begin "q" "$program"
answer
keys Escape
sleep 0.3
keys Escape
expect "Go on"
keys q
as_found 0
kept 1
end

begin "Ctrl+C" "$program"
answer
keys C-c
as_found 0
kept 1
end

for signal in HUP:129 INT:130 QUIT:131 TERM:143; do
  begin "SIG${signal%:*}" "$program"
  answer
  kill "-${signal%:*}" "$(pid)"
  as_found "${signal#*:}"
  kept 1
  end
done

# Each way to stop a program, and back by fg; the ways that it can hear leave the terminal to the shell in the meantime.
for way in "Ctrl+Z" TSTP STOP; do
  begin "$way and fg" "$program"
  answer
  at_work=$(screen | sed '1d')
  for turn in 1 2 3; do
    if [ "$way" = "Ctrl+Z" ]; then keys C-z; else kill "-$way" "$(pid)"; fi
    expect "Stopped"
    if [ "$way" != STOP ]; then
      stopped=$(modes)
      [ "$before" = "$stopped" ] || fault "modes before: $before, while stopped: $stopped"
      [ "$(last_of 1004)" = l ] || fault "focus reports were left on while stopped"
    fi
    keys "clear; echo in the shell $turn" Enter
    expect "in the shell $turn"
    keys "fg; echo [left with \$?]" Enter
    expect "1 answered"
    at_work_again "$at_work"
  done
  keys Enter
  past_cards
  keys k
  expect "2 answered"
  keys C-c
  as_found 0
  kept 2
  end
done

begin "SIGCONT without a stop" "$program"
answer
at_work=$(screen | sed '1d')
kill -CONT "$(pid)"
sleep 0.3
at_work_again "$at_work"
keys C-c
as_found 0
kept 1
end

# Started where SIGHUP is ignored (nohup), it can know by the terminal alone.
for hangup in "" "trap '' HUP; "; do
  begin "the terminal goes away${hangup:+, SIGHUP ignored}" "$hangup$program"
  answer
  gone=$(pid)
  tmux -L "$socket" kill-server
  for _ in $(seq 8); do runs "$gone" || break; sleep 0.1; done
  runs "$gone" && fault "it still runs without a terminal" && kill -9 "$gone"
  [ -s "$data/session.json" ] || fault "the session was not put down"
  kept 1
  end
done

begin "the data folder goes away" "$program"
answer
mv "$data" "$data-away"
keys Enter
past_cards
keys k
expect "2 answered"
keys C-c
as_found 0
rm -rf "$data"
mv "$data-away" "$data"
kept 2
$program data check --data "$data" >/dev/null || fault "the data does not check"
end

for way in "k:key" "d:drawing" "t:tick" "p:posted" "o:other thread"; do
  begin "a failure: ${way#*:}" "$failing"
  expect "Waiting to fail."
  keys "${way%:*}"
  as_found 1
  screen | grep -q "everything answered so far is kept" || fault "nothing says that answers are kept"
  grep -q "made to fail: ${way#*:}" "$data/failure.txt" || fault "the report does not say what failed"
  end
done

echo "$faults faults"
[ "$faults" -eq 0 ]
