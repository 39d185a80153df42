import type { components } from './contract.js';
import type { Catalogue } from './catalogue.js';
import type { Form } from './form.js';
import { onWire, type Ticks } from './lengths.js';
import { listOf, outlineOf, valueOf, type FieldFault } from './room.js';

export type PlanRequest = components['schemas']['PlanRequest'];

/** A request, the faults that were seen before it was sent, and which field stands behind each place of it. */
export interface Asked {
  request: PlanRequest;
  faults: FieldFault[];
  places: ReadonlyMap<string, string>;
}

/** What goes to the service. Numbers only: notation and decimal commas stay here. */
export function requestOf(form: Form, catalogue: Catalogue, currency: string, reference: string): Asked {
  const faults: FieldFault[] = [];
  const places = new Map<string, string>([['#/units', 'units'], ['#/ruleset', 'ruleset'], ['#/room/outline', form.shape === 'corners' ? 'walls' : 'across'], ['#/room', 'across']]);
  const length = (key: string, text: string, pointer: string, bare = true): number => {
    places.set(pointer, key);
    return onWire(valueOf(text, form.units, bare, key, faults), form.units);
  };
  const wire = (ticks: Ticks): number => onWire(ticks, form.units);
  const outline = outlineOf(form);
  faults.push(...outline.faults);
  outline.corners.forEach((corner, index) => places.set(`#/room/outline/${index}`, corner.key));

  const request: PlanRequest = {
    ...(reference ? { reference } : {}),
    units: form.units,
    ruleset: form.ruleset as PlanRequest['ruleset'] & string,
    room: {
      outline: outline.corners.map(corner => [wire(corner.x), wire(corner.y)]),
      ...(form.height.trim() ? { heights: [{ floorToJoist: length('height', form.height, '#/room/heights', false) }] } : {}),
      ...(form.buildUp.trim() ? { floorBuildUp: length('buildUp', form.buildUp, '#/room/floorBuildUp') } : {}),
      ...(form.use ? { use: form.use as 'habitable' } : {}),
    },
    joistFields: [joists(form, length, places, faults)],
    strapping: {
      size: { name: form.strap as '1x3' },
      maxSpacing: length('rowSpacing', form.rowSpacing, '#/strapping/maxSpacing'),
      ...offered(catalogue.strapsFor(form.units), form.strapLengths, '#/strapping/stock', 'strapLengths', places, faults),
    },
    sheets: {
      type: form.board as 'regular',
      thickness: length('thickness', form.thickness, '#/sheets/thickness'),
      ...offered(catalogue.sheetsFor(form.units), form.sheetLengths, '#/sheets/stock', 'sheetLengths', places, faults),
    },
  };
  places.set('#/strapping/size', 'strap').set('#/sheets/type', 'board').set('#/room/use', 'use');
  if (form.posts.length > 0) {
    request.room.openings = form.posts.map((post, index) => {
      const at = `#/room/openings/${index}`;
      places.set(at, `posts.${index}.left`);
      const read = (name: 'left' | 'front' | 'across' | 'depth'): Ticks => valueOf(post[name], form.units, false, `posts.${index}.${name}`, faults);
      const [left, front, across, depth] = [read('left'), read('front'), read('across'), read('depth')];
      return { kind: 'post', outline: [[left, front], [left + across, front], [left + across, front + depth], [left, front + depth]].map(([x, y]) => [wire(x!), wire(y!)]) };
    });
  }

  if (form.batts !== 'none') {
    request.insulation = { purpose: form.batts, ...(catalogue.batts.length > 0 && catalogue.units === form.units ? { batts: catalogue.batts } : {}) };
    places.set('#/insulation', 'batts');
  }

  const lights = form.lights.trim();
  if (lights !== '' && lights !== '0') {
    places.set('#/lightGrid', 'lights').set('#/lightGrid/fixture', 'lightHole');
    if (!/^\d{1,3}$/.test(lights)) {
      faults.push({ key: 'lights', code: 'count' });
    }

    request.lightGrid = {
      count: Number(lights),
      fixture: { kind: 'slim-light', cutout: { diameter: length('lightHole', form.lightHole, '#/lightGrid/fixture/cutout') }, insulationContact: form.lightsTouchBatts },
    };
  }

  const items = catalogue.items;
  if (currency && (items.length > 0 || catalogue.isPriced)) {
    request.prices = { currency, ...(items.length > 0 ? { items } : {}) };
  }

  return { request, faults, places };
}

/** The field behind a place of the request: of the place itself, or of the nearest one that it lies in. */
export function fieldAt(pointer: string, places: ReadonlyMap<string, string>): string | undefined {
  for (let place = pointer; place.includes('/'); place = place.slice(0, place.lastIndexOf('/'))) {
    const key = places.get(place);
    if (key) {
      return key;
    }
  }

  return undefined;
}

type ReadField = (key: string, text: string, pointer: string, bare?: boolean) => number;

function joists(form: Form, length: ReadField, places: Map<string, string>, faults: FieldFault[]): PlanRequest['joistFields'][number] {
  places.set('#/joistFields', form.joists === 'regular' ? 'spacing' : 'positions').set('#/joistFields/0/run', 'run').set('#/joistFields/0/size', 'joistSize');
  const field = { run: form.run, kind: 'sawn' as const, ...(form.joistSize ? { size: form.joistSize as '2x10' } : {}) };
  if (form.joists === 'regular') {
    return { ...field, spacing: length('spacing', form.spacing, '#/joistFields/0/spacing'), first: length('first', form.first, '#/joistFields/0/first') };
  }

  const entries = listOf(form.positions);
  if (entries.length === 0) {
    faults.push({ key: 'positions', code: 'empty' });
  }

  return { ...field, positions: entries.map((entry, index) => length('positions', entry, `#/joistFields/0/positions/${index}`)) };
}

/** The stock that was ticked; all of it, when it bears prices or sku of the yard; nothing, when the service's own list will do. */
function offered<T extends { id?: string; length: components['schemas']['Length'] }>(
  stock: readonly T[], chosen: readonly string[], pointer: string, key: string, places: Map<string, string>, faults: FieldFault[],
): { stock?: T[] } {
  places.set(pointer, key);
  if (chosen.length === 0) {
    return stock.length > 0 ? { stock: [...stock] } : {};
  }

  const kept = stock.filter(item => chosen.includes(item.id ?? ''));
  if (kept.length === 0) {
    faults.push({ key, code: 'noStock' });
  }

  return { stock: kept };
}
