import type { SaidFault } from './desk.js';
import type { Units } from './lengths.js';
import { fieldAt, type Asked } from './request.js';
import type { FieldFault } from './room.js';
import type { Refusal } from './service.js';
import type { Words } from './words/en.js';
import { filled } from './words/languages.js';

/** What is wrong: beside fields, and in sentences that belong to no field. */
export interface Refused {
  fields: Map<string, SaidFault>;
  sentences: SaidFault[];
}

/** Faults that were seen before anything was sent. */
export function ofFields(faults: readonly FieldFault[], words: Words, units: Units): Refused {
  const said = words.faults as Record<string, string>;
  const fields = new Map<string, SaidFault>();
  for (const fault of faults) {
    fields.set(fault.key, fields.get(fault.key) ?? { text: filled(said[fault.code] ?? fault.code, { text: fault.text ?? '', hint: words.lengthHint[units] }) });
  }

  return { fields, sentences: [] };
}

/** Faults of the service: each pointer leads to the field behind it; findings say why no plan exists and what would help. */
export function ofService(refusal: Refusal, asked: Asked, words: Words): Refused {
  const fields = new Map<string, SaidFault>();
  const sentences: SaidFault[] = [];
  const { problem } = refusal;
  const isEnglish = Object.keys(words.served).length === 0;
  for (const error of problem?.errors ?? []) {
    const own = words.served[error.code];
    const said = own ? { text: own } : english(error.detail, isEnglish);
    const key = fieldAt(error.pointer, asked.places);
    if (key === undefined) {
      sentences.push(said);
    } else {
      fields.set(key, fields.get(key) ?? said);
    }
  }

  for (const finding of problem?.findings ?? []) {
    sentences.push(english(finding.text, isEnglish), ...finding.remedies.map(remedy => english(`→ ${remedy.text}`, isEnglish)));
  }

  if (fields.size === 0 && sentences.length === 0) {
    sentences.push(whole(refusal, words, isEnglish));
  }

  return { fields, sentences };
}

function whole(refusal: Refusal, words: Words, isEnglish: boolean): SaidFault {
  const status = refusal.problem?.status;
  if (status === 429 || status === 503) {
    return { text: filled(words.busy, { n: refusal.retryAfter ?? 10 }) };
  }

  return refusal.problem === undefined ? { text: words.noAnswer } : refusal.problem.status >= 500 ? { text: words.failed } : english(refusal.problem.detail, isEnglish);
}

function english(text: string, isEnglish: boolean): SaidFault {
  return isEnglish ? { text } : { text, lang: 'en' };
}

/** The label of a field by its key, as it stands above the field. */
export function labelOf(key: string, words: Words): string {
  const labels = words as unknown as Record<string, unknown>;
  const [list, at, name] = key.split('.');
  if (at === undefined) {
    return typeof labels[key] === 'string' ? (labels[key] as string) : key;
  }

  const word = list === 'walls' ? `wall${capital(name!)}` : `post${capital(name!)}`;
  return filled(String(labels[word] ?? key), { n: Number(at) + 1 });
}

function capital(word: string): string {
  return word.charAt(0).toUpperCase() + word.slice(1);
}

const joistKeys = new Set(['run', 'joists', 'spacing', 'first', 'positions', 'joistSize']);
const ceilingKeys = new Set(['ruleset', 'strap', 'rowSpacing', 'strapLengths', 'board', 'thickness', 'sheetLengths', 'batts', 'lights', 'lightHole', 'lightsTouchBatts']);

/** The step that a field stands in. */
export function stepOf(key: string): number {
  return joistKeys.has(key) ? 1 : ceilingKeys.has(key) ? 2 : 0;
}
