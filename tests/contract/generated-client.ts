// A caller's program with a whole client made from the contract: its calls, their types and its reading of answers.
import { client } from './generated/client.gen';
import { createPlan, listRules } from './generated/sdk.gen';

client.setConfig({ baseUrl: process.argv[2] ?? '' });
const body = {
  reference: 'generated',
  units: 'metric' as const,
  room: { outline: [[0, 0], ['3.6 m', 0], [3600, 3000], [0, 3000]] as [number | string, number | string][] },
  joistFields: [{ run: 'y' as const, spacing: 400, first: 200 }],
};
async function run() {
  const good = await createPlan({ body });
  if (!good.data || good.data.summary.rows < 1 || good.data.reference !== 'generated') throw new Error('the plan is not one');
  const bad = await createPlan({ body: { ...body, strapping: { kerf: 500 } } });
  const pointer = (bad.error as { errors?: { pointer: string }[] } | undefined)?.errors?.[0]?.pointer;
  if (pointer !== '#/strapping/kerf') throw new Error('the problem is not the one expected');
  const rules = await listRules();
  if (!rules.data) throw new Error('no rules');
  console.log(`generated client: ${good.data.summary.rows} rows; refused at ${pointer}`);
}

run().catch((fault: unknown) => {
  console.error(fault);
  process.exitCode = 1;
});

declare const process: { argv: string[]; exitCode: number };
