/** What the page of each test piece says to set, to do and to beware of. Manners of the workshop: common practice, no source. */
import type { Piece, PieceId, PiecesAsked } from '../../core/coupons/piece.ts';
import type { Lying } from '../../core/print/profile.ts';
import { contoursFor } from '../../core/print/wholeLines.ts';
import { padsMeet } from '../tests/pages/padsMeet.ts';
import { angle, angleWithin, counted, inWords, NO_BREAK, percent, type LengthUnit } from './numbers.ts';
import { cornersInOrder } from './pieceBoxesText.ts';
import { PIECE_WORDS, sizesIn, spanText, type SizesSaid } from './pieceText.ts';
import { capital } from './said.ts';

type Lines = (piece: Piece, asked: PiecesAsked, said: SizesSaid) => readonly string[];

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

const LIES: Readonly<Record<Lying, string>> = {
  flat: 'Its thin parts lie flat',
  crease: 'Its thin parts lie as creases',
  upright: 'Its thin parts stand upright',
};

/** How many pieces fill the page. */
function amountText({ id, strips }: Piece): string {
  if (id === 'hold') return 'A print gives one strip, and this page takes three: print more of them.';
  if (id === 'bar') return 'One bar fills this page.';
  return `One print of ${inWords(strips.length)} ${PIECE_WORDS[id].strip}s fills this page.`;
}

