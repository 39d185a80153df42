import { Catalogue, type CatalogueData } from './catalogue.js';
import css from './calculator.css';
import { make } from './dom.js';
import { idOf } from './fields.js';
import { demoForm, emptyForm, type Form } from './form.js';
import { copyText, printAlone, save } from './keep.js';
import type { Units } from './lengths.js';
import type { PlanRequest } from './request.js';
import { orderText } from './result/order.js';
import { Refusal, Service, type FileKind, type Plan } from './service.js';
import { Session } from './session.js';
import { shell } from './shell.js';
import { sketchOf } from './sketch.js';
import { filled, languageOf } from './words/languages.js';

const style = new CSSStyleSheet();
style.replaceSync(css);
const ownAddress = new URL(import.meta.url).origin;

/**
 * A calculator for a strapped and boarded ceiling. Attributes in, events out; see docs/embedding.md.
 */
export class CeilingCalculator extends HTMLElement {
  static readonly observedAttributes = ['service', 'catalogue', 'currency', 'lang', 'locale', 'units', 'ruleset', 'reference', 'cart'];

  readonly #root = this.attachShadow({ mode: 'open' });
  readonly #shell = make('div', { class: 'shell', part: 'shell' });
  readonly #status = make('p', { class: 'live', role: 'status', part: 'status' });
  #session: Session | undefined;

