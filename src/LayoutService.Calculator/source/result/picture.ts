import type { Desk } from '../desk.js';
import { button, make } from '../dom.js';
import { drawingOf } from '../drawing.js';
import type { Plan } from '../service.js';

const scales = [1, 1.5, 2, 3];

/** The drawing, in a frame that scrolls, with buttons that make it larger and smaller. */
export function picture(desk: Desk, plan: Plan): HTMLElement[] {
  const { words } = desk;
  const svg = plan.drawing ? drawingOf(plan.drawing) : undefined;
  if (!svg) {
    return [];
  }

  svg.removeAttribute('width');
  svg.removeAttribute('height');
  svg.setAttribute('direction', 'ltr');
  const frame = make('div', { class: 'picture', part: 'drawing', tabindex: 0, role: 'region', 'aria-label': words.drawingLabel, dir: 'ltr' }, svg);
  let at = 0;
  const larger = button(words.zoomIn, () => zoom(1));
  const smaller = button(words.zoomOut, () => zoom(-1));
  const zoom = (by: number): void => {
    at = Math.min(scales.length - 1, Math.max(0, at + by));
    svg.style.setProperty('--zoom', String(scales[at] ?? 1));
    larger.setAttribute('aria-disabled', String(at === scales.length - 1));
    smaller.setAttribute('aria-disabled', String(at === 0));
  };
  zoom(0);
  return [make('div', { class: 'bar screen' }, larger, smaller), frame];
}
