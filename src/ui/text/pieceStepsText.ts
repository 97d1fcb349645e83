/** What the page of each test piece says to set, to do and to beware of. Manners of the workshop: common practice, no source. */
import type { Piece, PieceId, PiecesAsked } from '../../core/coupons/piece.ts';
import { contoursFor } from '../../core/print/wholeLines.ts';
import { angle, counted, inWords, percent } from './numbers.ts';
import { cornersInOrder } from './pieceBoxesText.ts';
import { mm, radiusText, sizeText, spanText } from './pieceText.ts';
import { capital } from './said.ts';

type Lines = (piece: Piece, asked: PiecesAsked) => readonly string[];

/** Bends a minute by hand, at most two a second: faster ones warm the strip. */
const RATE = 'Bend evenly, at most twice a second: faster bending warms the strip.';
const COUNT =
  'Count by hand and strike each hundred. Stop when you like: “still whole” at that count tells something too.';

function contoursText(count: number): string {
  const { contours, middleLine } = contoursFor(count);
  const middle = middleLine ? 'one line along the middle' : '';
  const round = contours > 0 ? `${inWords(contours)} contour${contours === 1 ? '' : 's'}` : '';
  return [round, middle].filter((words) => words !== '').join(' and ');
}

/** “One contour lays 2 lines.”, for each count that the piece has. */
function wholeText({ strips }: Piece): string | undefined {
  const counts = [...new Set(strips.filter(({ countOf }) => countOf === 'lines').map(({ count }) => count))];
  const [first] = counts;
  if (first === undefined) return undefined;
  const even = 'let nothing widen or narrow lines to fill gaps';
  if (counts.length === 1) return `${capital(counted(first, 'line'))} across: ${contoursText(first)}; ${even}.`;
  const most = Math.max(...counts);
  return `At least ${inWords(contoursFor(most).contours)} contours, so that all ${most} lines are laid; odd counts take one line along the middle; ${even}.`;
}

function layersText({ strips }: Piece): string | undefined {
  const isLayered = strips.some(({ countOf }) => countOf === 'layers');
  return isLayered ? 'Set the first layer with care: it is part of every thin section here.' : undefined;
}

/** What to print a piece with. */
export function settingsText(piece: Piece, { profile, filament }: PiecesAsked): readonly string[] {
  const { lineWidth, nozzle, layerHeight, firstLayerHeight } = profile;
  return [
    `${filament.name}, lines ${mm(lineWidth)} wide from a ${mm(nozzle, 1)} nozzle, layers ${mm(layerHeight)}, the first ${mm(firstLayerHeight)}.`,
    wholeText(piece),
    layersText(piece),
    'Print it as it lies in the file; pads filled solid; start points on the pads.',
    'A brim where it lifts, cut off before the test. Let it cool on the plate, or it takes a set.',
  ].filter((line) => line !== undefined);
}

const ladder: Lines = ({ strips }) => {
  const layered = strips.some(({ countOf }) => countOf === 'layers');
  return [
    'Close the caliper, wipe its jaws and set it to zero.',
    `Measure each rung half-way between its ends${layered ? '' : ' and half-way up: the first layer is pressed wider'}. Close the jaws gently; they must not dent it.`,
    'Measure three times along the rung, write all three down, and their mean.',
    `A rung that was not laid, or has a gap between its ${layered ? 'layers' : 'lines'}, is left empty; say so under “Seen”.`,
  ];
};

const comb: Lines = ({ strips }, { turn }) => [
  'Hold the spine of the comb, and one grip between two fingers.',
  `Turn the grip to ${angle(turn)} and back, so that the strip bends as an arc and not at its root alone. A mark beside your hand keeps the angle.`,
  'One way: to one side only. Both ways: as far to the other side as well, and count one for there and back. Tick which.',
  RATE,
  COUNT,
  `Begin with the shortest: it strains most${strainSpan(strips)} and breaks first. Under “Seen”: where it broke, and from when it was white.`,
];

function strainSpan(strips: Piece['strips']): string {
  const strains = strips.flatMap(({ strain }) => strain ?? []);
  return strains.length > 0 ? ` (${percent(Math.max(...strains))})` : '';
}

const radii: Lines = (piece) => {
  const [largest] = cornersInOrder(piece);
  const from = largest ? ` (${radiusText(largest.radius)} mm)` : '';
  return [
    `Begin at the largest radius${from}. Lay a strip against the flat side, hold it down there, and wrap it round the corner in about one second.`,
    'Let it lie close on the round for a second, no more, and let go. Bend it once only.',
    'Look at the outer side in slanting light, then with a lens: unmarked, whitened, or cracked. Tick one.',
    'Go on to the next smaller radius with a fresh stretch of strip: one that was bent before tells nothing.',
    'Stop at the first crack. This is in the manner of the cylindrical mandrel bend test of coatings (ISO 1519, from memory).',
    `If you go on: wrap and unwrap one strip over one corner until it breaks. ${RATE} ${COUNT}`,
  ];
};

