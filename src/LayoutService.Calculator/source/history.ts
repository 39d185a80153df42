import type { Form } from './form.js';

/** Steps that can be undone and done again, the newest last. */
export class History {
  #past: Form[] = [];
  #future: Form[] = [];
  static readonly most = 100;

  get canUndo(): boolean {
    return this.#past.length > 0;
  }

  get canRedo(): boolean {
    return this.#future.length > 0;
  }

  /** Takes note of how the form stood before a change. */
  keep(before: Form): void {
    this.#past = [...this.#past, structuredClone(before)].slice(-History.most);
    this.#future = [];
  }

  undo(now: Form): Form {
    const before = this.#past.pop();
    if (before) {
      this.#future.push(structuredClone(now));
    }

    return before ?? now;
  }

  redo(now: Form): Form {
    const after = this.#future.pop();
    if (after) {
      this.#past.push(structuredClone(now));
    }

    return after ?? now;
  }
}
