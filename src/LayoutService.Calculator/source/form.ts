import type { Units } from './lengths.js';

export type Shape = 'rectangle' | 'l' | 'corners';

/** Where the notch of an L stands, seen from the front wall. */
export type Notch = 'back-right' | 'back-left' | 'front-right' | 'front-left';

/** Which way a wall goes from the corner before it. Slanted ones have a length across and one in depth. */
export type Way = 'right' | 'left' | 'back' | 'front' | 'back-right' | 'back-left' | 'front-right' | 'front-left';

export interface WallEntry {
  way: Way;
  length: string;

  /** The length in depth of a slanted wall. */
  depth: string;
}

/** A post, chimney or the like that the ceiling goes round; a rectangle. */
export interface PostEntry {
  left: string;
  front: string;
  across: string;
  depth: string;
}

/** What a person has typed and chosen, as it stands in the fields. Plain data, so that a copy is a step of undo. */
export interface Form {
  units: Units;
  shape: Shape;
  across: string;
  depth: string;
  notch: Notch;
  notchAcross: string;
  notchDepth: string;
  walls: WallEntry[];
  posts: PostEntry[];
  height: string;
  buildUp: string;
  use: string;
  run: 'x' | 'y';
  joists: 'regular' | 'measured';
  spacing: string;
  first: string;
  positions: string;
  joistSize: string;
  ruleset: string;
  strap: string;
  rowSpacing: string;
  strapLengths: string[];
  board: string;
  thickness: string;
  sheetLengths: string[];
  batts: 'none' | 'sound' | 'thermal';
  lights: string;
  lightHole: string;
  lightsTouchBatts: boolean;
}

/** An empty room with the usual choices. */
export function emptyForm(units: Units, ruleset: string): Form {
  return { ...blank, ...usual[units], units, ruleset };
}

/** What is usual in each system of units; sizes of material are not converted but chosen anew. */
export const usual = {
  imperial: { spacing: '16"', rowSpacing: '16"', thickness: '1/2"', lightHole: '4-1/8"' },
  metric: { spacing: '400 mm', rowSpacing: '400 mm', thickness: '12.7 mm', lightHole: '105 mm' },
} as const;

/** Thicknesses of board that are sold. */
export const thicknesses = { imperial: ['1/2"', '5/8"'], metric: ['12.7 mm', '15.9 mm'] } as const;

/** Row spacings that board is hung at. */
export const rowSpacings = { imperial: ['12"', '16"', '24"'], metric: ['300 mm', '400 mm', '600 mm'] } as const;

/** A room that shows what the calculator does: an L with a post, joists as found, lights and batts. */
export function demoForm(units: Units, ruleset: string): Form {
  return {
    ...emptyForm('imperial', ruleset),
    shape: 'l', across: '24\' 6-1/2"', depth: '19\' 5"', notch: 'back-right', notchAcross: '10\' 5"', notchDepth: '8\' 6"',
    height: '7\' 10"', buildUp: '3/4"', use: 'habitable',
    posts: [{ left: '12\' 2"', front: '8\' 0"', across: '4"', depth: '4"' }],
    run: 'y', joists: 'measured',
    positions: '8-1/2", 24-3/4", 40-1/2", 56-1/4", 72-3/4", 88-1/2", 90", 105-1/2", 121-1/4", 137-1/2", 153-3/4", 169-1/2", 185-1/4", 201-1/2", 217-3/4", 233-1/2", 249-1/4", 265-1/2", 281-1/4", 292"',
    batts: 'sound', lights: '10',
    ...(units === 'metric' ? metricDemo : {}),
    ruleset,
  };
}

const blank = {
  shape: 'rectangle' as Shape, across: '', depth: '', notch: 'back-right' as Notch, notchAcross: '', notchDepth: '',
  walls: [] as WallEntry[], posts: [] as PostEntry[], height: '', buildUp: '', use: '',
  run: 'y' as const, joists: 'regular' as const, first: '', positions: '', joistSize: '2x10',
  strap: '1x3', strapLengths: [] as string[], board: 'regular', sheetLengths: [] as string[],
  batts: 'none' as const, lights: '', lightsTouchBatts: false,
};

const metricDemo: Partial<Form> = {
  units: 'metric', ...usual.metric, across: '7480 mm', depth: '5920 mm', notchAcross: '3180 mm', notchDepth: '2590 mm', height: '2390 mm', buildUp: '19 mm',
  posts: [{ left: '3710 mm', front: '2440 mm', across: '100 mm', depth: '100 mm' }],
  positions: '215; 628; 1030; 1430; 1848; 2248; 2286; 2680; 3080; 3492; 3905; 4305; 4705; 5118; 5530; 5930; 6330; 6743; 7143; 7415',
};
