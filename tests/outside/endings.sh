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
socket=
faults=0
trap 'tmux -L "$socket" kill-server 2>/dev/null; rm -rf "$scratch"' EXIT

keys() { tmux -L "$socket" send-keys "$@"; }
screen() { tmux -L "$socket" capture-pane -p; }
fault() { faults=$((faults + 1)); echo "FAULT: $name: $1"; }

expect() { # expect TEXT: waits until it stands on the screen
  for _ in $(seq 150); do
    screen | grep -qF -- "$1" && return 0
    sleep 0.1
  done
  fault "'$1' did not come"
  screen
  return 1
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

answer() { # begins a session and answers one question
  expect "The daily drill" && keys Enter && expect "0 answered" && keys k && expect "1 answered"
}

as_found() { # as_found CODE: the shell is back, with this exit code, and nothing is left of the program
  expect "[left with $1]" || return
  sleep 0.3
  after=$(modes)
  [ "$before" = "$after" ] || fault "modes before: $before, after: $after"
  keys "stty -a >$scratch/after" Enter
  sleep 0.4
  diff "$scratch/before" "$scratch/after" || fault "the line discipline changed"
  for mode in 1003 1006 2004 1004 1049; do
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

begin "Ctrl+Z and fg" "$program"
answer
at_work=$(screen | sed '1d')
keys C-z
expect "Stopped"
stopped=$(modes)
[ "$before" = "$stopped" ] || fault "modes before: $before, while stopped: $stopped"
[ "$(last_of 1004)" = l ] || fault "focus reports were left on while stopped"
keys "echo in the shell" Enter
expect "in the shell"
keys "fg; echo [left with \$?]" Enter
expect "1 answered"
sleep 0.5
[ "$at_work" = "$(screen | sed '1d')" ] || { fault "the screen is another one after fg"; screen; }
[ "$(modes | cut -d' ' -f1,3)" = "1 1" ] || fault "after fg the terminal is not the program's: $(modes)"
keys Enter
sleep 0.3
keys k
expect "2 answered"
keys C-c
as_found 0
kept 2
end

begin "the terminal goes away" "$program"
answer
gone=$(pid)
tmux -L "$socket" kill-server
for _ in $(seq 50); do kill -0 "$gone" 2>/dev/null || break; sleep 0.1; done
kill -0 "$gone" 2>/dev/null && fault "it still runs without a terminal"
kept 1
end

begin "the data folder goes away" "$program"
answer
mv "$data" "$data-away"
keys Enter
sleep 0.5
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
