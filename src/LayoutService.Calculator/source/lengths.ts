/** A length as a whole number of 1/8000 mm, the service's own unit, in which 1/64 in and 0.1 mm are whole. */
export type Ticks = number;

export type Units = 'imperial' | 'metric';

const inch = 203_200;
const millimetre = 8_000;

const unitTicks: Record<string, Ticks> = { foot: 12 * inch, inch, mm: millimetre, cm: 10 * millimetre, m: 1000 * millimetre };

const unitNames: Record<string, string> = {
  "'": 'foot', ft: 'foot', foot: 'foot', feet: 'foot', pi: 'foot', pied: 'foot', pieds: 'foot',
  '"': 'inch', in: 'inch', inch: 'inch', inches: 'inch', po: 'inch', pouce: 'inch', pouces: 'inch',
  mm: 'mm', cm: 'cm', m: 'm', 'مم': 'mm', 'سم': 'cm', 'م': 'm',
};

const amount = String.raw`(\d+(?:\.\d+)?)(?:[ -]+(\d+)\/(\d+))?|(\d+)\/(\d+)`;
const oneUnit = new RegExp(String.raw`^(?:${amount}) ?([^\d .]*)$`, 'u');
const feetThenInches = new RegExp(String.raw`^(\d+(?:\.\d+)?) ?('|ft|foot|feet|pi|pieds?)[ -]*(?:${amount}) ?("|in|inch|inches|po|pouces?)?$`, 'u');

export type Read = { ticks: Ticks } | { wrong: 'empty' | 'unit' | 'unreadable' };

/**
 * Reads a length as a person writes it: 12' 6 1/2", 12 pi 6 po, 150½ in, 3,81 m, 3810.
 * A bare number is millimetres in metric units. In imperial units it is inches where `bare` says so; along a wall it is
 * refused, since twelve may be feet or inches there.
 */
export function readLength(text: string, units: Units, bare: boolean): Read {
  const plain = plainText(text);
  if (plain === '') {
    return { wrong: 'empty' };
  }

  const both = feetThenInches.exec(plain);
  if (both) {
    const [, feet, , whole, over, under, overAlone, underAlone] = both;
    return finite(Number(feet) * 12 * inch + measure(whole, over ?? overAlone, under ?? underAlone, inch));
  }

  const one = oneUnit.exec(plain);
  if (!one) {
    return { wrong: 'unreadable' };
  }

  const [, whole, over, under, overAlone, underAlone, mark] = one;
  if (mark === '' && units === 'imperial' && !bare) {
    return { wrong: 'unit' };
  }

  const unit = mark === '' ? (units === 'imperial' ? 'inch' : 'mm') : unitNames[mark ?? ''];
  return unit ? finite(measure(whole, over ?? overAlone, under ?? underAlone, unitTicks[unit]!)) : { wrong: 'unreadable' };
}

/** Ticks when a text can be read, else nothing. */
export function ticksOf(text: string, units: Units, bare: boolean): Ticks | undefined {
  const read = readLength(text, units, bare);
  return 'ticks' in read ? read.ticks : undefined;
}

/** The number that goes on the wire, in inches or millimetres; nine decimals are finer than a tick. */
export function onWire(ticks: Ticks, units: Units): number {
  return Number((ticks / (units === 'imperial' ? inch : millimetre)).toFixed(9));
}

/** From a number of an answer, in inches or millimetres. */
export function fromWire(value: number, units: Units): Ticks {
  return Math.round(value * (units === 'imperial' ? inch : millimetre));
}

/** As it is read off a tape: feet, inches and sixteenths, or millimetres. */
export function tapeText(ticks: Ticks, units: Units, locale: string): string {
  if (units === 'metric') {
    return `${new Intl.NumberFormat(locale, { maximumFractionDigits: 1, useGrouping: false }).format(ticks / millimetre)} mm`;
  }

  const sixteenths = Math.round((ticks * 16) / inch);
  const feet = Math.floor(sixteenths / 192);
  const inches = inchText(sixteenths - feet * 192);
  return feet === 0 ? `${inches}"` : `${feet}' ${inches}"`;
}

/** The same length said another way, to show how a text was understood: all inches, or metres. */
export function otherText(ticks: Ticks, units: Units, locale: string): string {
  return units === 'metric'
    ? `${new Intl.NumberFormat(locale, { maximumFractionDigits: 4 }).format(ticks / millimetre / 1000)} m`
    : `${inchText(Math.round((ticks * 16) / inch))}"`;
}

function inchText(sixteenths: number): string {
  const whole = Math.floor(sixteenths / 16);
  let over = sixteenths - whole * 16;
  let under = 16;
  while (over > 0 && over % 2 === 0) {
    over /= 2;
    under /= 2;
  }

  return over === 0 ? `${whole}` : whole === 0 ? `${over}/${under}` : `${whole}-${over}/${under}`;
}

function measure(whole: string | undefined, over: string | undefined, under: string | undefined, unit: Ticks): number {
  return Number(whole ?? 0) * unit + (over === undefined ? 0 : (Number(over) * unit) / Number(under));
}

function finite(ticks: number): Read {
  return Number.isFinite(ticks) && ticks < 1e12 ? { ticks: Math.round(ticks) } : { wrong: 'unreadable' };
}

const fractions: Record<string, string> = { '¼': '1/4', '½': '1/2', '¾': '3/4', '⅛': '1/8', '⅜': '3/8', '⅝': '5/8', '⅞': '7/8' };

/** One way of writing: plain marks, plain digits, a point for the decimal comma. */
function plainText(text: string): string {
  return text
    .replace(/[\u00A0\u2000-\u200A\u202F]/g, ' ')
    .replace(/[¼½¾⅛⅜⅝⅞]/g, mark => ` ${fractions[mark]}`)
    .replace(/[\u0660-\u0669]/g, digit => String(digit.charCodeAt(0) - 0x660))
    .replace(/[\u06F0-\u06F9]/g, digit => String(digit.charCodeAt(0) - 0x6f0))
    .replace(/\u066B/g, ',')
    .replace(/''|[\u2033\u201C\u201D\u02BA\uFF02]/g, '"')
    .replace(/[\u2032\u2018\u2019\u02B9\u00B4\uFF07]/g, "'")
    .replace(/[\u2010-\u2014\u2212]/g, '-')
    .replace(/\u2044/g, '/')
    .replace(/(\d),(\d)/g, '$1.$2')
    .replace(/^(\d{1,3}) (\d{3})(?=\.\d+\D*$|\D*$)/, '$1$2')
    .replace(/\s+/g, ' ')
    .trim()
    .toLowerCase();
}
