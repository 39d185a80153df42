import type { components } from '../contract.js';
import type { Desk } from '../desk.js';
import { make, table } from '../dom.js';
import type { Plan } from '../service.js';
import { filled } from '../words/languages.js';
import { english, numberOf } from './figures.js';

type Check = components['schemas']['CheckAnswer'];

const order = ['fail', 'marginal', 'not-checked', 'pass'];

/** Each rule with what the plan has and what is asked, the broken ones first; then what to mind, and what was assumed. */
export function checks(desk: Desk, plan: Plan): HTMLElement[] {
  const { words } = desk;
  const sorted = [...(plan.checks ?? [])].sort((a, b) => order.indexOf(a.status) - order.indexOf(b.status));
  const rows = sorted.map(check => [
    make('strong', { class: `status ${check.status}` }, words.statusWords[check.status] ?? check.status),
    ruleOf(desk, check),
    check.value === undefined ? '' : measured(desk, check.value, check.unit),
    check.limit === undefined ? '' : limitOf(desk, check),
    english(desk, [check.source.document, check.source.clause].filter(Boolean).join(', ')),
  ]);
  return [
    make('p', { class: 'hint' }, words.checksNote),
    make('h5', {}, words.cautions),
    make('ul', { class: 'cautions' }, ...(plan.cautions ?? []).map(caution => make('li', {}, english(desk, caution.text)))),
    table(words.tabs.checks, [words.status, words.rule, words.has, words.limit, words.source], rows, [], [], false),
    make('details', {},
      make('summary', {}, words.assumed),
      make('ul', {}, ...plan.assumed.map(assumed => make('li', {}, english(desk, assumed.text))))),
  ];
}

function ruleOf(desk: Desk, check: Check): HTMLElement {
  const said = check.rule.replaceAll('-', ' ');
  const remedy = check.status === 'pass' ? undefined : (check.remedy?.text ?? check.note?.text);
  return make('span', {}, english(desk, said.charAt(0).toUpperCase() + said.slice(1)), remedy ? make('small', desk.locale.startsWith('en') ? {} : { lang: 'en', dir: 'ltr' }, remedy) : null);
}

function measured(desk: Desk, value: number, unit: string | undefined): string {
  return unit === undefined || unit === 'count' ? numberOf(desk, value, 3) : `${numberOf(desk, value, 3)} ${unit}`;
}

function limitOf(desk: Desk, check: Check): string {
  const n = measured(desk, check.limit ?? 0, check.unit);
  return check.comparison === 'at-most' ? filled(desk.words.atMost, { n }) : check.comparison === 'at-least' ? filled(desk.words.atLeast, { n }) : n;
}

/** The order of work, with the places where someone must look first. */
export function work(desk: Desk, plan: Plan): HTMLElement[] {
  return [make('ol', { class: 'work' }, ...(plan.steps ?? []).map(step => make('li', step.hold ? { class: 'hold' } : {},
    step.hold ? make('strong', {}, `${desk.words.hold}. `) : null, english(desk, step.text))))];
}
