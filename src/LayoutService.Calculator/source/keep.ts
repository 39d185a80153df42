import { make } from './dom.js';
import { files, type FileKind } from './service.js';

/** Puts a text where it can be pasted; false when the browser does not let it. */
export async function copyText(text: string): Promise<boolean> {
  try {
    await navigator.clipboard.writeText(text);
    return true;
  } catch {
    return false;
  }
}

/** Keeps a file as a download. */
export function save(kind: FileKind, content: Blob): string {
  const address = URL.createObjectURL(content);
  make('a', { href: address, download: files[kind].name }).click();
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
  return files[kind].name;
}

const away = 'data-ceiling-away';

/** Prints one element of a page alone: all that stands beside it or beside what holds it is left off the paper. */
export function printAlone(element: Element): void {
  const marked: Element[] = [];
  for (let inner: Element = element; ;) {
    const holder: ParentNode | null = inner.parentNode;
    for (const other of holder?.children ?? []) {
      if (other !== inner && !(other instanceof HTMLHeadElement)) {
        other.setAttribute(away, '');
        marked.push(other);
      }
    }

    const next = holder instanceof ShadowRoot ? holder.host : holder;
    if (!(next instanceof Element)) {
      break;
    }

    inner = next;
  }

  const rule = new CSSStyleSheet();
  rule.replaceSync(`@media print { [${away}] { display: none !important } }`);
  document.adoptedStyleSheets = [...document.adoptedStyleSheets, rule];
  const done = (): void => {
    marked.forEach(other => other.removeAttribute(away));
    document.adoptedStyleSheets = document.adoptedStyleSheets.filter(sheet => sheet !== rule);
  };
  addEventListener('afterprint', done, { once: true });
  print();
}
