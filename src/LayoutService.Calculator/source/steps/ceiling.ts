import type { Desk } from '../desk.js';
import { make } from '../dom.js';
import { choiceField, faultLine, idOf, lengthField, numberField, radioField, tickField, type Choice } from '../fields.js';
import { rowSpacings, thicknesses } from '../form.js';
import { fromWire, tapeText, ticksOf } from '../lengths.js';
import { choices } from './room.js';

/** Straps, sheets, lights and batts. */
export function ceilingStep(desk: Desk): HTMLElement[] {
  const { words, form } = desk;
  return [
    group(words.straps,
      make('div', { class: 'pair' },
        choiceField(desk, 'strap', words.strap, ['1x3', '1x4', '2x2', '2x3'].map(size => [size, size.replace('x', ' × ')] as const)),
        choiceField(desk, 'rowSpacing', words.rowSpacing, same(rowSpacings[form.units]))),
      tickField(desk, 'strapLengths', words.strapLengths, words.lengthsHint, desk.catalogue.strapsFor(form.units).map(item => [item.id ?? '', tape(desk, item.length)] as const))),
    group(words.sheets,
      make('div', { class: 'pair' },
        choiceField(desk, 'board', words.board, choices(words.boardWords)),
        choiceField(desk, 'thickness', words.thickness, same(thicknesses[form.units]))),
      tickField(desk, 'sheetLengths', words.sheetLengths, words.lengthsHint, desk.catalogue.sheetsFor(form.units).map(item => [item.id ?? '', `${tape(desk, item.width)} × ${tape(desk, item.length)}`] as const))),
    group(words.extras,
      make('div', { class: 'pair' },
        numberField(desk, 'lights', words.lights, words.lightsHint),
        lengthField(desk, 'lightHole', words.lightHole, undefined, true)),
      touchTick(desk),
      radioField(desk, 'batts', words.batts, choices(words.battWords))),
    choiceField(desk, 'ruleset', words.ruleset, choices(words.rulesetWords)),
  ];
}

function group(name: string, ...fields: HTMLElement[]): HTMLElement {
  return make('section', { class: 'group' }, make('h4', {}, name), ...fields);
}

function same(values: readonly string[]): Choice[] {
  return values.map(value => [value, value] as const);
}

/** A length of the catalogue, which may be a number or a text. */
function tape(desk: Desk, length: number | string): string {
  const ticks = typeof length === 'number' ? fromWire(length, desk.form.units) : ticksOf(length, desk.form.units, true);
  return ticks === undefined ? String(length) : tapeText(ticks, desk.form.units, desk.locale);
}

function touchTick(desk: Desk): HTMLElement {
  const key = 'lightsTouchBatts';
  return make('div', { class: 'field' }, make('label', { class: 'option' },
    make('input', {
      type: 'checkbox', id: idOf(key), 'data-key': key, ...(desk.form.lightsTouchBatts ? { checked: true } : {}),
      change: event => desk.settle(form => {
        form.lightsTouchBatts = (event.target as HTMLInputElement).checked;
      }, false),
    }),
    make('span', {}, desk.words.lightsTouchBatts)), faultLine(desk, key));
}
