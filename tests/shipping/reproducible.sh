#!/usr/bin/env bash
# Builds the service twice from copies of one folder, in the same place, and compares every file byte for byte.
#   tests/shipping/reproducible.sh
# The last result is in docs/quality-bar.md (S9).
set -euo pipefail
root=$(cd "$(dirname "$0")/../.." && pwd)
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
export CI=true DOTNET_CLI_TELEMETRY_OPTOUT=1 DOTNET_NOLOGO=1 MSBUILDDISABLENODEREUSE=1
for turn in first second; do
  mkdir -p "$work/source/openapi"
  (cd "$root" && git ls-files src openapi/examples | tar -cf - -T -) | tar -xf - -C "$work/source"
  dotnet publish "$work/source/src/LayoutService.Api/LayoutService.Api.csproj" --configuration Release --output "$work/$turn" -v q --nologo
  rm -rf "$work/source"
done
diff -r "$work/first" "$work/second"
(cd "$work/first" && find . -type f | sort | xargs sha256sum | sha256sum)
echo "$(find "$work/first" -type f | wc -l) files, the same bytes both times, $(du -sm "$work/first" | cut -f1) MB"
