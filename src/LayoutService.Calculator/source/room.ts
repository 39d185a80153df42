import { readLength, type Ticks, type Units } from './lengths.js';
import type { Form, Notch, Way } from './form.js';

/** A fault of a field, by the key of the field. */
export interface FieldFault {
  key: string;
  code: string;

  /** What was typed. */
  text?: string;
}

/** A corner, and the field that a fault of the service's at this corner belongs to. */
export interface Corner {
  x: Ticks;
  y: Ticks;
  key: string;
}

export interface Outline {
  corners: Corner[];
  faults: FieldFault[];
}

/** The outline that the fields give: front left corner first, x to the right, y to the back, counter-clockwise or as walked. */
export function outlineOf(form: Form): Outline {
  const faults: FieldFault[] = [];
  const length = (key: string, text: string): Ticks => valueOf(text, form.units, false, key, faults);
  if (form.shape === 'corners') {
    return walked(form, faults, length);
  }

  const across = length('across', form.across);
  const depth = length('depth', form.depth);
  if (form.shape === 'rectangle') {
    return {
      faults,
      corners: [{ x: 0, y: 0, key: 'across' }, { x: across, y: 0, key: 'across' }, { x: across, y: depth, key: 'depth' }, { x: 0, y: depth, key: 'depth' }],
    };
  }

  const notchAcross = length('notchAcross', form.notchAcross);
  const notchDepth = length('notchDepth', form.notchDepth);
  if (faults.length === 0 && notchAcross >= across) {
    faults.push({ key: 'notchAcross', code: 'notch' });
  }

  if (faults.length === 0 && notchDepth >= depth) {
    faults.push({ key: 'notchDepth', code: 'notch' });
  }

  return { faults, corners: notched(form.notch, across, depth, notchAcross, notchDepth) };
}

export const wayOf: Record<Way, readonly [number, number]> = {
  right: [1, 0], left: [-1, 0], back: [0, 1], front: [0, -1],
  'back-right': [1, 1], 'back-left': [-1, 1], 'front-right': [1, -1], 'front-left': [-1, -1],
};

export function isSlanted(way: Way): boolean {
  const [x, y] = wayOf[way];
  return x !== 0 && y !== 0;
}

/** The last wall closes the room by itself, so it is not asked for. */
function walked(form: Form, faults: FieldFault[], length: (key: string, text: string) => Ticks): Outline {
  const corners: Corner[] = [{ x: 0, y: 0, key: 'walls.0.length' }];
  if (form.walls.length < 2) {
    faults.push({ key: 'walls', code: 'fewWalls' });
  }

  form.walls.forEach((wall, index) => {
    const [x, y] = wayOf[wall.way];
    const key = `walls.${index}.length`;
    const first = length(key, wall.length);
    const second = isSlanted(wall.way) ? length(`walls.${index}.depth`, wall.depth) : first;
    const from = corners.at(-1)!;
    corners.push({ x: from.x + x * first, y: from.y + y * second, key });
  });
  const last = corners.at(-1)!;
  if (faults.length === 0 && corners.length > 2 && last.x === 0 && last.y === 0) {
    corners.pop();
  }

  return { corners, faults };
}

function notched(notch: Notch, across: Ticks, depth: Ticks, notchAcross: Ticks, notchDepth: Ticks): Corner[] {
  const right = notch.endsWith('right');
  const back = notch.startsWith('back');

  // the L with its notch at the back and right, mirrored to where it stands; each mirror turns the order of the corners round
  const ring: [Ticks, Ticks, string][] = [
    [0, 0, 'across'], [across, 0, 'across'], [across, depth - notchDepth, 'notchDepth'],
    [across - notchAcross, depth - notchDepth, 'notchAcross'], [across - notchAcross, depth, 'notchAcross'], [0, depth, 'depth'],
  ];
  return ring.map(([x, y, key]) => ({ x: right ? x : across - x, y: back ? y : depth - y, key }));
}

/** The length that a text says; none, and a fault of its field, when it says none. */
export function valueOf(text: string, units: Units, bare: boolean, key: string, faults: FieldFault[]): Ticks {
  const read = readLength(text, units, bare);
  if ('ticks' in read && read.ticks > 0) {
    return read.ticks;
  }

  faults.push({ key, code: 'ticks' in read ? 'zero' : read.wrong, text });
  return 0;
}

/** Joists as measured: lengths between commas, semicolons or on lines of their own. A decimal comma needs one of the other two. */
export function listOf(text: string): string[] {
  const cut = /[;\n]/.test(text) ? /[;\n]/ : /,(?!\d)|,\s/;
  return text.split(cut).map(part => part.trim()).filter(part => part !== '');
}
