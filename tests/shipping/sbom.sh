#!/usr/bin/env bash
# Writes what the service is made of (CycloneDX, JSON) from its locked packages, and tells how many there are.
#   tests/shipping/sbom.sh [file]
# Installs the tool CycloneDX 6.3.1 into a folder of its own.
set -euo pipefail
# the tools look for .NET where it was found
export DOTNET_ROOT=${DOTNET_ROOT:-$(dirname "$(readlink -f "$(command -v dotnet)")")}
root=$(cd "$(dirname "$0")/../.." && pwd)
file=${1:-layout-service.sbom.json}
tools=$(mktemp -d)
trap 'rm -rf "$tools"' EXIT
dotnet tool install CycloneDX --version 6.3.1 --tool-path "$tools" >/dev/null
dotnet restore "$root/src/LayoutService.Api/LayoutService.Api.csproj" --locked-mode -v q --nologo
"$tools/dotnet-CycloneDX" "$root/src/LayoutService.Api/LayoutService.Api.csproj" --output-format Json --recursive --disable-package-restore \
  --output "$(dirname "$(realpath "$file")")" --filename "$(basename "$file")" >/dev/null
python3 - "$file" <<'PY'
import json, sys
parts = json.load(open(sys.argv[1]))["components"]
print(f"{len(parts)} packages")
if not parts:
    sys.exit("no packages found")
for part in sorted(parts, key=lambda p: p["name"].lower()):
    licences = [l.get("license", {}).get("id") or l.get("expression") or l.get("license", {}).get("name", "?") for l in part.get("licenses", [])]
    print(part["name"], part["version"], *licences)
PY
