#!/usr/bin/env bash
# Mutation testing with dotnet-stryker 5.1.0:
#   tests/mutation/run.sh slice Measures                   a folder of src/LayoutService.Engine that needs no other but Measures, in a
#                                                          copy that has nothing else, by the tests of the same folder: minutes
#   tests/mutation/run.sh engine 'Measures/*.cs'           parts of src/LayoutService.Engine, by all of the engine's tests: hours
#   tests/mutation/run.sh api 'Plans/Validation/*.cs'      parts of src/LayoutService.Api, by the tests over HTTP: hours
# Further words go to stryker. The last figures are in docs/measured/mutation.md.
set -euo pipefail
# the tools look for .NET where it was found
export DOTNET_ROOT=${DOTNET_ROOT:-$(dirname "$(readlink -f "$(command -v dotnet)")")}
root=$(cd "$(dirname "$0")/../.." && pwd)
side=${1:?slice, engine or api}
parts=${2:?a folder for slice, else which files, as a pattern}
tools=${STRYKER_TOOLS:-$(mktemp -d)}
[ -x "$tools/dotnet-stryker" ] || dotnet tool install dotnet-stryker --version 5.1.0 --tool-path "$tools" >/dev/null
case $side in
  slice|engine) tests=LayoutService.Engine.Tests project=LayoutService.Engine.csproj ;;
  api) tests=LayoutService.Api.Tests project=LayoutService.Api.csproj ;;
esac
if [ "$side" = slice ]; then
  copy=$(mktemp -d)
  mkdir -p "$copy/src/LayoutService.Engine" "$copy/tests/$tests"
  touch "$copy/LayoutService.sln"
  cp "$root"/src/Directory.*.props "$copy/src/"
  cp "$root"/tests/Directory.*.props "$copy/tests/"
  cp "$root"/.editorconfig "$copy/" 2>/dev/null || true
  cp "$root/src/LayoutService.Engine/$project" "$copy/src/LayoutService.Engine/"
  grep -v 'LayoutService.Drawing' "$root/tests/$tests/$tests.csproj" > "$copy/tests/$tests/$tests.csproj"
  for folder in $(printf '%s\n' Measures "$parts" | sort -u); do
    cp -r "$root/src/LayoutService.Engine/$folder" "$copy/src/LayoutService.Engine/"
  done
  cp -r "$root/tests/$tests/$parts" "$copy/tests/$tests/"
  # a test that needs the rest of the engine stays behind; what it alone looks at is named in STRYKER_EXCEPT
  find "$copy/tests" -name '*.cs' | while read -r file; do
    if grep -E "using LayoutService\.Engine\." "$file" | grep -qvE "LayoutService\.Engine\.(Measures|$parts);"; then rm "$file"; fi
  done
  root=$copy
  parts="$parts/**/*.cs"
fi
cd "$root/tests/$tests"
cat > stryker-config.json <<CONFIG
{"stryker-config":{"project":"$project","mutate":["**/$parts"${STRYKER_EXCEPT:+,\"!**/$STRYKER_EXCEPT\"}],"coverage-analysis":"off","configuration":"Release",
 "concurrency":${STRYKER_CONCURRENCY:-2},"reporters":["cleartext","json"],"thresholds":{"high":80,"low":60,"break":${STRYKER_BREAK:-0}}}}
CONFIG
trap 'rm -f stryker-config.json' EXIT
"$tools/dotnet-stryker" --output "${STRYKER_OUTPUT:-$(mktemp -d)}" "${@:3}"
