#!/usr/bin/env bash
# Mutation testing of parts of the engine and of the validators with dotnet-stryker 5.1.0:
#   tests/mutation/run.sh engine 'Measures/*.cs'           parts of src/LayoutService.Engine, by the engine's tests
#   tests/mutation/run.sh api 'Plans/Validation/*.cs'      parts of src/LayoutService.Api, by the tests over HTTP
# Whole runs take hours; the last figures are in docs/quality-bar.md (T4).
set -euo pipefail
root=$(cd "$(dirname "$0")/../.." && pwd)
side=${1:?engine or api}
parts=${2:?which files, as a pattern}
tools=${STRYKER_TOOLS:-$(mktemp -d)}
[ -x "$tools/dotnet-stryker" ] || dotnet tool install dotnet-stryker --version 5.1.0 --tool-path "$tools" >/dev/null
case $side in
  engine) tests=LayoutService.Engine.Tests project=LayoutService.Engine.csproj ;;
  api) tests=LayoutService.Api.Tests project=LayoutService.Api.csproj ;;
esac
cd "$root/tests/$tests"
"$tools/dotnet-stryker" --project "$project" --mutate "**/$parts" --configuration Release --concurrency "${STRYKER_CONCURRENCY:-2}" \
  --reporter cleartext --reporter json --break-at "${STRYKER_BREAK:-0}" --output "${STRYKER_OUTPUT:-$(mktemp -d)}" "${@:3}"
