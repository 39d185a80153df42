import { makeSvg } from './dom.js';

// only shapes and text: what the service draws, and nothing that could run or load
const tags = new Set(['svg', 'g', 'defs', 'pattern', 'path', 'line', 'rect', 'circle', 'ellipse', 'polygon', 'polyline', 'text', 'tspan', 'title', 'desc', 'clipPath', 'marker']);
const unsafe = /^(on|style$|href$|xlink:|xmlns)/i;
const token = /<!--[\s\S]*?-->|<\?[\s\S]*?\?>|<\/([\w:-]+)\s*>|<([\w:-]+)((?:\s+[\w:-]+\s*=\s*(?:"[^"]*"|'[^']*'))*)\s*(\/?)>|([^<]+)/g;
const attribute = /([\w:-]+)\s*=\s*(?:"([^"]*)"|'([^']*)')/g;
const entities: Record<string, string> = { amp: '&', lt: '<', gt: '>', quot: '"', apos: "'" };

/**
 * The drawing as elements, built one by one from the service's text. A parser of the browser would be a sink that a page
 * under Trusted Types refuses; this reads only what a drawing holds, and drops any other element with all in it.
 */
export function drawingOf(text: string): SVGElement | undefined {
  const open: (SVGElement | undefined)[] = [];
  let whole: SVGElement | undefined;
  for (const [, closed, opened, attributes, alone, content] of text.matchAll(token)) {
    const parent = open.at(-1);
    if (content !== undefined) {
      if (parent && content.trim() !== '') {
        parent.append(plain(content));
      }
    } else if (closed !== undefined) {
      open.pop();
    } else if (opened !== undefined) {
      const isWanted = tags.has(opened) && (open.length === 0 ? whole === undefined : parent !== undefined);
      const element = isWanted ? makeSvg(opened, traitsOf(attributes ?? '')) : undefined;
      if (element) {
        parent?.append(element);
        whole ??= element;
      }

      if (!alone) {
        open.push(element);
      }
    }
  }

  return whole;
}

function traitsOf(text: string): Record<string, string> {
  const traits: Record<string, string> = {};
  for (const [, name, double, single] of text.matchAll(attribute)) {
    const value = plain(double ?? single ?? '');
    if (name && !unsafe.test(name) && !/url\((?!#)/i.test(value)) {
      traits[name] = value;
    }
  }

  return traits;
}

function plain(text: string): string {
  return text.replace(/&(?:#x([\da-f]+)|#(\d+)|(\w+));/gi, (all, hex?: string, decimal?: string, name?: string) =>
    hex ? String.fromCodePoint(parseInt(hex, 16)) : decimal ? String.fromCodePoint(Number(decimal)) : (entities[name ?? ''] ?? all));
}
