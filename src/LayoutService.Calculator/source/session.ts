import { Catalogue } from './catalogue.js';
import { putAt, type Desk, type SaidFault } from './desk.js';
import { ofFields, ofService, stepOf, type Refused } from './faults.js';
import type { Form } from './form.js';
import { History } from './history.js';
import { requestOf, type PlanRequest } from './request.js';
import { Refusal, Service, type Plan } from './service.js';
import type { Words } from './words/en.js';

/** What a session tells the element: to draw anew, what to say, what happened. */
export interface Listener {
  draw(focus?: string): void;
  say(text: string): void;
  planned(plan: Plan, request: PlanRequest): void;
  refused(refusal: Refusal): void;
  changed(): void;
  mended(key: string): void;
}

export const planStep = 3;

/** One person's way through the calculator: the form, its history, the plan and what was wrong. */
export class Session implements Desk {
  words: Words;
  locale: string;
  form: Form;
  catalogue = new Catalogue();
  currency = '';
  reference = '';
  service = new Service('');
  faults: Map<string, SaidFault> = new Map();
  sentences: SaidFault[] = [];
  plan: Plan | undefined;
  planned: PlanRequest | undefined;
  step = 0;
  tab = 'drawing';
  readonly history = new History();
  #listener: Listener;
  #call: AbortController | undefined;
  #settled: Form;
  #plannedForm = '';

  constructor(form: Form, words: Words, locale: string, listener: Listener) {
    this.form = form;
    this.#settled = structuredClone(form);
    this.words = words;
    this.locale = locale;
    this.#listener = listener;
  }

  get isBusy(): boolean {
    return this.#call !== undefined;
  }

  get isStale(): boolean {
    return this.plan !== undefined && JSON.stringify(this.form) !== this.#plannedForm;
  }

  /** The request as the form stands. */
  get request(): PlanRequest {
    return requestOf(this.form, this.catalogue, this.#currency, this.reference).request;
  }

  get #currency(): string {
    return this.currency || this.catalogue.currency;
  }

  type(key: string, value: string): void {
    putAt(this.form, key, value);
    if (this.faults.delete(key)) {
      this.#listener.mended(key);
    }
  }

  settle(change: (form: Form) => void, isStructural: boolean, focus?: string): void {
    change(this.form);
    if (JSON.stringify(this.form) !== JSON.stringify(this.#settled)) {
      this.history.keep(this.#settled);
      this.#settled = structuredClone(this.form);
      this.#listener.changed();
    }

    if (isStructural) {
      this.faults.clear();
      this.sentences = [];
      this.#listener.draw(focus);
    }
  }

  go(step: number): void {
    this.step = step;
    this.#listener.say('');
    this.#listener.draw('head');
  }

  /** Goes to where a field stands, and to the field. */
  reach(key: string): void {
    this.step = stepOf(key);
    this.#listener.draw(key);
  }

  undo(): void {
    this.#stand(this.history.undo(this.form), 'undo');
  }

  redo(): void {
    this.#stand(this.history.redo(this.form), 'redo');
  }

  /** A whole new form, as a step of undo. */
  replace(form: Form): void {
    this.history.keep(this.form);
    this.plan = undefined;
    this.step = 0;
    this.#stand(form, 'head');
  }

  stop(): void {
    this.#call?.abort();
  }

  /** Sends the room and waits; whatever it said before is forgotten. A second press while it works does nothing. */
  async calculate(focuses = true): Promise<void> {
    if (this.#call) {
      return;
    }

    const asked = requestOf(this.form, this.catalogue, this.#currency, this.reference);
    if (asked.faults.length > 0) {
      this.#refuse(ofFields(asked.faults, this.words, this.form.units));
      return;
    }

    this.#call = new AbortController();
    const form = JSON.stringify(this.form);
    this.#refuse(undefined);
    this.#listener.say(this.words.working);
    try {
      const plan = await this.service.plan(asked.request, this.#call.signal);
      this.#call = undefined;
      [this.plan, this.planned, this.#plannedForm, this.step] = [plan, asked.request, form, planStep];
      this.#listener.draw(focuses ? 'head' : undefined);
      this.#listener.say(this.words.done);
      this.#listener.planned(plan, asked.request);
    } catch (error) {
      const wasStopped = this.#call?.signal.aborted ?? false;
      this.#call = undefined;
      if (wasStopped) {
        this.#listener.draw('calculate');
        this.#listener.say(this.words.stopped);
        return;
      }

      const refusal = error instanceof Refusal ? error : new Refusal(undefined, undefined);
      this.#refuse(ofService(refusal, asked, this.words));
      this.#listener.refused(refusal);
    }
  }

  #refuse(refused: Refused | undefined): void {
    this.faults = refused?.fields ?? new Map();
    this.sentences = refused?.sentences ?? [];
    if (!refused) {
      this.#listener.draw('stop');
      return;
    }

    const first = [...this.faults.keys()].map(stepOf);
    this.step = first.length > 0 ? Math.min(...first) : this.step;
    this.#listener.say('');
    this.#listener.draw('summary');
  }

  #stand(form: Form, focus: string): void {
    this.form = form;
    this.#settled = structuredClone(form);
    this.faults = new Map();
    this.sentences = [];
    this.#listener.changed();
    this.#listener.draw(focus);
  }
}
