#!/usr/bin/env bash
# Standard input, output and error as a caller may leave them: closed, full, gone, without end. No case may end by a signal or print a
# stack trace; each has an exit code of ours. Usage: streams.sh [program...]
set -u
cd "$(dirname "$0")/../.."
if [ $# -gt 0 ]; then program=("$@"); else program=(dotnet src/Clampwise/bin/Debug/net10.0/clampwise.dll); fi
folder=$(mktemp -d)
trap 'rm -rf "$folder"' EXIT
data="$folder/data"
failed=0
cw() { timeout 60 "${program[@]}" "$@"; }
check() { # check NAME EXPECTED-CODE FOUND-CODE
  if [ "$2" -ne "$3" ] || grep -q '^   at \|Unhandled' "$folder"/err "$folder"/out 2>/dev/null; then
    failed=$((failed + 1))
    echo "FAILED $1: expected $2, found $3"
    head -n 3 "$folder"/err
  fi
}

: >"$folder/err"
cw name 2-4@2 x04600 0<&- >"$folder/out" 2>"$folder/err"; check "closed input" 0 $?
cw name 2-4@2 x04600 1>&- 2>"$folder/err"; check "closed output" 0 $?
cw name 2-4@2 x 2>&- >"$folder/out"; check "closed error" 2 $?
cw name 2-4@2 x04600 0<&- 1>&- 2>&-; check "all closed" 0 $?
cw quiz --plain --questions 2 --seed 1 --data "$data" 0<&- >"$folder/out" 2>"$folder/err"; check "a session on a closed input" 0 $?
cw data export --data "$data" 2>"$folder/err" | grep -c attempt >"$folder/out"
[ "$(cat "$folder/out")" = 0 ] || { failed=$((failed + 1)); echo "FAILED: a closed input gave answers"; }
if [ -e /dev/full ]; then
  cw name 2-4@2 x04600 >/dev/full 2>"$folder/err"; check "full output" 1 $?
  cw name 2-4@2 x04600 --json >/dev/full 2>"$folder/err"; check "full output, JSON" 1 $?
  cw name 2-4@2 x 2>/dev/full >"$folder/out"; check "full error" 2 $?
  cw name 2-4@2 x >/dev/full 2>/dev/full; check "both full" 2 $?
fi
for line in "drills" "drills --json" "settings" "doctor" "data export" "progress" "weak" "find 2-4@2 --all --limit 100000" "quiz --plain"; do
  words=($line)
  case "$line" in find*) where=() ;; *) where=(--data "$data") ;; esac
  # Endings that head leaves are looked at, not its own.
  (cw "${words[@]}" ${where[@]+"${where[@]}"} </dev/null 2>"$folder/err"; echo $? >"$folder/code") | head -n 1 >"$folder/out"
  code=$(cat "$folder/code")
  [ "$line" = doctor ] && [ "$code" = 1 ] && code=0
  check "$line | head" 0 "$code"
done
head -c 300000 /dev/zero | tr '\0' x | cw name 2-4@2 - >"$folder/out" 2>"$folder/err"; check "a line without end" 2 "${PIPESTATUS[2]}"
yes | cw quiz --plain --questions 2 --seed 1 --data "$data" >"$folder/out" 2>"$folder/err"; check "a paste without end" 0 "${PIPESTATUS[1]}"
for term in ../../etc/passwd /etc/passwd .. x/y; do
  TERM="$term" cw name 2-4@2 x04600 >"$folder/out" 2>"$folder/err"; check "TERM=$term" 0 $?
  grep -q "no name of a terminal" "$folder/err" || { failed=$((failed + 1)); echo "FAILED: TERM=$term is not said"; }
done
echo "streams: $failed failed"
[ "$failed" -eq 0 ]
