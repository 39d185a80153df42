import type { Desk } from '../desk.js';
import { button, make } from '../dom.js';
import { choiceField, faultLine, idOf, lengthField, radioField, type Choice } from '../fields.js';
import { usual, type Form } from '../form.js';
import { tapeText, ticksOf, type Units } from '../lengths.js';
import { isSlanted, listOf } from '../room.js';
import { filled } from '../words/languages.js';

export function choices(words: Readonly<Record<string, string>>): Choice[] {
  return Object.entries(words);
}

/** The room's outline, posts and heights. */
export function roomStep(desk: Desk): HTMLElement[] {
  const { words, form } = desk;
  return [
    make('p', { class: 'lead' }, words.roomIntro),
    radioField(desk, 'units', words.units, choices(words.unitWords), (changed, value) => inUnits(changed, value as Units, desk.locale)),
    make('p', { class: 'hint', id: 'length-hint' }, words.lengthHint[form.units]),
    radioField(desk, 'shape', words.shape, choices(words.shapeWords), (changed, value) => shaped(changed, value as Form['shape'])),
    ...(form.shape === 'corners' ? [walls(desk)] : sides(desk)),
    posts(desk),
    make('div', { class: 'pair' },
      lengthField(desk, 'height', words.height, words.heightHint),
      lengthField(desk, 'buildUp', words.buildUp, words.buildUpHint, true)),
    choiceField(desk, 'use', words.use, choices(words.useWords)),
  ];
}

function sides(desk: Desk): HTMLElement[] {
  const { words, form } = desk;
  const whole = make('div', { class: 'pair' }, lengthField(desk, 'across', words.across), lengthField(desk, 'depth', words.depth));
  return form.shape === 'rectangle' ? [whole] : [
    whole,
    choiceField(desk, 'notch', words.notch, choices(words.notchWords), undefined, true),
    make('div', { class: 'pair' }, lengthField(desk, 'notchAcross', words.notchAcross), lengthField(desk, 'notchDepth', words.notchDepth)),
  ];
}

function walls(desk: Desk): HTMLElement {
  const { words, form } = desk;
  const list = form.walls.map((wall, index) => {
    const n = index + 1;
    const slants = isSlanted(wall.way);
    return make('li', {},
      choiceField(desk, `walls.${index}.way`, filled(words.wallWay, { n }), choices(words.wayWords), undefined, true),
      lengthField(desk, `walls.${index}.length`, filled(slants ? words.wallAcross : words.wallLength, { n })),
      slants ? lengthField(desk, `walls.${index}.depth`, filled(words.wallDepth, { n })) : null,
      remover(desk, 'walls', index, filled(words.removeWall, { n })));
  });
  return make('fieldset', { class: 'list', id: idOf('walls'), 'data-key': 'walls', tabindex: -1 },
    make('legend', {}, words.walls),
    make('p', { class: 'hint' }, words.wallsHint),
    make('ol', {}, ...list),
    button(words.addWall, () => desk.settle(changed => {
      const before = changed.walls.at(-1)?.way;
      changed.walls.push({ way: before === 'right' ? 'back' : before === 'back' ? 'left' : before === 'left' ? 'front' : 'right', length: '', depth: '' });
    }, true, `walls.${form.walls.length}.length`)),
    faultLine(desk, 'walls'));
}

function posts(desk: Desk): HTMLElement {
  const { words, form } = desk;
  const list = form.posts.map((_, index) => {
    const n = index + 1;
    return make('li', {},
      lengthField(desk, `posts.${index}.left`, filled(words.postLeft, { n })),
      lengthField(desk, `posts.${index}.front`, filled(words.postFront, { n })),
      lengthField(desk, `posts.${index}.across`, filled(words.postAcross, { n })),
      lengthField(desk, `posts.${index}.depth`, filled(words.postDepth, { n })),
      remover(desk, 'posts', index, filled(words.removePost, { n })));
  });
  return make('fieldset', { class: 'list' },
    make('legend', {}, words.posts),
    list.length > 0 ? make('ol', {}, ...list) : null,
    button(words.addPost, () => desk.settle(changed => {
      changed.posts.push({ left: '', front: '', across: '', depth: '' });
    }, true, `posts.${form.posts.length}.left`)));
}

function remover(desk: Desk, list: 'walls' | 'posts', index: number, label: string): HTMLElement {
  return button(label, () => desk.settle(changed => {
    changed[list].splice(index, 1);
  }, true), { class: 'quiet' });
}

/** Corner by corner starts from the shape that stands there, so that nothing is typed twice. */
function shaped(form: Form, shape: Form['shape']): void {
  form.shape = shape;
  if (shape === 'corners' && form.walls.length === 0) {
    form.walls = [
      { way: 'right', length: form.across, depth: '' }, { way: 'back', length: form.depth, depth: '' }, { way: 'left', length: form.across, depth: '' },
    ];
  }
}

const roomKeys = ['across', 'depth', 'notchAcross', 'notchDepth', 'height', 'buildUp', 'first'] as const;

/** Measured lengths are said in the other units; sizes of material are chosen anew from what is usual there. */
function inUnits(form: Form, units: Units, locale: string): void {
  const before = form.units;
  const said = (text: string): string => {
    const ticks = ticksOf(text, before, false) ?? ticksOf(text, before, true);
    return ticks === undefined ? text : tapeText(ticks, units, locale);
  };
  if (before === units) {
    return;
  }

  Object.assign(form, usual[units], { units, strapLengths: [], sheetLengths: [] });
  for (const key of roomKeys) {
    form[key] = said(form[key]);
  }

  form.walls = form.walls.map(wall => ({ way: wall.way, length: said(wall.length), depth: said(wall.depth) }));
  form.posts = form.posts.map(post => ({ left: said(post.left), front: said(post.front), across: said(post.across), depth: said(post.depth) }));
  form.positions = listOf(form.positions).map(said).join('; ');
}