const bar: Lines = ({ arm, grams, strips }) => {
  const [strip] = strips;
  const weight = grams === undefined ? 'a weight that you know' : `about ${grams} g that you have weighed`;
  const thin = strip ? ` Its ${mm(strip.thickness)} must point up and down, its ${mm(strip.depth, 0)} across.` : '';
  return [
    `Clamp the pad flat to the edge of a table, right up to where the bar begins${arm === undefined ? '' : `: ${mm(arm, 0)} stick out to the eye`}.${thin}`,
    'Stand a ruler beside the eye and read its height.',
    `Hang ${weight} from the eye without a jerk, wait until it is still, and read again within ten seconds: later it creeps.`,
    'Sag is the one height less the other. Take the weight off; after a minute it must be back where it was. If not, take less weight.',
    'Do it three times. Write down the weight with its hook and thread.',
  ];
};

const hold: Lines = ({ slotTurn, slotRadius = 0 }) => [
  `Press a strip into the slot, its thin way across${slotTurn === undefined ? '' : `; it is then bent by ${angle(slotTurn)} over ${radiusText(slotRadius)} mm`}. Write down day and hour.`,
  'Leave it for a day at the warmth of the room in which the part will be, away from sun and heaters.',
  'Take it out, let it lie free for one minute, and read it then: it goes on straightening, so always wait as long.',
  'Lay one end along the base line of the protractor, and slide it along until the line of the other end runs through the centre. Read the angle left.',
  'Other times tell more: an hour, a week. Print a fresh strip for each.',
];

const creases: Lines = ({ strips }, { turn }) => [
  `Hold both pads of one crease close to it, fold to ${angle(turn)} and back, and count. Leave the others flat meanwhile.`,
  `Fold so that the plate side is always inside, or always outside; say under “Seen” which.`,
  'One way: to one side only. Both ways: as far to the other side as well, and count one for there and back. Tick which.',
  RATE,
  COUNT,
  `They are ${spanText(strips.map(({ thickness }) => thickness))} thick as set. Measure what your printer made of it on the thickness ladder, printed as a crease.`,
];

const STEPS: Readonly<Record<PieceId, Lines>> = { ladder, comb, radii, bar, hold, creases };

/** What to do, step by step. */
export function stepsText(piece: Piece, asked: PiecesAsked): readonly string[] {
  return STEPS[piece.id](piece, asked);
}

const EYES = 'Eye protection: strips part suddenly and fly.';
const OWN: Readonly<Record<PieceId, readonly string[]>> = {
  ladder: [],
  comb: [EYES],
  radii: [EYES],
  bar: [
    'Eye protection, and nobody’s feet under the weight: the bar may part suddenly. A weight low over a cushion falls softly.',
  ],
  hold: [EYES],
  creases: [EYES],
};

/** What to beware of, and how far it reaches. */
export function cautionsText(id: PieceId): readonly string[] {
  return [
    ...OWN[id],
    'One spool, one printer: what is found here corrects only the filament that it is entered for.',
    'Estimates from nominal data, not a safety case; printed parts vary.',
  ];
}

/** Under the picture of a piece. */
export function pictureText(piece: Piece, scale: string): string {
  const numbers = piece.strips.length > 1 ? ' Numbers are cut as notches: a long one counts five.' : '';
  return `From above, ${scale}; ${sizeText(piece)} in all.${numbers}`;
}

/** The check of the scale, and the way back to the program. */
export const PAGE = {
  ruler: 'Measure this line: 100 mm from end to end, 50 mm to its middle.',
  rulerElse: 'If it is not, the print-out was scaled: print again at 100 %, nothing fitted to the page.',
  rulerInch: 'Measure this line: 4 in from end to end, 2 in to its middle.',
  rulerLabel: 'A line of 100 mm, divided in millimetres',
  rulerLabelInch: 'A line of 4 in, divided in tenths',
  guide: 'It is its own guide: lay it on its picture and bring each grip to the thick line; dashed: at rest.',
  protractor: 'Protractor',
  protractorSays: 'One end along the base line; slide it until the line of the other end runs through the centre.',
  protractorLabel: 'Half a round divided in degrees over a base line',
  laidEnd: 'this end along the base line',
  heldAt: 'held here',
  settings: 'Print it with',
  steps: 'What to do',
  cautions: 'Mind',
  enter: 'Then enter it in Bendbook under Tests.',
  print: 'Print this page',
  back: 'Back to the tests',
  bar: 'Page to print',
  date: 'Date',
  printer: 'Printer',
  spool: 'Spool',
  filament: 'Filament',
} as const;

/** “6.2 g”: what it weighs, laid full. */
export function gramsText(volume: number, density: number): string {
  const grams = volume * density * 1e-6;
  return `${grams < 9.95 ? grams.toFixed(1) : String(Math.round(grams))}\u00a0g`;
}
