import { ar } from './ar.js';
import { en, type Words } from './en.js';
import { fr } from './fr.js';

const languages: Record<string, { words: Words; dir: 'ltr' | 'rtl' }> = {
  en: { words: en, dir: 'ltr' },
  fr: { words: fr, dir: 'ltr' },
  ar: { words: ar, dir: 'rtl' },
};

/** The words of a language tag, its direction, and the tag that is really spoken: English where the language is not known. */
export function languageOf(tag: string): { words: Words; dir: 'ltr' | 'rtl'; lang: string } {
  const known = tag.toLowerCase().split('-')[0] ?? '';
  return languages[known] ? { ...languages[known], lang: tag } : { ...languages['en']!, lang: 'en' };
}

/** Fills `{name}` in. */
export function filled(text: string, values: Record<string, string | number>): string {
  return text.replace(/\{(\w+)\}/g, (whole, name: string) => String(values[name] ?? whole));
}
