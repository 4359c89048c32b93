#!/bin/sh
# Kills the program's store at random moments, a thousand times unless told otherwise, and checks after each time that nothing is lost.
set -e
cd "$(dirname "$0")/.."
CLAMPWISE_KILLS="${1:-1000}" dotnet test tests/Clampwise.Storage.Tests --filter "FullyQualifiedName~SuddenEndTests"
