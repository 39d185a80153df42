type Child = Node | string | null | undefined | false;
type Trait = string | number | boolean | undefined | ((event: Event) => void);

/** An element by its tag, with attributes, listeners (functions) and children. No markup is ever parsed. */
export function make<K extends keyof HTMLElementTagNameMap>(tag: K, traits: Record<string, Trait> = {}, ...children: Child[]): HTMLElementTagNameMap[K] {
  const element = document.createElement(tag);
  for (const [name, trait] of Object.entries(traits)) {
    if (typeof trait === 'function') {
      element.addEventListener(name, trait);
    } else if (trait === true) {
      element.setAttribute(name, '');
    } else if (name === 'value') {
      (element as unknown as HTMLInputElement).value = String(trait);
    } else if (trait !== false && trait !== undefined) {
      element.setAttribute(name, String(trait));
    }
  }

  element.append(...children.filter(child => child !== null && child !== undefined && child !== false));
  return element;
}

const svgSpace = 'http://www.w3.org/2000/svg';

export function makeSvg(tag: string, traits: Record<string, string | number> = {}, ...children: (Node | string)[]): SVGElement {
  const element = document.createElementNS(svgSpace, tag);
  for (const [name, trait] of Object.entries(traits)) {
    element.setAttribute(name, String(trait));
  }

  element.append(...children);
  return element;
}

export function button(label: string, press: () => void, traits: Record<string, Trait> = {}): HTMLButtonElement {
  return make('button', { type: 'button', part: 'button', click: press, ...traits }, label);
}

/** A table with a caption that names it and headed columns. Cells may be text or nodes; it scrolls sideways where it is narrow. Tight columns do not break their lines. */
export function table(caption: string, heads: readonly string[], rows: readonly (readonly (Node | string)[])[], numbers: readonly number[] = [], tight: readonly number[] = [], showsCaption = true): HTMLElement {
  const cell = (tag: 'td' | 'th', content: Node | string, index: number, scope?: string): HTMLElement =>
    make(tag, { ...(numbers.includes(index) ? { class: 'number' } : tight.includes(index) ? { class: 'tight' } : {}), ...(scope ? { scope } : {}) }, content);
  const body = rows.map(row => make('tr', {}, ...row.map((content, index) => (index === 0 ? cell('th', content, index, 'row') : cell('td', content, index)))));
  return make('div', { class: 'scroller', tabindex: 0, role: 'region', 'aria-label': caption },
    make('table', { part: 'table' },
      make('caption', showsCaption ? {} : { class: 'unseen' }, caption),
      make('thead', {}, make('tr', {}, ...heads.map((head, index) => cell('th', head, index, 'col')))),
      make('tbody', {}, ...body)));
}
