// A caller's program with the types of the contract: what it may send and what it reads is checked by the compiler.
import type { components } from './contract.js';

type Plan = components['schemas']['PlanAnswer'];
type Problem = components['schemas']['Problem'];
type Room = components['schemas']['PlanRequest'];

const base = process.argv[2] ?? '';

async function plan(room: Room): Promise<{ plan: Plan } | { problem: Problem }> {
  const response = await fetch(`${base}/v1/plans`, { method: 'POST', headers: { 'Content-Type': 'application/json' }, body: JSON.stringify(room) });
  return response.ok ? { plan: (await response.json()) as Plan } : { problem: (await response.json()) as Problem };
}

const room: Room = {
  reference: 'typed',
  units: 'metric',
  room: { outline: [[0, 0], ['3.6 m', 0], [3600, 3000], [0, 3000]] },
  joistFields: [{ run: 'y', spacing: 400, first: 200 }],
};
const good = await plan(room);
if (!('plan' in good)) throw new Error(JSON.stringify(good.problem));
const rows: number = good.plan.summary.rows;
const pieces = good.plan.strapping?.rows.flatMap(row => row.pieces.map(piece => piece.length)) ?? [];
if (rows < 1 || pieces.length < rows || good.plan.reference !== 'typed') throw new Error('the plan is not one');

const bad = await plan({ ...room, strapping: { kerf: 500 } });
if (!('problem' in bad) || bad.problem.errors?.[0]?.pointer !== '#/strapping/kerf') throw new Error('the problem is not the one expected');
console.log(`typed client: ${rows} rows, ${pieces.length} pieces; refused with ${bad.problem.errors[0].code}`);

declare const process: { argv: string[] };
