#!/usr/bin/env bash
# Scripted plain sessions through real pipes on a scratch data folder: drill, quiz and explore, checked by what the data holds
# afterwards. Usage: plain.sh [PROGRAM], by default the debug build.
set -u
cd "$(dirname "$0")/../.."
program=${1:-"dotnet src/Clampwise/bin/Debug/net10.0/clampwise.dll"}
scratch=$(mktemp -d)
trap 'rm -rf "$scratch"' EXIT
faults=0
said=$scratch/said
errors=$scratch/errors

fault() { faults=$((faults + 1)); echo "FAULT: $1"; [ -s "$said" ] && tail -n 25 "$said"; [ -s "$errors" ] && cat "$errors"; }

talk() { # talk DATA LINES ARGUMENTS...: lines to standard input, \n between them; what is said stays in $said
  local data=$1 lines=$2
  # Empty lines go on from the cards at the start; at a question it is said once more.
  case "${3-}" in explore) ;; *) lines="\\n\\n\\n\\n$lines" ;; esac
  shift 2
  printf '%b' "$lines" | $program "$@" --data "$scratch/$data" >"$said" 2>"$errors"
  code=$?
  grep -qP '[\x00-\x09\x0b-\x1f\x7f]' "$said" && fault "$*: a control character in plain output"
}

left() { [ "$code" -eq "$1" ] || fault "left with $code instead of $1"; }
hears() { grep -qF -- "$1" "$said" && echo "said: $1" || fault "'$1' was not said"; }
silent() { grep -qF -- "$1" "$said" && fault "'$1' was said"; }
entries() { $program data export --data "$scratch/$1" | grep -c "\"kind\":\"$2\""; }
holds() { # holds DATA KIND COUNT
  local found
  found=$(entries "$1" "$2")
  [ "$found" -eq "$3" ] && echo "data: $3 $2" || fault "expected $3 of $2 in the data, found $found"
}

# A drill: wrong, taken back, not known, a grade changed, a skip with its reason, a pause, an end. Piped, it goes line by line by itself.
talk drill 'help\nhint\nXyz\n?\nundo\nskip guitar\n\n\n?\nsteady\nsay\n\npause\n\n\n\n?\n\nend\n' drill --seed 5
left 0
hears "No terminal to draw on: line by line instead, as with --plain."
hears "The daily drill. Type help"
hears "a clamp at fret 2 over strings 3 to 5; strings 1, 2 and 6 free."
hears "expected a chord name, which begins with"
hears "The clock stands at 0:0"
hears "2 asked"
holds drill attempt 3
holds drill withdrawn 1
holds drill skipped 1
holds drill overruled 1
holds drill session-ended 1
$program data export --data "$scratch/drill" | grep -q '"reason":"no-instrument"' || fault "the reason of the skip is not in the data"

# Put down, and taken up again on the same question.
talk later '?\n\nlater\n' drill --plain
left 0
holds later session-ended 0
talk later 'end\n' drill --plain
hears "The daily drill, taken up again."
hears "1 asked"
holds later attempt 1
holds later session-ended 1

# One drill alone bears its title; what was answered stands when the input just ends.
talk one '?\n' drill low-drone --plain
left 0
hears "Low drone: all but string 6 clamped."
holds one attempt 1

# A quiz with a seed: the same lines get the same words, on two machines.
quiz='1\n\n\n2\n\n\nd\n\n\n?\n\n\n?\n\n'
talk quiz1 "$quiz" quiz --plain --questions 4 --seed 7
left 0
hears "4 asked"
silent "No terminal"
cp "$said" "$scratch/first"
talk quiz2 "$quiz" quiz --plain --questions 4 --seed 7
[ "$(grep -v practised "$scratch/first")" = "$(grep -v practised "$said")" ] || fault "one seed, two quizzes: $(diff "$scratch/first" "$said")"
holds quiz1 attempt 4

# What was missed is weak, and can be reviewed.
talk quiz1 'end\n' weak --plain
left 0
hears "Weak shapes."
hears "to come."

# The explorer: step by step, compared, found, kept; twice the same words.
walk='3 fret 4\n4 fret 6\ncompare\n4 fret 2\nmute 9\nfind sounding A top E max-fret 7 limit 3\nnext\ncapo up\ncapo off\n^ 0 0 4 2 0 0\nkeep\nstrings\n'
talk walk1 "$walk" explore 3-5@2 --plain
left 0
hears "Shape name D, sounds E, played ^ 0 0 4 2 0 0, from the nut 006400."
hears "string 4: finger at fret 6, G#3, the third; before: rings, E3, the root"
hears "column 8: string 4 is held by the clamp at 2"
hears "column 6: there is no string 9"
hears "Found 2 of 3: "
hears "Kept in the drill 'kept-standard-3-5-2'"
hears "The end of exploring."
cp "$said" "$scratch/first"
talk walk2 "$walk" explore 3-5@2
hears "No terminal to draw on"
[ "$(cat "$scratch/first")" = "$(tail -n +2 "$said")" ] || fault "the same lines, other words: $(diff "$scratch/first" "$said")"
$program drills kept-standard-3-5-2 --data "$scratch/walk1" | grep -q '^006400 ' || fault "the voicing was not kept"
talk walk1 '?\nend\n' drill kept-standard-3-5-2 --plain
hears "Kept: standard + 3-5@2."
holds walk1 attempt 1

# Bad input and bad surroundings.
talk bad '' explore 3-5@ --plain
left 2
talk bad '' drill nothing --plain
left 2
talk bad ''
left 0
grep -q "go line by line with --plain" "$errors" || fault "the bare command does not say what to use instead"

for data in drill later one quiz1 walk1; do
  $program data check --data "$scratch/$data" >"$said" 2>&1 || fault "the data of $data does not check"
done

echo "$faults faults"
[ "$faults" -eq 0 ]