  connectedCallback(): void {
    this.#root.adoptedStyleSheets = [style];
    this.#root.replaceChildren(make('div', { class: 'frame' }, this.#shell, this.#status));
    const isNew = this.#session === undefined;
    this.#session ??= new Session(this.#freshForm(), languageOf('en').words, 'en', {
      draw: focus => this.#draw(focus),
      say: text => this.#say(text),
      planned: (plan, request) => this.#tell('ceiling-plan', { plan, takeoff: plan.takeoff, request }),
      refused: refusal => this.#tell('ceiling-problem', { problem: refusal.problem }),
      changed: () => this.#changed(),
      mended: key => this.#mended(key),
    });
    this.#upgrade('catalogue');
    this.#readAttributes();
    void this.#loadCatalogue().then(() => {
      this.#draw();
      if (isNew && this.hasAttribute('demo')) {
        void this.#session?.calculate(false);
      }
    });
  }

  disconnectedCallback(): void {
    this.#session?.stop();
  }

  attributeChangedCallback(name: string, before: string | null, after: string | null): void {
    if (!this.#session || before === after) {
      return;
    }

    this.#readAttributes();
    if (name === 'catalogue') {
      void this.#loadCatalogue().then(() => this.#draw());
    } else {
      this.#draw();
    }
  }

  /** The yard's stock and prices; wins over the attribute of the same name. */
  set catalogue(data: CatalogueData) {
    if (this.#session) {
      this.#session.catalogue = new Catalogue(data);
      this.#draw();
    } else {
      Object.defineProperty(this, 'catalogue', { value: data, configurable: true, enumerable: true, writable: true });
    }
  }

  get catalogue(): CatalogueData {
    return this.#session?.catalogue.data ?? {};
  }

  /** The last plan, as the service gave it. */
  get plan(): Plan | undefined {
    return this.#session?.plan;
  }

  /** The request that the fields make now. */
  get request(): PlanRequest | undefined {
    return this.#session?.request;
  }

  /** Works out the plan, as the button does. */
  async calculate(): Promise<void> {
    await this.#session?.calculate();
  }

  #upgrade(name: 'catalogue'): void {
    if (Object.hasOwn(this, name)) {
      const value = this[name];
      delete (this as Partial<Record<'catalogue', CatalogueData>>)[name];
      this[name] = value;
    }
  }

  get #language(): string {
    return this.getAttribute('lang') ?? this.getAttribute('locale') ?? this.closest('[lang]')?.getAttribute('lang') ?? navigator.language;
  }

  get #locale(): string {
    const asked = this.getAttribute('locale') ?? this.#language;
    try {
      return Intl.getCanonicalLocales(asked)[0] ?? 'en';
    } catch {
      return 'en';
    }
  }

  get #units(): Units {
    const asked = this.getAttribute('units');
    const region = new Intl.Locale(this.#locale).maximize().region ?? '';
    return asked === 'imperial' || asked === 'metric' ? asked : ['US', 'CA', 'LR', 'MM'].includes(region) ? 'imperial' : 'metric';
  }

  get #ruleset(): string {
    const isCanadian = new Intl.Locale(this.#locale).region === 'CA' || this.#units === 'metric';
    return this.getAttribute('ruleset') ?? (isCanadian ? 'ca-nbc-2020' : 'us-irc-2021');
  }

  #freshForm(): Form {
    return this.hasAttribute('demo') ? demoForm(this.#units, this.#ruleset) : emptyForm(this.#units, this.#ruleset);
  }

  #readAttributes(): void {
    const session = this.#session!;
    const { words, dir, lang } = languageOf(this.#language);
    session.words = words;
    session.locale = languageOf(this.#locale).lang === 'en' && lang !== 'en' ? lang : this.#locale;
    session.currency = this.getAttribute('currency') ?? '';
    session.reference = this.getAttribute('reference') ?? '';
    session.service = new Service((this.getAttribute('service') ?? ownAddress).replace(/\/+$/, ''));
    this.#shell.lang = lang;
    this.#shell.dir = dir;
    this.#status.lang = lang;
    this.#status.dir = dir;
  }

  async #loadCatalogue(): Promise<void> {
    const address = this.getAttribute('catalogue');
    if (!address) {
      return;
    }

    try {
      const response = await fetch(new URL(address, document.baseURI));
      this.#session!.catalogue = new Catalogue((await response.json()) as CatalogueData);
    } catch {
      this.#say(this.#session!.words.catalogueFailed);
    }
  }

  #draw(focus?: string): void {
    const session = this.#session!;
    const active = this.#root.activeElement;
    const key = focus ?? (active instanceof HTMLElement ? active.dataset['key'] : undefined);
    this.#shell.replaceChildren(...shell(session, {
      print: () => printAlone(this),
      copy: () => void this.#copy(),
      save: kind => void this.#save(kind),
      order: () => this.#order(),
      startOver: () => session.replace(emptyForm(session.form.units, session.form.ruleset)),
      hasCart: this.hasAttribute('cart'),
    }));
    if (key) {
      this.#focus(key);
    }
  }

  /** A button that is no longer there gives its place to the heading. */
  #focus(key: string): void {
    const name = CSS.escape(key);
    const found = this.#shell.querySelector<HTMLElement>(`[data-key="${name}"], [data-key^="${name}="]:checked`) ?? this.#shell.querySelector<HTMLElement>('[data-key="head"]');
    found?.focus();
  }

  #changed(): void {
    const session = this.#session!;
    this.#shell.querySelector('[data-part="sketch"]')?.replaceChildren(sketchOf(session.form, session.words, session.locale));
    for (const name of ['undo', 'redo'] as const) {
      this.#shell.querySelector(`[data-key="${name}"]`)?.setAttribute('aria-disabled', String(!(name === 'undo' ? session.history.canUndo : session.history.canRedo)));
    }

    this.#tell('ceiling-change', { request: session.request });
  }

  /** Takes a fault away as soon as its field is touched; the list goes with its last one. */
  #mended(key: string): void {
    const name = CSS.escape(key);
    this.#shell.querySelector(`[data-key="${name}"]`)?.removeAttribute('aria-invalid');
    this.#shell.querySelectorAll(`#${idOf(key)}-fault, [data-of="${name}"]`).forEach(gone => gone.remove());
    if (this.#session!.faults.size === 0 && this.#session!.sentences.length === 0) {
      this.#shell.querySelector('[data-key="summary"]')?.remove();
    }
  }

  #say(text: string): void {
    this.#status.textContent = text;
  }

  #tell(name: string, detail: object): void {
    this.dispatchEvent(new CustomEvent(name, { detail, bubbles: true, composed: true }));
  }

  async #copy(): Promise<void> {
    const { plan, words } = this.#session!;
    this.#say(plan && (await copyText(orderText(this.#session!, plan))) ? words.copied : words.notCopied);
  }

  async #save(kind: FileKind): Promise<void> {
    const session = this.#session!;
    try {
      const name = save(kind, await session.service.file(kind, session.planned!));
      this.#say(filled(session.words.saved, { name }));
    } catch (error) {
      this.#say(error instanceof Refusal ? (error.problem?.detail ?? session.words.noAnswer) : session.words.noAnswer);
    }
  }

  #order(): void {
    const { plan, planned, words } = this.#session!;
    this.#tell('ceiling-order', { plan, takeoff: plan?.takeoff, request: planned });
    this.#say(words.ordered);
  }
}
