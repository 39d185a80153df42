import { putAt, valueAt, type Desk } from './desk.js';
import { make } from './dom.js';
import type { Form } from './form.js';
import { otherText, ticksOf } from './lengths.js';
import { filled } from './words/languages.js';

/** A field's label, hint and fault, with the ids that tie them together for a screen reader. */
function framed(desk: Desk, key: string, label: string, hint: string | undefined, control: HTMLElement, after?: HTMLElement): HTMLElement {
  const id = idOf(key);
  const fault = desk.faults.get(key);
  control.id = id;
  control.dataset['key'] = key;
  const parts = [hint ? `${id}-hint` : '', after ? `${id}-said` : '', fault ? `${id}-fault` : ''].filter(part => part !== '');
  if (parts.length > 0) {
    control.setAttribute('aria-describedby', parts.join(' '));
  }

  if (fault) {
    control.setAttribute('aria-invalid', 'true');
  }

  return make('div', { class: 'field', part: 'field' },
    make('label', { for: id }, label),
    hint ? make('p', { class: 'hint', id: `${id}-hint` }, hint) : null,
    make('div', { class: 'entry' }, control, after),
    faultLine(desk, key));
}

/** What is wrong with a field, in its own line. */
export function faultLine(desk: Desk, key: string): HTMLElement | null {
  const fault = desk.faults.get(key);
  return fault ? make('p', { class: 'fault', id: `${idOf(key)}-fault`, part: 'fault', ...(fault.lang ? { lang: fault.lang } : {}) }, fault.text) : null;
}

export function idOf(key: string): string {
  return `f-${key.replaceAll('.', '-')}`;
}

/** A length: the text as typed, and beside it how it was understood. */
export function lengthField(desk: Desk, key: string, label: string, hint?: string, bare = false): HTMLElement {
  const said = make('output', { class: 'said', for: idOf(key), id: `${idOf(key)}-said`, dir: 'ltr', 'aria-live': 'off' });
  const tell = (text: string): void => {
    const ticks = ticksOf(text, desk.form.units, bare);
    said.textContent = ticks === undefined || ticks === 0 ? '' : filled(desk.words.understood, { text: otherText(ticks, desk.form.units, desk.locale) });
  };
  tell(valueAt(desk.form, key));
  return framed(desk, key, label, hint, textInput(desk, key, tell), said);
}

export function numberField(desk: Desk, key: string, label: string, hint?: string): HTMLElement {
  const input = textInput(desk, key, () => undefined);
  input.inputMode = 'numeric';
  return framed(desk, key, label, hint, input);
}

function textInput(desk: Desk, key: string, tell: (text: string) => void): HTMLInputElement {
  return make('input', {
    type: 'text', part: 'input', dir: 'ltr', autocomplete: 'off', spellcheck: 'false', value: valueAt(desk.form, key),
    input: event => {
      const text = (event.target as HTMLInputElement).value;
      tell(text);
      desk.type(key, text);
    },
    change: event => desk.settle(form => putAt(form, key, (event.target as HTMLInputElement).value), false),
  });
}

/** Readings one after the other, in a box of several lines. */
export function listField(desk: Desk, key: string, label: string, hint: string): HTMLElement {
  const area = make('textarea', {
    rows: 5, part: 'input', dir: 'ltr', spellcheck: 'false', value: valueAt(desk.form, key),
    input: event => desk.type(key, (event.target as HTMLTextAreaElement).value),
    change: event => desk.settle(form => putAt(form, key, (event.target as HTMLTextAreaElement).value), false),
  });
  return framed(desk, key, label, hint, area);
}

export type Choice = readonly [value: string, text: string];

export function choiceField(desk: Desk, key: string, label: string, choices: readonly Choice[], hint?: string, isStructural = false): HTMLElement {
  const now = valueAt(desk.form, key);
  const select = make('select', { part: 'input', change: event => desk.settle(form => putAt(form, key, (event.target as HTMLSelectElement).value), isStructural, key) },
    ...choices.map(([value, text]) => make('option', { value, ...(value === now ? { selected: true } : {}) }, text)));
  return framed(desk, key, label, hint, select);
}

/** One of a few, all in sight. */
export function radioField(desk: Desk, key: keyof Form, label: string, choices: readonly Choice[], change?: (form: Form, value: string) => void): HTMLElement {
  const now = valueAt(desk.form, key);
  return make('fieldset', { class: 'field radios', part: 'field' },
    make('legend', {}, label),
    make('div', { class: 'options' }, ...choices.map(([value, text]) => make('label', { class: 'option' },
      make('input', {
        type: 'radio', name: idOf(key), value, 'data-key': `${key}=${value}`, ...(value === now ? { checked: true } : {}),
        change: () => desk.settle(form => (change ? change(form, value) : putAt(form, key, value)), true, `${key}=${value}`),
      }),
      make('span', {}, text)))),
    faultLine(desk, key));
}

/** Any of a few; none ticked off means all. */
export function tickField(desk: Desk, key: 'strapLengths' | 'sheetLengths', label: string, hint: string, choices: readonly Choice[]): HTMLElement {
  const ids = choices.map(([value]) => value);
  const kept = desk.form[key].length === 0 ? ids : desk.form[key];
  return make('fieldset', { class: 'field ticks', part: 'field', id: idOf(key), 'data-key': key, tabindex: -1 },
    make('legend', {}, label),
    make('p', { class: 'hint' }, hint),
    make('div', { class: 'options' }, ...choices.map(([value, text]) => make('label', { class: 'option' },
      make('input', {
        type: 'checkbox', 'data-key': `${key}=${value}`, ...(kept.includes(value) ? { checked: true } : {}),
        change: event => {
          const isOn = (event.target as HTMLInputElement).checked;
          const chosen = isOn ? [...kept, value] : kept.filter(id => id !== value);
          desk.settle(form => {
            form[key] = ids.every(id => chosen.includes(id)) ? [] : chosen.length === 0 ? ['none'] : chosen;
          }, true, `${key}=${value}`);
        },
      }),
      make('span', { dir: 'ltr' }, text)))),
    faultLine(desk, key));
}
