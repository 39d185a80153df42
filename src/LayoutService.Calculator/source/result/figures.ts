import type { Desk } from '../desk.js';
import { make } from '../dom.js';
import type { Plan } from '../service.js';

/** Numbers and money as the locale writes them. */
export function numberOf(desk: Desk, value: number, digits = 2): string {
  return new Intl.NumberFormat(desk.locale, { maximumFractionDigits: digits }).format(value);
}

export function money(desk: Desk, value: number, currency: string): string {
  return new Intl.NumberFormat(desk.locale, { style: 'currency', currency }).format(value);
}

/** A text of the service: English, and marked so on a page in another language. */
export function english(desk: Desk, text: string): HTMLElement {
  return make('span', desk.locale.startsWith('en') ? {} : { lang: 'en', dir: 'ltr' }, text);
}

/** The figures that a person decides by. */
export function totals(desk: Desk, plan: Plan): HTMLElement {
  const { words } = desk;
  const { summary } = plan;
  const unit = plan.units === 'imperial' ? 'lb' : 'kg';
  const figures: (readonly [string, string, string?])[] = [
    [words.lengthsToBuy, numberOf(desk, summary.lengthsToBuy)],
    [words.sheetsToBuy, numberOf(desk, summary.sheetsToBuy)],
    ...(summary.cost !== undefined && summary.currency ? [[words.cost, money(desk, summary.cost, summary.currency)] as const] : []),
    [words.rows, numberOf(desk, summary.rows)],
    ...(summary.finishedHeightText ? [[words.finishedHeight, summary.finishedHeightText] as const] : []),
    [words.mass, `${numberOf(desk, summary.mass, 0)} ${unit}`],
    [words.heaviestLift, `${numberOf(desk, summary.heaviestLift, 0)} ${unit}`],
    ...(summary.fixturesMoved > 0 ? [[words.fixturesMoved, numberOf(desk, summary.fixturesMoved)] as const] : []),
    [words.checksFailed, numberOf(desk, summary.checksFailed), summary.checksFailed > 0 ? 'bad' : 'good'],
  ];
  return make('dl', { class: 'totals', part: 'totals', 'aria-label': words.totals },
    ...figures.map(([name, value, mood]) => make('div', mood ? { class: mood } : {}, make('dt', {}, name), make('dd', { dir: 'auto' }, value))));
}
