#!/usr/bin/env bash
# The program in terminals of many kinds: none at all, a dumb one, without colour, with sixteen and with all colours, without UTF-8, in
# sizes from 20x5, and resized in the middle of a question. Looks at the raw stream that it sends. Needs tmux.
# Usage: terminals.sh [PROGRAM], by default the debug build.
set -u
cd "$(dirname "$0")/../.."
program=${1:-"dotnet src/Clampwise/bin/Debug/net10.0/clampwise.dll"}
scratch=$(mktemp -d)
runs=0
faults=0
. tests/outside/terminal.bash
trap 'tmux -L "$socket" kill-server 2>/dev/null; rm -rf "$scratch"' EXIT
esc=$(printf '\033')
any_colour="$esc\\[([0-9]+;)*(3[0-7]|4[0-7]|9[0-7]|10[0-7]|[34]8)[;m]"
true_colour="$esc\\[([0-9]+;)*[34]8;2;"

fault() { faults=$((faults + 1)); echo "FAULT: $name: $1"; }
has() { LC_ALL=C grep -qaE "$1" "$scratch/stream"; }

start() { # start NAME COLUMNS ROWS ENVIRONMENT...: the program in such a terminal, what it sends in the stream
  name=$1
  columns=$2
  rows=$3
  shift 3
  runs=$((runs + 1))
  socket=clampwise-terminals-$$-$runs
  mkdir -p "$scratch/data-$runs"
  [ -e "$scratch/data-$runs/settings.toml" ] || printf '[screen]\nwelcome = false\n' >"$scratch/data-$runs/settings.toml"
  tmux -L "$socket" -f /dev/null new-session -d -x "$columns" -y "$rows" \
    "read -r; env -u COLORTERM -u NO_COLOR -u LC_ALL LANG=C.UTF-8 $* $program --data $scratch/data-$runs; echo [left with \$?]; sleep 600"
  : >"$scratch/stream"
  tmux -L "$socket" pipe-pane "cat >>$scratch/stream"
  sleep 0.3
  keys Enter
}

end() {
  tmux -L "$socket" kill-server
  echo "done: $name"
}

# Through a question, a wrong answer, help and the settings, so that every tone is sent.
walk() {
  expect "The daily drill" && keys Enter
  expect "0 answered" && past_cards && keys k
  expect "Grade:" && keys F1
  expect "help: the daily drill" && keys Escape
  expect "Grade:"
}

name="no terminal"
$program </dev/null >"$scratch/stream" 2>&1
code=$?
[ "$code" -eq 0 ] || fault "it ends with $code"
has "$esc" && fault "it sends escape sequences"
grep -q "drill" "$scratch/stream" || fault "it does not say what can be done"
echo "done: $name"

start "TERM=dumb" 80 24 TERM=dumb
expect "The screens need a terminal to draw on"
expect "[left with 0]"
has "$esc" && fault "it sends escape sequences"
end

start "NO_COLOR" 80 24 TERM=tmux-256color COLORTERM=truecolor NO_COLOR=1
walk
has "$any_colour" && fault "it sends colours"
has "$esc\\[([0-9;]*;)?[1-7]m" || fault "it sends no bold, underline or reverse either"
end

start "all colours" 80 24 TERM=tmux-256color COLORTERM=truecolor
walk
has "$true_colour" || fault "it sends no true colour"
end

# The usual theme is legible on any ground, which none of the sixteen colours is: there it shows none.
start "sixteen colours, usual theme" 80 24 TERM=xterm
walk
has "$any_colour" && fault "it sends colours"
end

mkdir "$scratch/data-$((runs + 1))"
printf '[screen]\nwelcome = false\ntheme = "dark"\n' >"$scratch/data-$((runs + 1))/settings.toml"
start "sixteen colours, dark theme" 80 24 TERM=xterm
walk
has "$true_colour" && fault "it sends true colour"
has "$any_colour" || fault "it sends no colour"
end

start "LC_ALL=C" 80 24 TERM=tmux-256color LC_ALL=C
walk
LC_ALL=C grep -qa '[^ -~[:cntrl:]]' "$scratch/stream" && fault "it sends more than ASCII"
end

for size in 20x5 40x10 59x19; do
  start "$size" "${size%x*}" "${size#*x}" TERM=tmux-256color
  expect "too small"
  tmux -L "$socket" resize-window -x 60 -y 20
  expect "The daily drill"
  keys q
  expect "[left with 0]"
  end
done

start "resized in a question" 80 24 TERM=tmux-256color
expect "The daily drill" && keys Enter
expect "0 answered" && past_cards && keys t D s u
expect "Name: Dsu_"
for size in 60x20 20x5 200x60 61x21 120x40 80x24; do
  tmux -L "$socket" resize-window -x "${size%x*}" -y "${size#*x}"
  if [ "$size" = 20x5 ]; then expect "too small"; else expect "Name: Dsu_"; fi
done
keys s 2 Enter
expect "1 answered"
end

echo "$faults faults"
[ "$faults" -eq 0 ]
