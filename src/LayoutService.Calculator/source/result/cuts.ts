import type { components } from '../contract.js';
import type { Desk } from '../desk.js';
import { make, table } from '../dom.js';
import type { Plan } from '../service.js';

type Sheet = components['schemas']['CutSheetAnswer'];

/** What to cut from each length of wood and from each sheet. */
export function cuts(desk: Desk, plan: Plan): HTMLElement[] {
  const { words } = desk;
  const plans = plan.cutPlan;
  if (!plans) {
    return [];
  }

  const wood = plans.stock.map(stick => [
    stick.id, stick.size ?? '', stick.lengthText,
    pieces(stick.cuts.map(cut => `${cut.pieceId}: ${cut.lengthText}`)),
    stick.offcut === 0 ? words.none : stick.offcutText,
  ]);
  const sheets = plans.sheetStock.map(sheet => [sheet.id, sizeOf(plan, sheet), pieces(sheet.cuts.map(cut => `${cut.pieceId}: ${cut.widthText} × ${cut.lengthText}`))]);
  return [
    table(words.cutWood, ['', words.size, words.length, words.cutsOf, words.leftOver], wood, [], [0, 1, 2, 4]),
    table(words.cutSheets, ['', words.size, words.cutsOf], sheets, [], [0, 1]),
  ];
}

/** Pieces one after the other, each kept whole. */
function pieces(texts: readonly string[]): HTMLElement {
  return make('span', {}, ...texts.flatMap((text, index) => [make('span', { class: 'cut' }, index < texts.length - 1 ? `${text};` : text), ' ']));
}

function sizeOf(plan: Plan, sheet: Sheet): string {
  const unit = plan.units === 'imperial' ? '"' : ' mm';
  return `${sheet.width}${unit} × ${sheet.length}${unit}`;
}

/** Where each row is marked on the walls. */
export function marks(desk: Desk, plan: Plan, run: 'x' | 'y'): HTMLElement[] {
  const { words } = desk;
  const rows = (plan.strapping?.rows ?? []).map(row => {
    const [start, end] = [row.marks.find(mark => mark.end === 'start'), row.marks.find(mark => mark.end === 'end')];
    return [
      row.id, start?.nearEdgeText ?? '', end?.nearEdgeText ?? '', words.sideWords[start?.side ?? ''] ?? '',
      row.reasons.map(reason => reason.text ?? '').filter(text => text !== '').join(' '),
    ];
  });
  return [
    make('p', { class: 'hint' }, words.marksHint[run]),
    table(words.tabs.marks, [words.row, words.markStart[run], words.markEnd[run], words.side, words.why], rows, [], [0, 1, 2, 3], false),
  ];
}
