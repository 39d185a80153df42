#!/usr/bin/env bash
# Mutation testing by sample, with dotnet-stryker 5.1.0: draws lines of code by lot and makes each small change that it knows on them, one at a
# time; says how many the tests notice.
#   tests/mutation/sample.sh engine [lines, 200] [seed, 1]      lines of src/LayoutService.Engine, by the engine's tests that take under five seconds a class
#   tests/mutation/sample.sh rules  [lines, 120] [seed, 1]      lines of the validators of src/LayoutService.Api, by the tests of faults, limits and rules over HTTP
# Ends with 1 when fewer than STRYKER_BREAK percent (60 when not given) are noticed. The last figures are in docs/measured/mutation.md.
set -euo pipefail
# the tools look for .NET where it was found
export DOTNET_ROOT=${DOTNET_ROOT:-$(dirname "$(readlink -f "$(command -v dotnet)")")}
root=$(cd "$(dirname "$0")/../.." && pwd)
side=${1:?engine or rules}
seed=${3:-1}
tools=${STRYKER_TOOLS:-$(mktemp -d)}
[ -x "$tools/dotnet-stryker" ] || dotnet tool install dotnet-stryker --version 5.1.0 --tool-path "$tools" >/dev/null
case $side in
  engine) lines=${2:-200} tests=LayoutService.Engine.Tests project=LayoutService.Engine.csproj where=src/LayoutService.Engine
    filter='FullyQualifiedName!~Drawing&FullyQualifiedName!~Optimum&FullyQualifiedName!~BarCutterTests&FullyQualifiedName!~Architecture' ;;
  rules) lines=${2:-120} tests=LayoutService.Api.Tests project=LayoutService.Api.csproj where='src/LayoutService.Api/*/Validation'
    filter='FullyQualifiedName~RuleTests|FullyQualifiedName~PointerTests|FullyQualifiedName~HostileBody|FullyQualifiedName~LimitPairTests|FullyQualifiedName~LimitTests' ;;
esac
# line ends of the drawn lines as spans of characters, as stryker wants them
mutate=$(cd "$root" && python3 - "$lines" "$seed" $where <<'PY'
import pathlib, random, re, sys
count, dice = int(sys.argv[1]), random.Random(int(sys.argv[2]))
found = []
for folder in sys.argv[3:]:
    for path in sorted(pathlib.Path().glob(folder + '/**/*.cs')):
        if {'bin', 'obj'} & set(path.parts):
            continue
        at = 0
        for line in path.read_text(encoding='utf-8-sig').splitlines(keepends=True):
            code = line.split('//')[0].strip()
            if re.search(r'[<>=+\-*/&|!?]|return|\d', code) and not code.startswith(('using', 'namespace', '[', '#')):
                found.append((str(path), at, at + len(line)))
            at += len(line)
print(','.join(f'"**/{p.split("/", 2)[2]}{{{a}..{b}}}"' for p, a, b in sorted(dice.sample(found, min(count, len(found))))))
PY
)
cd "$root/tests/$tests"
trap 'rm -f stryker-config.json' EXIT
cat > stryker-config.json <<CONFIG
{"stryker-config":{"project":"$project","mutate":[$mutate],"coverage-analysis":"off","configuration":"Release","test-case-filter":"$filter",
 "concurrency":${STRYKER_CONCURRENCY:-2},"reporters":["cleartext","json"],"thresholds":{"high":80,"low":${STRYKER_BREAK:-60},"break":${STRYKER_BREAK:-60}}}}
CONFIG
"$tools/dotnet-stryker" --output "${STRYKER_OUTPUT:-$(mktemp -d)}"
