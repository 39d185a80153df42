import type { Desk } from '../desk.js';
import { make } from '../dom.js';
import { choiceField, lengthField, listField, radioField } from '../fields.js';
import { choices } from './room.js';

const sizes = ['2x6', '2x8', '2x10', '2x12'];

/** Which way the joists run and where each stands. */
export function joistStep(desk: Desk): HTMLElement[] {
  const { words, form } = desk;
  return [
    radioField(desk, 'run', words.run, choices(words.runWords)),
    radioField(desk, 'joists', words.joists, choices(words.joistsWords)),
    form.joists === 'regular'
      ? make('div', { class: 'pair' },
        lengthField(desk, 'spacing', words.spacing, undefined, true),
        lengthField(desk, 'first', words.first, words.firstFrom[form.run], true))
      : listField(desk, 'positions', words.positions, words.positionsHint[form.run] + (usesComma(desk.locale) ? ` ${words.positionsComma}` : '')),
    choiceField(desk, 'joistSize', words.joistSize, [...sizes.map(size => [size, size.replace('x', ' × ')] as const), ['', words.sizeUnknown] as const]),
  ];
}

function usesComma(locale: string): boolean {
  return new Intl.NumberFormat(locale).format(0.5).includes(',');
}
