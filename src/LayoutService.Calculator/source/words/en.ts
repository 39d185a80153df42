/** Everything that the calculator says, in English. `{…}` is filled in. */
export const en = {
  title: 'Ceiling calculator',
  steps: ['Room', 'Joists', 'Ceiling', 'Plan'] as const,
  stepsLabel: 'Steps',
  back: 'Back', next: 'Next: {step}', calculate: 'Work out the plan', again: 'Work it out again', undo: 'Undo', redo: 'Redo', startOver: 'Start over', stop: 'Stop',
  working: 'Working out rows, sheets and cuts…', stopped: 'Stopped. Nothing was changed.', done: 'The plan is ready.',

  units: 'Measure in', unitWords: { imperial: 'Feet and inches', metric: 'Millimetres' },
  lengthHint: { imperial: 'Write lengths as 12\' 6-1/2" or 150-1/2 in.', metric: 'Write lengths as 3810 or 3.81 m.' },
  roomIntro: 'Stand at the front wall and look into the room. Measure from framing to framing.',
  shape: 'Shape of the room', shapeWords: { rectangle: 'Rectangle', l: 'L', corners: 'Corner by corner' },
  across: 'Left wall to right wall', depth: 'Front wall to back wall',
  notch: 'Which corner is cut out', notchWords: { 'back-right': 'Back right', 'back-left': 'Back left', 'front-right': 'Front right', 'front-left': 'Front left' },
  notchAcross: 'Cut-out, left to right', notchDepth: 'Cut-out, front to back',
  walls: 'Walls, one after the other', wallsHint: 'Start at the front left corner and walk along the front wall to the right. The last wall back to the start closes by itself.',
  wall: 'Wall {n}', wallWay: 'Wall {n} goes', wallLength: 'Length of wall {n}', wallAcross: 'Wall {n}, left to right', wallDepth: 'Wall {n}, front to back',
  wayWords: {
    right: 'to the right', left: 'to the left', back: 'to the back', front: 'to the front',
    'back-right': 'slanting back and right', 'back-left': 'slanting back and left', 'front-right': 'slanting front and right', 'front-left': 'slanting front and left',
  },
  addWall: 'Add a wall', removeWall: 'Remove wall {n}',
  posts: 'Posts and chimneys', addPost: 'Add a post or chimney', removePost: 'Remove post {n}', post: 'Post {n}',
  postLeft: 'Post {n}: from the left wall', postFront: 'Post {n}: from the front wall', postAcross: 'Post {n}: size left to right', postDepth: 'Post {n}: size front to back',
  height: 'Floor to underside of joists', heightHint: 'At the lowest place. Leave empty if you do not know; headroom is then not checked.',
  buildUp: 'Flooring still to come', buildUpHint: 'Thickness of underfloor and flooring.',
  use: 'What the room is for', useWords: { '': 'Not said', habitable: 'Living space', bedroom: 'Bedroom', hallway: 'Hallway', bathroom: 'Bathroom', laundry: 'Laundry', basement: 'Basement', 'unfinished-basement': 'Unfinished basement' },

  run: 'Joists run', runWords: { y: 'Front to back', x: 'Left to right' },
  joists: 'Where the joists are', joistsWords: { regular: 'Evenly spaced', measured: 'As measured, one by one' },
  spacing: 'Joist spacing, middle to middle', first: 'First joist: wall to its middle', firstFrom: { y: 'From the left wall.', x: 'From the front wall.' },
  positions: 'Middle of each joist', positionsHint: { y: 'From the left wall, one tape reading per joist, with commas between.', x: 'From the front wall, one tape reading per joist, with commas between.' }, positionsComma: 'With a decimal comma, put semicolons between.',
  joistSize: 'Joist size', sizeUnknown: 'Not known',

  ruleset: 'Building code to check against',
  rulesetWords: { 'us-irc-2021': 'United States, IRC 2021', 'us-irc-2024': 'United States, IRC 2024', 'ca-nbc-2020': 'Canada, NBC 2020', 'ca-on-2024': 'Ontario, OBC 2024' },
  straps: 'Straps', strap: 'Strap size', rowSpacing: 'Rows no further apart than', strapLengths: 'Strap lengths you can get in',
  sheets: 'Gypsum sheets', board: 'Kind of sheet', boardWords: { regular: 'Regular', lightweight: 'Lightweight', 'ceiling-board': 'Ceiling board (stiffer)', 'type-x': 'Type X (fire resistant)' },
  thickness: 'Thickness', sheetLengths: 'Sheet sizes you can get in', lengthsHint: 'Untick what does not get round the stairs.',
  extras: 'Lights and insulation', lights: 'Number of lights', lightsHint: 'Slim lights in a regular grid, a few more where the grid needs them, kept off the straps. Leave empty for none.', lightHole: 'Hole for one light',
  lightsTouchBatts: 'The lights are marked for contact with insulation (IC)', batts: 'Insulation between the joists', battWords: { none: 'None', sound: 'Against sound', thermal: 'Against cold' },

  sketch: 'Sketch of the room', sketchEmpty: 'The sketch appears once the lengths are filled in.', sketchOf: 'Room with {n} walls: {walls}.',
  understood: '= {text}',
  faultsHead: { one: 'One thing to put right', other: '{n} things to put right' },
  problemHead: 'No plan was made',
  faults: {
    empty: 'Fill this in.', unit: 'Say feet or inches: 12\' or 12".', unreadable: '“{text}” is no length. {hint}', zero: 'This must be more than nothing.',
    notch: 'The cut-out must be smaller than the room.', fewWalls: 'Give at least two walls; the last closes by itself.', noStock: 'Tick at least one.', count: 'Give a whole number, at most 999.',
  },
  served: {} as Record<string, string>,
  noAnswer: 'The planning service could not be reached. Check the connection and try again.', busy: 'The planning service is busy. Try again in {n} seconds.', failed: 'The planning service failed. Try again later.',
  remedies: 'What could help', place: 'Where',
  catalogueFailed: 'The price list could not be loaded; quantities are shown without prices.',

  noPlanYet: 'No plan yet. Fill in the room and the joists, then work out the plan.',
  stale: 'You changed something after this plan was worked out.',
  totals: 'In short', rows: 'Rows of straps', strapPieces: 'Strap pieces', lengthsToBuy: 'Lengths of wood to buy', sheetsToBuy: 'Sheets to buy', finishedHeight: 'Finished ceiling height', mass: 'Weight of everything', cost: 'Cost of priced items', checksFailed: 'Rules not met', fixturesMoved: 'Lights moved', heaviestLift: 'Heaviest lift',
  unpriced: 'Without a price: {list}.',
  tabs: { drawing: 'Drawing', order: 'Order', cuts: 'Cuts', marks: 'Row marks', checks: 'Checks', work: 'Work order' }, tabsLabel: 'Parts of the plan',
  zoomIn: 'Larger', zoomOut: 'Smaller', drawingLabel: 'Drawing of the ceiling, seen from above',
  item: 'Item', buy: 'Buy', amount: 'Amount', packs: '{n} × {size} {unit}', counted: {
    length: { one: 'length', other: 'lengths' }, sheet: { one: 'sheet', other: 'sheets' }, batt: { one: 'batt', other: 'batts' }, fastener: { one: 'piece', other: 'pieces' }, panel: { one: 'panel', other: 'panels' },
  } as Record<string, { one: string; other: string }>,
  total: 'Total', sku: 'Yard number', itemWords: {} as Record<string, string>,
  cutWood: 'Wood: what to cut from each length', cutSheets: 'Sheets: what to cut from each sheet', length: 'From', cutsOf: 'Cut', leftOver: 'Left over', none: 'nothing', size: 'Size',
  marksHint: {
    y: 'Hold the tape to the front wall and mark both sides of the room. Draw the line at the mark; the strap lies on the side named.',
    x: 'Hold the tape to the left wall and mark front and back. Draw the line at the mark; the strap lies on the side named.',
  },
  row: 'Row', markStart: { y: 'Mark at the left end', x: 'Mark at the front end' }, markEnd: { y: 'Mark at the right end', x: 'Mark at the back end' }, side: 'Strap lies', sideWords: { far: 'beyond the line', near: 'before the line' } as Record<string, string>, why: 'Why here',
  status: 'Result', rule: 'Rule', has: 'Plan has', limit: 'Rule asks', source: 'Source', statusWords: { pass: 'Met', marginal: 'Just met', fail: 'Not met', 'not-checked': 'Not checked' } as Record<string, string>, atMost: 'at most {n}', atLeast: 'at least {n}',
  checksNote: 'Checked by figures only. Local codes, the inspector and licensed trades decide.',
  cautions: 'Mind this', hold: 'Stop until this is checked', assumed: 'What was assumed',
  keep: 'Keep, send and print', print: 'Print', copy: 'Copy the order', copied: 'The order is copied.', notCopied: 'The browser refused to copy.', download: { pdf: 'Job sheet (PDF)', csv: 'Order (CSV)', xlsx: 'Order (Excel)', svg: 'Drawing (SVG)' }, saved: '{name} is saved.', addToCart: 'Add the order to the cart', ordered: 'The order was handed to the page.',
};

type Loose<T> = T extends string ? string : T extends readonly string[] ? readonly string[] : { [K in keyof T]: Loose<T[K]> };

/** The same words in another language: each must be there. */
export type Words = Loose<typeof en>;
