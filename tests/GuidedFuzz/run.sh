#!/usr/bin/env bash
# Coverage-guided byte fuzzing of what a caller may send, with SharpFuzz 2.3.0: builds the fuzzer, has LayoutService.Api.dll (reading, checking,
# answering) count the branches that it takes, and hunts. Ends with 1 when a body made the service fail, and prints such bodies.
#   tests/GuidedFuzz/run.sh [seconds, 600 when not given] [seed, 1]
# The last figures are in docs/measured/fuzz.md.
set -euo pipefail
# the tools look for .NET where it was found
export DOTNET_ROOT=${DOTNET_ROOT:-$(dirname "$(readlink -f "$(command -v dotnet)")")}
root=$(cd "$(dirname "$0")/../.." && pwd)
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
dotnet tool install SharpFuzz.CommandLine --version 2.3.0 --tool-path "$work/tools" >/dev/null
dotnet build "$root/tests/GuidedFuzz" -c Release -o "$work/bin" --nologo -v q
DOTNET_ROLL_FORWARD=Major "$work/tools/sharpfuzz" "$work/bin/LayoutService.Api.dll"
cd "$work/bin"
dotnet LayoutService.GuidedFuzz.dll "${1:-600}" "${2:-1}" "$root/openapi/examples"
