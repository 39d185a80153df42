#!/usr/bin/env bash
# Makes a client in C# from the served contract with Kiota 1.38.0, compiles it with warnings as errors, and calls a running service with it:
#   tests/contract/csharp.sh http://127.0.0.1:8080
set -euo pipefail
# the tools look for .NET where it was found
export DOTNET_ROOT=${DOTNET_ROOT:-$(dirname "$(readlink -f "$(command -v dotnet)")")}
base=${1:?address of a running service}
here=$(cd "$(dirname "$0")" && pwd)
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
export KIOTA_TUTORIAL_ENABLED=false KIOTA_OFFLINE_ENABLED=true DOTNET_CLI_TELEMETRY_OPTOUT=1
cd "$work"
dotnet tool install Microsoft.OpenApi.Kiota --version 1.38.0 --tool-path tools >/dev/null
curl -sSf "$base/openapi/v1.json" -o contract.json
tools/kiota generate --language CSharp --openapi contract.json --class-name LayoutClient --namespace-name LayoutService.Client --output client --exclude-backward-compatible --log-level Error
cp "$here/csharp/Caller.cs" .
cp "$here/csharp/Caller.csproj.txt" Caller.csproj
rm -rf tools
dotnet build Caller.csproj -c Release -o built --nologo -v q
dotnet built/Caller.dll "$base"
