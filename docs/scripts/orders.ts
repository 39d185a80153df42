// Plans every room of a CSV in one call and writes what to order.
//
//     npx tsx orders.ts rooms.csv orders.csv http://127.0.0.1:8080
//
// Node 22.18 or later runs it as it is: node orders.ts … No packages.
import { readFileSync, writeFileSync } from 'node:fs';

interface TakeoffLine { code: string; description: string; quantity: number; unit: string }
interface Line {
  kind: 'plan' | 'problem' | 'summary';
  line: number;
  reference?: string;
  plan?: { takeoff: { lines: TakeoffLine[] } };
  problem?: { detail: string };
  summary?: { ok: number; failed: number; complete: boolean; nextIndex: number };
}

const [roomsFile, ordersFile, service] = process.argv.slice(2) as [string, string, string];

function cells(row: string): string[] {
  return [...row.matchAll(/("(?:[^"]|"")*"|[^,]*)(?:,|$)/g)]
    .map((m) => m[1]!.replace(/^"(.*)"$/s, '$1').replaceAll('""', '"')).slice(0, 7);
}

function cell(value: string | number): string {
  const text = String(value);
  return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}

const rooms = readFileSync(roomsFile, 'utf8').split(/\r?\n/).slice(1).filter((row) => row !== '').map((row) => {
  const [reference, units, width, depth, run, spacing, first] = cells(row);
  const w = Number(width), d = Number(depth);
  return {
    reference, units, room: { outline: [[0, 0], [w, 0], [w, d], [0, d]] },
    joistFields: [{ run, spacing: Number(spacing), first: Number(first) }],
  };
});
const answer = await fetch(`${service}/v1/plans/bulk?include=takeoff`, {
  method: 'POST',
  headers: { 'Content-Type': 'application/jsonl' },
  body: rooms.map((room) => JSON.stringify(room) + '\n').join(''),
});
if (!answer.ok) throw new Error(await answer.text());
const orders = ['reference,code,description,quantity,unit'];
let summary: Line['summary'];
for (const text of (await answer.text()).split('\n').filter((row) => row !== '')) {
  const line = JSON.parse(text) as Line;
  for (const item of line.plan?.takeoff.lines ?? []) {
    orders.push([line.reference ?? '', item.code, item.description, item.quantity, item.unit].map(cell).join(','));
  }
  if (line.problem) console.error(`line ${line.line} (${line.reference ?? ''}): ${line.problem.detail}`);
  summary = line.summary ?? summary;
}
if (!summary?.complete) throw new Error(`The answer was cut; send the rest again from room ${summary?.nextIndex ?? 0}.`);
writeFileSync(ordersFile, orders.map((row) => row + '\r\n').join(''));
console.log(`${summary.ok} rooms planned, ${summary.failed} not`);
