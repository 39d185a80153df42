#!/usr/bin/env bash
# Looks at the contract with programs of the npm registry, and calls a running service with a client made from it:
#   tests/contract/check.sh http://127.0.0.1:8080 [folder for what is installed]
# Needs node and npm. Ends with 1 at the first check that fails. The last result is in docs/quality-bar.md.
set -euo pipefail
base=${1:?address of a running service}
here=$(cd "$(dirname "$0")" && pwd)
work=${2:-$(mktemp -d)}
mkdir -p "$work"
cp "$here"/*.json "$here"/*.yaml "$here"/*.mjs "$here"/*.ts "$work"
cd "$work"
[ -d node_modules ] || npm ci --no-audit --no-fund --ignore-scripts --loglevel=error
curl -sSf "$base/openapi/v1.json" -o contract.json
echo "-- the served contract is the committed one"
cmp contract.json "$here/../../openapi/layout-service.v1.json"
echo "-- redocly, recommended-strict"
npx redocly lint contract.json --config redocly.yaml --format=summary 2>/dev/null
curl -sSf "$base/openapi/v1-3.2.json" -o contract-3.2.json
npx redocly lint contract-3.2.json --config redocly.yaml --format=summary 2>/dev/null
echo "-- spectral, all rules and OWASP, from hint on"
npx spectral lint contract.json --ruleset spectral.yaml --fail-severity=hint
echo "-- openapi-schema-validator, ajv: schemas, examples, served answers"
node schemas.mjs "$base" "$here/../../openapi/examples"
echo "-- a TypeScript client, compiled strictly and run"
npx openapi-typescript contract.json --default-non-nullable=false -o contract.d.ts >/dev/null
npx tsc --project tsconfig.json
node built/client.js "$base"
echo "-- a client of another generator, compiled strictly and run"
npx openapi-ts --input contract.json --output generated --client @hey-api/client-fetch >/dev/null
npx tsc --project tsconfig.generated.json
echo '{"type":"commonjs"}' > built-generated/package.json
node built-generated/generated-client.js "$base"
echo "-- work flows"
npx redocly respect workflows.yaml --server layout="$base"
echo "all checks passed"
