import { make, makeSvg } from './dom.js';
import type { Form } from './form.js';
import { tapeText, ticksOf, type Ticks } from './lengths.js';
import { listOf, outlineOf } from './room.js';
import { filled } from './words/languages.js';
import type { Words } from './words/en.js';

const width = 420;
const margin = 46;
const mostLines = 200;

/** The room as the fields say it, drawn to scale with the length of each wall and the joists, or a word that it is not ready. */
export function sketchOf(form: Form, words: Words, locale: string): HTMLElement {
  const { corners, faults } = outlineOf(form);
  const name = make('figcaption', {}, words.sketch);
  if (faults.length > 0 || corners.length < 3) {
    return make('figure', { class: 'sketch', part: 'sketch' }, name, make('p', { class: 'hint' }, words.sketchEmpty));
  }

  const [left, right] = ends(corners.map(corner => corner.x));
  const [front, back] = ends(corners.map(corner => corner.y));
  const scale = (width - 2 * margin) / Math.max(right - left, (back - front) * 0.9);
  const height = (back - front) * scale + 2 * margin;
  const x = (ticks: Ticks): number => round(margin + (ticks - left) * scale + (width - 2 * margin - (right - left) * scale) / 2);
  const y = (ticks: Ticks): number => round(height - margin - (ticks - front) * scale);

  const lines = joistPlaces(form, left, right, front, back).map(at => form.run === 'y'
    ? { x1: x(left + at), y1: y(front), x2: x(left + at), y2: y(back) }
    : { x1: x(left), y1: y(front + at), x2: x(right), y2: y(front + at) });
  const points = corners.map(corner => `${x(corner.x)},${y(corner.y)}`).join(' ');
  const walls = corners.map((from, index) => ({ from, to: corners[(index + 1) % corners.length]! }));
  const lengths = walls.map(({ from, to }) => tapeText(Math.hypot(to.x - from.x, to.y - from.y), form.units, locale));
  const turn = area(corners) > 0 ? 1 : -1;
  const labels = walls.map(({ from, to }, index) => label(x(from.x), y(from.y), x(to.x), y(to.y), turn, lengths[index]!));
  const posts = form.posts.map(post => [post.left, post.front, post.across, post.depth].map(text => ticksOf(text, form.units, false)))
    .filter((post): post is Ticks[] => post.every(ticks => ticks !== undefined))
    .map(([atX, atY, across, depth]) => makeSvg('rect', { x: x(atX!), y: y(atY! + depth!), width: round(across! * scale), height: round(depth! * scale), fill: '#3d4a4f' }));

  const clip = makeSvg('clipPath', { id: 'room' }, makeSvg('polygon', { points }));
  return make('figure', { class: 'sketch', part: 'sketch' }, name, makeSvg('svg', {
    viewBox: `0 0 ${width} ${round(height)}`, role: 'img', direction: 'ltr',
    'aria-label': filled(words.sketchOf, { n: corners.length, walls: lengths.join(', ') }),
  },
  makeSvg('defs', {}, clip),
  makeSvg('polygon', { points, fill: '#fffdf7' }),
  makeSvg('g', { 'clip-path': 'url(#room)', stroke: '#c69a5b', 'stroke-width': 2.5 }, ...lines.map(line => makeSvg('line', line))),
  ...posts,
  makeSvg('polygon', { points, fill: 'none', stroke: '#22343b', 'stroke-width': 3, 'stroke-linejoin': 'round' }),
  makeSvg('g', { 'font-size': 13, fill: '#22343b', 'text-anchor': 'middle' }, ...labels)));
}

function joistPlaces(form: Form, left: Ticks, right: Ticks, front: Ticks, back: Ticks): Ticks[] {
  const reach = form.run === 'y' ? right - left : back - front;
  if (form.joists === 'measured') {
    return listOf(form.positions).map(entry => ticksOf(entry, form.units, true)).filter((at): at is Ticks => at !== undefined && at < reach).slice(0, mostLines);
  }

  const spacing = ticksOf(form.spacing, form.units, true) ?? 0;
  const first = ticksOf(form.first, form.units, true);
  return spacing <= 0 || first === undefined ? [] : Array.from({ length: Math.min(mostLines, Math.max(0, Math.ceil((reach - first) / spacing))) }, (_, index) => first + index * spacing);
}

/** A wall's length outside of it, level and off its middle. */
function label(x1: number, y1: number, x2: number, y2: number, turn: number, text: string): SVGElement {
  const long = Math.hypot(x2 - x1, y2 - y1) || 1;
  const [outX, outY] = [(-(y2 - y1) / long) * turn, ((x2 - x1) / long) * turn];
  const upright = Math.abs(outX) > Math.abs(outY);
  const place = { x: round((x1 + x2) / 2 + outX * (upright ? 12 : 16)), y: round((y1 + y2) / 2 + outY * (upright ? 12 : 16) + 4) };
  return upright ? makeSvg('text', { ...place, transform: `rotate(-90 ${place.x} ${place.y - 4})` }, text) : makeSvg('text', place, text);
}

function area(corners: readonly { x: Ticks; y: Ticks }[]): number {
  return corners.reduce((sum, from, index) => {
    const to = corners[(index + 1) % corners.length]!;
    return sum + from.x * to.y - to.x * from.y;
  }, 0);
}

function ends(values: readonly Ticks[]): [Ticks, Ticks] {
  return [Math.min(...values), Math.max(...values)];
}

function round(value: number): number {
  return Math.round(value * 100) / 100;
}
