#!/usr/bin/env bash
# Drives the built program in a real terminal of 80x24 through one whole short session, and checks what stands on the screen and what
# is in the data afterwards. Needs tmux. Usage: session.sh [PROGRAM], by default the debug build.
set -u
cd "$(dirname "$0")/../.."
program=${1:-"dotnet src/Clampwise/bin/Debug/net10.0/clampwise.dll"}
data=$(mktemp -d)
runs=0
faults=0
. tests/outside/terminal.bash
trap 'tmux -L "$socket" kill-server 2>/dev/null; rm -rf "$data"' EXIT

fault() { faults=$((faults + 1)); echo "FAULT: $1"; screen; }

start() { # a server of its own each time: one that is shutting down still answers
  runs=$((runs + 1))
  socket=clampwise-$$-$runs
  tmux -L "$socket" -f /dev/null new-session -d -x 80 -y 24 \
    "env LANG=C.UTF-8 TERM=tmux-256color $program --data $data $*; echo [left with \$?]; sleep 600"
}

give_up() { # past the cards, says that the answer is not known, whether it would be picked or typed
  past_cards
  case $(screen) in
    *"Name: "*) keys F7 ;;
    *) keys k ;;
  esac
}

attempts() { $program data export --data "$data" | grep -c '"kind":"attempt"'; }

# The first start: a clamp is picked and heard, three questions, the cautions.
start --minutes 1
expect "How many strings does your clamp hold?"
keys Down
expect "standard + 2-5@2"
keys Up
expect "standard + 3-5@2"
keys Enter
expect "Every voicing has two names."
keys Enter
expect "0 answered"
for answered in 1 2 3; do
  give_up
  expect "$answered answered"
  keys Enter
done
expect "3 asked"
keys Enter
expect "Before you practise, once:"
keys Enter
expect "The daily drill"
keys q
expect "[left with 0]"
tmux -L "$socket" kill-server
[ "$(attempts)" -eq 3 ] || fault "$(attempts) answers of the welcome in the data"

# Never shown again; a whole short session.
start --minutes 2
expect "The daily drill"
expect "standard + 3-5@2"
keys Enter
expect "0 answered"
give_up
expect "1 answered"
expect "Grade:"
keys p
expect "The clock stands at"
keys Enter
for _ in $(seq 200); do
  now=$(screen)
  case $now in
    *"Enter next"*) keys Enter ;;
    *": done"*) break ;;
    *) give_up ;;
  esac
  sleep 0.3
done
expect "on the next practice day."
asked=$(screen | grep -oE '[0-9]+ asked' | grep -oE '[0-9]+')
keys Enter
expect "The daily drill"
keys q
expect "[left with 0]"
tmux -L "$socket" kill-server

# The log is the truth: one line for every answer.
logged=$(attempts)
[ "${asked:-0}" -ge 3 ] || fault "only ${asked:-0} questions were asked"
[ "$logged" -eq $((asked + 3)) ] || fault "$asked answered on the screen, $logged with the three of the welcome in the data"
$program data check --data "$data" || fault "the data does not check"

# Killed in the middle of a session: what was answered is there at the next start.
start --minutes 5
expect "The daily drill"
keys Enter
expect "0 answered"
give_up
expect "1 answered"
pkill -KILL -f -- "--data $data"
sleep 0.5
tmux -L "$socket" kill-server 2>/dev/null
after=$(attempts)
[ "$after" -eq $((logged + 1)) ] || fault "$((logged + 1)) answers before the kill, $after after it"

echo "$faults faults"
[ "$faults" -eq 0 ]
