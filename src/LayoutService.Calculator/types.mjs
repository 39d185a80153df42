// Writes the types of one plan's request, answer and problem from a contract: node types.mjs [contract] [file]
import { readFileSync, writeFileSync } from 'node:fs';
import openapiTS, { astToString } from 'openapi-typescript';

const [contract = '../../openapi/layout-service.v1.json', file = 'source/contract.d.ts'] = process.argv.slice(2);
const whole = JSON.parse(readFileSync(contract, 'utf8'));

// only what a plan's request, answer and problem are made of
const kept = {};
const wanted = ['PlanRequest', 'PlanAnswer', 'Problem'];
for (let name = wanted.pop(); name; name = wanted.pop()) {
  if (!kept[name]) {
    const schema = withoutNotes(whole.components.schemas[name]);
    kept[name] = schema;
    wanted.push(...[...JSON.stringify(schema).matchAll(/#\/components\/schemas\/(\w+)/g)].map(found => found[1]));
  }
}

const schemas = Object.fromEntries(Object.keys(kept).sort().map(name => [name, kept[name]]));
const types = await openapiTS({ openapi: '3.1.0', info: whole.info, paths: {}, components: { schemas } }, { defaultNonNullable: false });
writeFileSync(file, '// Written from the contract by types.mjs; not edited by hand.\n' + astToString(types));

function withoutNotes(part) {
  return JSON.parse(JSON.stringify(part, (key, value) => key === 'description' && typeof value === 'string' || key === 'examples' ? undefined : value));
}
