import type { Catalogue } from './catalogue.js';
import type { Form } from './form.js';
import type { Plan } from './service.js';
import type { Words } from './words/en.js';

/** What the parts of the calculator read, and how they change it. */
export interface Desk {
  readonly words: Words;
  readonly locale: string;
  readonly form: Form;
  readonly catalogue: Catalogue;

  /** What is wrong, by the key of the field; already in the person's language, or the service's English. */
  readonly faults: ReadonlyMap<string, SaidFault>;
  readonly plan: Plan | undefined;
  readonly isBusy: boolean;

  /** While a person types: the value, without a step of undo. */
  type(key: string, value: string): void;

  /** A change that is complete: a step of undo. Structural ones draw the step anew. */
  settle(change: (form: Form) => void, isStructural: boolean, focus?: string): void;

  go(step: number): void;
}

/** A sentence beside a field or in the list, with its language where it is not the page's. */
export interface SaidFault {
  text: string;
  lang?: string;
}

type Bag = Record<string, unknown>;

/** Reads a value by its key: `across`, `walls.2.length`. */
export function valueAt(form: Form, key: string): string {
  const value = key.split('.').reduce<unknown>((part, name) => (part as Bag | undefined)?.[name], form);
  return typeof value === 'string' ? value : '';
}

export function putAt(form: Form, key: string, value: string): void {
  const names = key.split('.');
  const last = names.pop()!;
  const holder = names.reduce<unknown>((part, name) => (part as Bag | undefined)?.[name], form) as Bag | undefined;
  if (holder) {
    holder[last] = value;
  }
}
