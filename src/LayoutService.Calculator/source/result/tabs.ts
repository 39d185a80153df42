import { make } from '../dom.js';

export interface Tab {
  key: string;
  name: string;
  content: HTMLElement[];
}

/** Tabs by the ARIA pattern: arrows move, one is in the order of tabbing. On paper all panels show. */
export function tabs(label: string, all: readonly Tab[], first: string, chosen: (key: string) => void): HTMLElement[] {
  const heads = all.map(tab => make('button', { type: 'button', role: 'tab', id: `tab-${tab.key}`, 'aria-controls': `panel-${tab.key}`, 'data-key': `tab-${tab.key}`, part: 'tab' }, tab.name));
  const panels = all.map(tab => make('section', { role: 'tabpanel', id: `panel-${tab.key}`, 'aria-labelledby': `tab-${tab.key}`, class: 'panel', part: 'panel' },
    make('h4', { class: 'paper' }, tab.name), ...tab.content));
  const choose = (index: number, moves: boolean): void => {
    heads.forEach((head, at) => {
      head.setAttribute('aria-selected', String(at === index));
      head.tabIndex = at === index ? 0 : -1;
      panels[at]!.hidden = at !== index;
    });
    if (moves) {
      heads[index]!.focus();
      heads[index]!.scrollIntoView({ block: 'nearest', inline: 'nearest' });
    }

    chosen(all[index]!.key);
  };
  heads.forEach((head, index) => {
    head.addEventListener('click', () => choose(index, false));
    head.addEventListener('keydown', event => {
      const forward = getComputedStyle(head).direction === 'rtl' ? 'ArrowLeft' : 'ArrowRight';
      const back = forward === 'ArrowRight' ? 'ArrowLeft' : 'ArrowRight';
      const to = event.key === forward ? index + 1 : event.key === back ? index - 1 : event.key === 'Home' ? 0 : event.key === 'End' ? heads.length - 1 : undefined;
      if (to !== undefined) {
        event.preventDefault();
        choose((to + heads.length) % heads.length, true);
      }
    });
  });
  choose(Math.max(0, all.findIndex(tab => tab.key === first)), false);
  return [make('div', { role: 'tablist', 'aria-label': label, class: 'tabs screen', part: 'tabs' }, ...heads), ...panels];
}
