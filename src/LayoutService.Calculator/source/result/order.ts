import type { components } from '../contract.js';
import type { Desk } from '../desk.js';
import { make, table } from '../dom.js';
import type { Plan } from '../service.js';
import { filled } from '../words/languages.js';
import { english, money, numberOf } from './figures.js';

type Line = components['schemas']['TakeoffLineAnswer'];

/** What to order, line by line. */
export function order(desk: Desk, plan: Plan): HTMLElement[] {
  const { words } = desk;
  const takeoff = plan.takeoff;
  if (!takeoff) {
    return [];
  }

  const { currency, amount, unpriced } = takeoff.totals;
  const isPriced = currency !== undefined && takeoff.lines.some(line => line.amount !== undefined);
  const rows = takeoff.lines.map(line => [item(desk, line), bought(desk, line), ...(isPriced ? [line.amount === undefined ? '' : money(desk, line.amount, currency)] : [])]);
  if (isPriced && amount !== undefined) {
    rows.push([words.total, '', money(desk, amount, currency)]);
  }

  return [
    table(words.tabs.order, [words.item, words.buy, ...(isPriced ? [words.amount] : [])], rows, [1, 2], [], false),
    ...(isPriced && unpriced.length > 0 ? [make('p', { class: 'hint' }, filled(words.unpriced, { list: [...new Set(unpriced)].map(code => words.itemWords[code] ?? code.replaceAll('-', ' ')).join(', ') }))] : []),
  ];
}

/** The order as lines of text between tabs, as a table pastes it. */
export function orderText(desk: Desk, plan: Plan): string {
  const lines = plan.takeoff?.lines ?? [];
  return [[desk.words.item, desk.words.buy].join('\t'), ...lines.map(line => [itemText(desk, line), bought(desk, line)].join('\t'))].join('\n');
}

/** In English the service's own words; else the trade's word of the language with the service's words, sizes and all, under it. */
function item(desk: Desk, line: Line): HTMLElement {
  const own = desk.words.itemWords[line.code];
  return own
    ? make('span', {}, own, make('small', { lang: 'en', dir: 'ltr' }, line.description))
    : make('span', {}, english(desk, line.description));
}

function itemText(desk: Desk, line: Line): string {
  const own = desk.words.itemWords[line.code];
  return own ? `${own} (${line.description})` : line.description;
}

function bought(desk: Desk, line: Line): string {
  const packs = line.packs.filter(pack => pack.count > 0 && pack.packSize !== 1);
  return packs.length > 0
    ? packs.map(pack => filled(desk.words.packs, { n: numberOf(desk, pack.count), size: numberOf(desk, pack.packSize), unit: unitOf(desk, line, pack.packSize) })).join(' + ')
    : `${numberOf(desk, line.quantity)} ${unitOf(desk, line, line.quantity)}`;
}

/** The unit in the person's language, as it goes with a number. */
function unitOf(desk: Desk, line: Line, n: number): string {
  const words = desk.words.counted[line.unit];
  return words === undefined ? line.unit : new Intl.PluralRules(desk.locale).select(n) === 'one' ? words.one : words.other;
}