/** What to print a piece with. */
export function settingsText(piece: Piece, { profile, filament }: PiecesAsked, unit: LengthUnit): readonly string[] {
  const { lineWidth, nozzle, layerHeight, firstLayerHeight } = profile;
  const { set } = sizesIn(unit);
  const lying = piece.id === 'creases' ? 'crease' : profile.lying;
  return [
    `${filament.name}, lines ${set(lineWidth)} wide from a ${set(nozzle, 1)} nozzle, layers ${set(layerHeight)}, the first ${set(firstLayerHeight)}.`,
    wholeText(piece),
    layersText(piece),
    `${LIES[lying]}: leave the piece as it lies in the file. Pads filled solid; start points on the pads.`,
    `A brim where it lifts, cut off before the test. Let it cool on the plate, or it takes a set. ${amountText(piece)}`,
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

/** Pads stand up on one side of what lies as a crease, and stop it there. */
function stopText(piece: Piece, { turn }: PiecesAsked): string | undefined {
  const [first, meet] = [piece.strips[0], piece.strips[0] && padsMeet(piece, piece.strips[0])];
  if (!first || meet === undefined || meet >= turn) return undefined;
  const { strip } = PIECE_WORDS[piece.id];
  return `Turn it to its plate side only, and tick “one way”: to the other side pads meet, those of ${strip} ${first.number} already at ${angleWithin(meet)}.`;
}

const BOTH =
  'One way: to one side only. Both ways: as far to the other side as well, and count one for there and back.';

/** Towards the shorter ones a strip has room: they broke before it. */
const ROOM: Readonly<Record<Lying, string>> = {
  flat: ' Turn it towards the shorter strips; hold aside what is whole there.',
  crease: '',
  upright: ' Turn it towards the shorter strips; hold aside what is whole there.',
};

const comb: Lines = (piece, asked) => [
  `Hold the ${asked.profile.lying === 'upright' ? 'foot' : 'spine'} of the comb, and one grip between two fingers.`,
  `Turn the grip to ${angle(asked.turn)} and back, so that the strip bends as an arc and not at its root alone. The guide, or a mark beside your hand, keeps the angle.${ROOM[asked.profile.lying]}`,
  stopText(piece, asked) ?? `${BOTH} Tick which.`,
  RATE,
  COUNT,
  `Begin with the shortest: it strains most${strainSpan(piece.strips)} and breaks first. Under “Seen”: where it broke, and from when it was white.`,
];

function strainSpan(strips: Piece['strips']): string {
  const strains = strips.flatMap(({ strain }) => strain ?? []);
  return strains.length > 0 ? ` (${percent(Math.max(...strains))})` : '';
}

const radii: Lines = (piece, _asked, { radius }) => {
  const [largest] = cornersInOrder(piece);
  const from = largest ? ` (${radius(largest.radius)})` : '';
  return [
    `Begin at the largest radius${from}. Lay a strip against the flat side, hold it down there, and wrap it round the corner in about one second.`,
    'Let it lie close on the round for a second, no more, and let go. Bend it once only.',
    'Look at the outer side in slanting light, then with a lens: unmarked, whitened, or cracked. Tick one.',
    'Go on to the next smaller radius with a fresh stretch of strip: one that was bent before tells nothing.',
    'Stop at the first crack. This is in the manner of the cylindrical mandrel bend test of coatings (ISO 1519, from memory).',
    `If you go on: wrap and unwrap one strip over one corner until it breaks. ${RATE} ${COUNT}`,
  ];
};

const bar: Lines = ({ arm, grams, strips }, _asked, { say, about }) => {
  const [strip] = strips;
  const weight = grams === undefined ? 'a weight that you know' : `about ${grams}${NO_BREAK}g that you have weighed`;
  const thin = strip ? ` Its ${say(strip.thickness)} must point up and down, its ${about(strip.depth)} across.` : '';
  return [
    `Clamp the pad flat to the edge of a table, right up to where the bar begins${arm === undefined ? '' : `: ${about(arm)} stick out to the eye`}.${thin}`,
    'Stand a ruler beside the eye and read its height.',
    `Hang ${weight} from the eye without a jerk, wait until it is still, and read again within ten seconds: later it creeps.`,
    'Sag is the one height less the other. Take the weight off; after a minute it must be back where it was. If not, take less weight.',
    'Do it three times. Write down the weight with its hook and thread.',
  ];
};

/** Strips on their edges lie on the paper; one that stood in the print has its foot between. */
const LAID: Readonly<Record<Lying, string>> = {
  flat: 'Stand the strip on its edge on the protractor, one end along the base line,',
  crease: 'Stand the strip on its edge on the protractor, one end along the base line,',
  upright: 'Lay the strip on the side of its foot on the protractor, one end along the base line, look straight down,',
};

const hold: Lines = ({ slotTurn, slotRadius = 0 }, { profile }, { radius }) => [
  `Press a strip into the slot, its thin way across${slotTurn === undefined ? '' : `; it is then bent by ${angle(slotTurn)} over ${radius(slotRadius)}`}. Write down day and hour.`,
  'Leave it for a day at the warmth of the room in which the part will be, away from sun and heaters.',
  'Take it out, let it lie free for one minute, and read it then: it goes on straightening, so always wait as long.',
  `${LAID[profile.lying]} and slide it along until the line of the other end runs through the centre. Read the angle left.`,
  'Other times tell more: an hour, a week. Print a fresh strip for each.',
];

const creases: Lines = (piece, asked, { say }) => {
  const stop = stopText(piece, asked);
  return [
    `Hold both pads of one crease close to it, fold to ${angle(asked.turn)} and back, and count. Leave the others flat meanwhile. The guide keeps the angle.`,
    ...(stop === undefined
      ? [
          `Fold so that the plate side is always inside, or always outside; say under “Seen” which.`,
          `${BOTH} Tick which.`,
        ]
      : [stop]),
    RATE,
    COUNT,
    `They are ${spanText(
      piece.strips.map(({ thickness }) => thickness),
      say,
    )} thick as set. Measure what your printer made of it on the thickness ladder, printed as a crease.`,
  ];
};

const STEPS: Readonly<Record<PieceId, Lines>> = { ladder, comb, radii, bar, hold, creases };

/** What to do, step by step. */
export function stepsText(piece: Piece, asked: PiecesAsked, unit: LengthUnit): readonly string[] {
  return STEPS[piece.id](piece, asked, sizesIn(unit));
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
    'Hot bed and nozzle, fumes of warm filament: keep to what the maker of the printer says.',
    'One spool, one printer: what is found here corrects only the filament that it is entered for.',
    'Estimates from nominal data, not a safety case; printed parts vary.',
  ];
}

/** “6.2 g”: what it weighs, laid full. */
export function gramsText(volume: number, density: number): string {
  const grams = volume * density * 1e-6;
  return `${grams < 9.95 ? grams.toFixed(1) : String(Math.round(grams))}\u00a0g`;
}
