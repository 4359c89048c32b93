#!/usr/bin/env bash
# The shipped build: publishes it, drives it through a short session, every ending and every kind of terminal; compares what it makes of
# a year of practice with what the debug build makes of it; installs the dotnet tool from a local folder.
set -u
cd "$(dirname "$0")/../.."
scratch=$(mktemp -d)
trap 'rm -rf "$scratch"' EXIT
bash .ci/publish >"$scratch/publish.log" 2>&1 || { tail -n 30 "$scratch/publish.log"; exit 1; }
bash tests/outside/session.sh "$PWD/artifacts/publish/clampwise" || exit 1
for script in plain sound endings terminals; do
  bash "tests/outside/$script.sh" "$PWD/artifacts/publish/clampwise" || exit 1
done

# The database is written by hand-made documents, since the library's own mapper does not survive native code: what the shipped build
# writes, the debug build reads, and the other way round.
harness=tests/Clampwise.Storage.Harness/bin/Debug/net10.0/Clampwise.Storage.Harness.dll
shipped=artifacts/publish/clampwise
debug="dotnet src/Clampwise/bin/Debug/net10.0/clampwise.dll"
dotnet "$harness" year "$scratch/year" || exit 1
for command in progress "weak --json" "data export"; do
  $shipped data rebuild --data "$scratch/year" >/dev/null || exit 1
  $debug $command --data "$scratch/year" >"$scratch/of-shipped" || exit 1
  $debug data rebuild --data "$scratch/year" >/dev/null || exit 1
  $shipped $command --data "$scratch/year" >"$scratch/of-debug" || exit 1
  [ -s "$scratch/of-debug" ] && cmp "$scratch/of-shipped" "$scratch/of-debug" || { echo "'$command' differs"; exit 1; }
done
$shipped data check --data "$scratch/year" || exit 1

dotnet pack src/Clampwise -c Release -o "$scratch/packages" -v quiet || exit 1
dotnet tool install Clampwise --tool-path "$scratch/tool" --add-source "$scratch/packages" --no-cache >/dev/null || exit 1
[ "$("$scratch/tool/clampwise" --version)" = "$(artifacts/publish/clampwise --version)" ] || { echo "the versions differ"; exit 1; }
[ "$("$scratch/tool/clampwise" name 2-4@2 x04600)" = "$(artifacts/publish/clampwise name 2-4@2 x04600)" ] || { echo "the names differ"; exit 1; }
echo "the shipped build and the tool work"
