import { button, make } from './dom.js';
import { labelOf, stepOf } from './faults.js';
import { planStep, type Session } from './session.js';
import { sketchOf } from './sketch.js';
import { ceilingStep } from './steps/ceiling.js';
import { joistStep } from './steps/joists.js';
import { roomStep } from './steps/room.js';
import { checks, work } from './result/checks.js';
import { cuts, marks } from './result/cuts.js';
import { totals } from './result/figures.js';
import { order } from './result/order.js';
import { picture } from './result/picture.js';
import { tabs } from './result/tabs.js';
import type { FileKind } from './service.js';
import { filled } from './words/languages.js';

/** What the buttons of the shell do. */
export interface Deeds {
  print(): void;
  copy(): void;
  save(kind: FileKind): void;
  order(): void;
  startOver(): void;
  readonly hasCart: boolean;
}

/** The whole calculator as it stands. */
export function shell(session: Session, deeds: Deeds): HTMLElement[] {
  const { words, step } = session;
  const isPlan = step === planStep;
  return [
    make('h2', { part: 'title' }, words.title),
    steps(session),
    make('div', { class: isPlan ? 'body' : 'body beside' },
      make('section', { class: 'main', 'aria-labelledby': 'head' },
        make('h3', { id: 'head', tabindex: -1, 'data-key': 'head' }, words.steps[step] ?? ''),
        summary(session),
        ...(isPlan ? result(session, deeds) : step === 0 ? roomStep(session) : step === 1 ? joistStep(session) : ceilingStep(session))),
      isPlan ? null : make('aside', { class: 'aside', 'data-part': 'sketch' }, sketchOf(session.form, words, session.locale))),
    actions(session, deeds),
  ];
}

function steps(session: Session): HTMLElement {
  const { words } = session;
  return make('nav', { class: 'steps screen', 'aria-label': words.stepsLabel, part: 'steps' }, make('ol', {},
    ...words.steps.map((name, index) => {
      const hasFault = [...session.faults.keys()].some(key => stepOf(key) === index);
      return make('li', {}, button(`${index + 1}. ${name}`, () => session.go(index), {
        'data-key': `step-${index}`, part: 'step', class: hasFault ? 'faulty' : '', ...(index === session.step ? { 'aria-current': 'step' } : {}),
      }));
    })));
}

/** All that is wrong, first on the page, each leading to its field. */
function summary(session: Session): HTMLElement | null {
  const { words, faults, sentences } = session;
  if (faults.size === 0 && sentences.length === 0) {
    return null;
  }

  const head = faults.size === 0 ? words.problemHead : faults.size === 1 ? words.faultsHead.one : filled(words.faultsHead.other, { n: faults.size });
  return make('div', { class: 'summary', part: 'summary', role: 'alert', tabindex: -1, 'data-key': 'summary' },
    make('h4', {}, head),
    make('ul', {},
      ...[...faults].map(([key, fault]) => make('li', { 'data-of': key }, button(labelOf(key, words), () => session.reach(key), { class: 'link' }), make('span', fault.lang ? { lang: fault.lang } : {}, ` ${fault.text}`))),
      ...sentences.map(said => make('li', said.lang ? { lang: said.lang } : {}, said.text))));
}

function actions(session: Session, deeds: Deeds): HTMLElement {
  const { words, step, isBusy, history } = session;
  if (isBusy) {
    return make('div', { class: 'bar actions screen' },
      make('progress', { 'aria-label': words.working }),
      make('span', { class: 'said' }, words.working),
      button(words.stop, () => session.stop(), { 'data-key': 'stop' }));
  }

  const next = words.steps[step + 1];
  const isLast = step >= planStep - 1;
  const calculate = step === planStep
    ? session.plan === undefined || session.isStale ? button(session.plan ? words.again : words.calculate, () => void session.calculate(), { class: 'primary', 'data-key': 'calculate' }) : null
    : button(words.calculate, () => void session.calculate(), { class: isLast ? 'primary' : '', 'data-key': 'calculate' });
  return make('div', { class: 'bar actions screen', part: 'actions' },
    step > 0 ? button(words.back, () => session.go(step - 1), { 'data-key': 'back' }) : null,
    isLast || next === undefined ? null : button(filled(words.next, { step: next }), () => session.go(step + 1), { class: 'primary', 'data-key': 'next' }),
    calculate,
    make('span', { class: 'gap' }),
    button(words.undo, () => history.canUndo && session.undo(), { 'data-key': 'undo', 'aria-disabled': String(!history.canUndo), class: 'quiet' }),
    button(words.redo, () => history.canRedo && session.redo(), { 'data-key': 'redo', 'aria-disabled': String(!history.canRedo), class: 'quiet' }),
    button(words.startOver, () => deeds.startOver(), { 'data-key': 'start-over', class: 'quiet' }));
}

function result(session: Session, deeds: Deeds): HTMLElement[] {
  const { words, plan } = session;
  if (!plan) {
    return [make('p', { class: 'lead' }, words.noPlanYet)];
  }

  const names = words.tabs;
  return [
    ...(session.isStale ? [make('p', { class: 'stale' }, words.stale)] : []),
    totals(session, plan),
    ...tabs(words.tabsLabel, [
      { key: 'drawing', name: names.drawing, content: picture(session, plan) },
      { key: 'order', name: names.order, content: order(session, plan) },
      { key: 'cuts', name: names.cuts, content: cuts(session, plan) },
      { key: 'marks', name: names.marks, content: marks(session, plan, session.planned?.joistFields[0]?.run ?? 'y') },
      { key: 'checks', name: names.checks, content: checks(session, plan) },
      { key: 'work', name: names.work, content: work(session, plan) },
    ], session.tab, key => {
      session.tab = key;
    }),
    make('div', { class: 'bar keep screen', role: 'group', 'aria-label': words.keep },
      deeds.hasCart ? button(words.addToCart, () => deeds.order(), { class: 'primary', 'data-key': 'cart' }) : null,
      button(words.print, () => deeds.print()),
      button(words.copy, () => deeds.copy(), { 'data-key': 'copy' }),
      ...(['pdf', 'csv', 'xlsx', 'svg'] as const).map(kind => button(words.download[kind], () => deeds.save(kind), { 'data-key': `save-${kind}` }))),
  ];
}
