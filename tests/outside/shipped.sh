#!/usr/bin/env bash
# The shipped build: publishes it, drives it through a short session, and installs the dotnet tool from a local folder.
set -u
cd "$(dirname "$0")/../.."
scratch=$(mktemp -d)
trap 'rm -rf "$scratch"' EXIT
bash .ci/publish >"$scratch/publish.log" 2>&1 || { tail -n 30 "$scratch/publish.log"; exit 1; }
bash tests/outside/session.sh "$PWD/artifacts/publish/clampwise" || exit 1
bash tests/outside/plain.sh "$PWD/artifacts/publish/clampwise" || exit 1
dotnet pack src/Clampwise -c Release -o "$scratch/packages" -v quiet || exit 1
dotnet tool install Clampwise --tool-path "$scratch/tool" --add-source "$scratch/packages" --no-cache >/dev/null || exit 1
[ "$("$scratch/tool/clampwise" --version)" = "$(artifacts/publish/clampwise --version)" ] || { echo "the versions differ"; exit 1; }
[ "$("$scratch/tool/clampwise" name 2-4@2 x04600)" = "$(artifacts/publish/clampwise name 2-4@2 x04600)" ] || { echo "the names differ"; exit 1; }
echo "the shipped build and the tool work"
