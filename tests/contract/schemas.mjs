// The contract is a valid OpenAPI document; every schema compiles by JSON Schema 2020-12; every committed example is valid by it,
// and so is what the running service answers to it.
import { readFileSync, readdirSync } from 'node:fs';
import { Validator } from '@seriousme/openapi-schema-validator';
import Ajv2020 from 'ajv/dist/2020.js';
import formats from 'ajv-formats';

const [base, folder] = process.argv.slice(2);
const contract = JSON.parse(readFileSync('contract.json', 'utf8'));
const valid = await new Validator().validate(structuredClone(contract));
if (!valid.valid) throw new Error('not OpenAPI 3.1: ' + JSON.stringify(valid.errors).slice(0, 500));
const newer = await new Validator().validate(JSON.parse(readFileSync('contract-3.2.json', 'utf8')));
if (!newer.valid) throw new Error('not OpenAPI 3.2: ' + JSON.stringify(newer.errors).slice(0, 500));

const ajv = new Ajv2020({ strict: false, allErrors: true, allowUnionTypes: true });
formats(ajv);
ajv.addFormat('double', true).addFormat('int32', true).addFormat('int64', true);
ajv.addSchema({ $id: 'contract', components: contract.components });
const of = name => ajv.getSchema(`contract#/components/schemas/${name}`) ?? ajv.compile({ $ref: `contract#/components/schemas/${name}` });
const names = Object.keys(contract.components.schemas);
names.forEach(of);

function check(name, value, what) {
  const validate = of(name);
  if (!validate(value)) throw new Error(`${what} is no ${name}: ${ajv.errorsText(validate.errors).slice(0, 500)}`);
}

const call = name => name.startsWith('cut-plan-') ? ['/v1/cut-plans', 'CutPlanRequest', 'CuttingAnswer']
  : name.startsWith('job-') ? ['/v1/jobs', 'JobRequest', 'JobAnswer']
  : name.startsWith('comparison-') ? ['/v1/comparisons', 'ComparisonRequest', 'ComparisonAnswer']
  : ['/v1/plans', 'PlanRequest', 'PlanAnswer'];
let checked = 0;
for (const file of readdirSync(folder).filter(f => f.endsWith('.request.json'))) {
  const name = file.slice(0, -'.request.json'.length);
  const [path, request, answer] = call(name);
  const body = readFileSync(`${folder}/${file}`, 'utf8');
  check(request, JSON.parse(body), file);
  const response = await fetch(base + path, { method: 'POST', headers: { 'Content-Type': 'application/json' }, body });
  if (response.status !== 200) throw new Error(`${file}: ${response.status}`);
  check(answer, await response.json(), `the answer to ${file}`);
  checked++;
}
console.log(`${names.length} schemas compiled, ${checked} examples and their answers valid`);
