/** Words of checking a part: what was found, how it lands and lies, what it stands, what was passed over and what was mended. */
import type { Damage, DamageKind } from '../../core/geometry/mesh/damage.ts';
import type { Box3 } from '../../core/geometry/mesh/triangleMesh.ts';
import { printedSize } from '../../core/inspect/buildDirection.ts';
import type { UnitRead } from '../../core/inspect/checkedPart.ts';
import type { FlexureKind, PassedOver, PassedOverWhy } from '../../core/inspect/flexure.ts';
import type { Judged, Landing, PlateUp } from '../../core/inspect/judged.ts';
import { MM_IN, type LengthUnit as PartUnit } from '../../core/inspect/lengthUnit.ts';
import { bendingVerdict, gradeOf, isWhole, tallyOf } from '../../core/inspect/verdicts.ts';
import type { Lying } from '../../core/print/profile.ts';
import type { Problem, ProblemCode } from '../../core/problems.ts';
import { radians } from '../../core/units.ts';
import {
  angle,
  counted,
  grouped,
  inHundred,
  inWords,
  length,
  lengthFigure,
  unitAfter,
  type LengthUnit,
} from './numbers.ts';
import { problemText } from './problemText.ts';
import { listed } from './said.ts';
import { gradeWord, REFUSED_HEADING, verdictHeading } from './verdictText.ts';

/** One of each kind, as in a table. */
const FLEXURE_KINDS: Readonly<Record<FlexureKind, string>> = {
  leaf: 'leaf',
  neck: 'neck',
  crease: 'crease',
  arch: 'arch',
  'spiral run': 'spiral run',
};

/** “leaf”, “curved leaf”: an arch and a spiral run are curved anyway. */
export function flexureKindText({ kind, isCurved }: Pick<Judged['flexure'], 'kind' | 'isCurved'>): string {
  const isSaid = kind === 'arch' || kind === 'spiral run';
  return isCurved && !isSaid ? `curved ${FLEXURE_KINDS[kind]}` : FLEXURE_KINDS[kind];
}

/** Less than this is the roughness of a mesh, not a fillet [mm]. */
const NO_FILLET = 0.05;

/** “R 0.60 fillets”, “R 1.00 fillets at one end, sharp at the other”, “sharp corners”. */
export function cornersText({ roots }: Pick<Judged['flexure'], 'roots'>, scale: number, unit: LengthUnit): string {
  const [less = 0, more = 0] = roots.map(({ fillet }) => scale * fillet).toSorted((a, b) => a - b);
  const [small, large] = [lengthFigure(less, unit), lengthFigure(more, unit)];
  if (more <= NO_FILLET) return 'sharp corners';
  if (less <= NO_FILLET) return `R ${large} fillets at one end, sharp at the other`;
  return more - less <= NO_FILLET ? `R ${small} fillets` : `R ${small} fillets at one end, R ${large} at the other`;
}

/** What each lying means for a thin section. */
export const LYING_SAYS: Readonly<Record<Lying, string>> = {
  flat: 'lines run along it',
  crease: 'layers lie across it',
  upright: 'bending pulls its layers apart',
};

/** Less than this is how a mesh comes out of a drawing program. */
const SQUARE_ON = radians(1);

/** “flat”, “upright, 12° aslant”. */
export function lyingText({ lying, aslant }: Pick<Judged, 'lying' | 'aslant'>): string {
  return aslant < SQUARE_ON ? lying : `${lying}, ${angle(aslant, 0)} aslant`;
}

/** Which way a part stands on the plate, by the direction of the file that points up. */
export const PLATE_UP_TEXT: Readonly<Record<PlateUp, string>> = {
  '+z': 'lying as in the file',
  '-z': 'lying upside down',
  '+x': 'standing with its +x side up',
  '-x': 'standing with its \u2212x side up',
  '+y': 'standing with its +y side up',
  '-y': 'standing with its \u2212y side up',
};

const oneOf = ({ countOf }: Pick<Landing, 'countOf'>) => (countOf === 'lines' ? 'line' : 'layer');

/** “1.50 lines”, “3 lines”, “1 layer”. */
export function landingCount(landing: Landing): string {
  return isWhole(landing) ? counted(landing.nearest, oneOf(landing)) : `${landing.exact.toFixed(2)} ${oneOf(landing)}s`;
}

/** What becomes of it: “dropped or squeezed”, “0.14 gap, or a squeezed line”. */
export function landingSays(landing: Landing, unit: LengthUnit): string {
  if (landing.countOf === 'layers') return layersSay(landing);
  const { state, nearest, exact, left } = landing;
  switch (state) {
    case 'whole':
      return 'whole and even';
    case 'odd':
      return nearest === 1 ? 'whole; one line alone' : 'whole; middle line laid alone';
    case 'gap':
      return `${lengthFigure(left, unit)} gap, or a squeezed line`;
    case 'squeezed':
      return exact < 2 ? 'dropped or squeezed' : 'a thinner line squeezed in, or a gap';
    case 'not-laid':
      return 'may not be laid at all';
  }
}

/** Layers are as high as they are: what is over is left out or laid in full. */
function layersSay({ state, exact, nearest }: Landing): string {
  if (state === 'not-laid') return 'may not be laid, or comes out as a whole layer';
  if (state === 'whole' || state === 'odd') return nearest === 1 ? 'whole; one layer alone' : 'whole';
  return `comes out as ${nearest}, ${exact > nearest ? 'thinner' : 'thicker'} than drawn`;
}

/** “1.50 lines: dropped or squeezed”. */
export function landingText(landing: Landing, unit: LengthUnit): string {
  return `${landingCount(landing)}: ${landingSays(landing, unit)}`;
}

/** As it stands in a verdict; empty where it is whole. */
export function landingFault(landing: Landing): string {
  if (isWhole(landing)) return '';
  return landing.state === 'not-laid' ? 'may not be laid' : 'not whole';
}

/** How it stands being bent, as it stands in a verdict; empty where it lasts. */
export function bendingFault({ assessed }: Judged): string {
  if (!assessed.ok) return REFUSED_HEADING.replace(/^It /, '');
  const verdict = bendingVerdict(assessed.value);
  if (verdict.grade === 'pass') return '';
  const [grade = '', why] = verdictHeading({ ...assessed.value, verdict }).split(': ');
  return why?.replace(/^it /, '') ?? grade.toLowerCase();
}

/** Both judgements joined: “Fail: not whole; stays bent”, “Pass”, “Beyond the data”. */
export function judgedHeading(judged: Judged): string {
  const grade = gradeOf(judged);
  const faults = [landingFault(judged.landing), bendingFault(judged)].filter((fault) => fault !== '');
  const isSaid = faults.length === 1 && faults[0] === gradeWord(grade).toLowerCase();
  return faults.length === 0 || isSaid ? gradeWord(grade) : `${gradeWord(grade)}: ${faults.join('; ')}`;
}

/** “81 in 100”, “if laid, 99 in 100”, “breaks at the first flex”; empty where it cannot be worked out. */
export function chanceCell({ assessed, landing }: Judged): string {
  if (!assessed.ok) return '';
  const { life } = assessed.value;
  const said = life.breaksOnFirstFlex
    ? 'breaks at the first flex'
    : life.beyond === 'wanted'
      ? 'past the data'
      : `${inHundred(life.chance)} in 100`;
  return landing.state === 'not-laid' ? `if laid, ${said}` : said;
}

/** The sheet says these beside the count of lines. */
const SAID_ELSEWHERE: readonly ProblemCode[] = [
  'not-whole-lines',
  'not-whole-layers',
  'odd-lines',
  'tie-rounded-down',
  'single-layer',
];

/** What is noted of a section: where its figures are not quite its own, or why there are none; and what else is worth knowing. */
export function judgedNotes(
  { assessed }: Judged,
  unit: LengthUnit,
): { readonly first: readonly string[]; readonly more: readonly string[] } {
  const say = (problems: readonly Problem[]) => problems.map((problem) => problemText(problem, unit));
  if (!assessed.ok) return { first: say(assessed.problems), more: [] };
  const more = assessed.value.notes.filter(({ code }) => !SAID_ELSEWHERE.includes(code));
  return { first: say(assessed.notes), more: say(more) };
}

/** The verdict on all of them: “Fail: none of three is laid whole”, “Pass: all three are whole and last”. */
export function partHeading(judged: readonly Judged[]): string {
  const all = judged.length;
  if (all === 0) return 'Nothing thin found';
  const { whole, lasting, passing } = tallyOf(judged);
  if (passing === all) return `Pass: ${all === 1 ? 'it is whole and lasts' : `all ${inWords(all)} are whole and last`}`;
  const grade = gradeWord(worstOf(judged));
  if (all === 1) return judgedHeading(judged[0]!);
  if (whole < all) return `${grade}: ${few(whole)} of ${inWords(all)} ${whole < 2 ? 'is' : 'are'} laid whole`;
  return `${grade}: ${few(lasting)} of ${inWords(all)} ${lasting < 2 ? 'lasts' : 'last'} as asked`;
}

const few = (count: number) => (count === 0 ? 'none' : `only ${inWords(count)}`);

function worstOf(judged: readonly Judged[]) {
  const grades = judged.map(gradeOf);
  return (['fail', 'caution', 'beyond'] as const).find((grade) => grades.includes(grade)) ?? 'pass';
}

/** One of them, many of them, and what is wrong. */
const DAMAGE: Readonly<Record<DamageKind, readonly [one: string, many: string, says: string]>> = {
  'open-edges': ['open edge', 'open edges', 'the surface has a hole there'],
  'crowded-edges': ['crowded edge', 'crowded edges', 'more than two triangles meet there'],
  flipped: ['triangle', 'triangles', 'wound against what is beside'],
  'inside-out': ['body', 'bodies', 'inside out as a whole'],
  duplicate: ['triangle', 'triangles', 'there more than once'],
  degenerate: ['triangle', 'triangles', 'without an area'],
  unjoined: ['corner', 'corners', 'not quite joined'],
};

/** “9 open edges: the surface has a hole there; not mended”. */
export function damageText({ kind, count, mended }: Damage): string {
  const [one, many, says] = DAMAGE[kind];
  const done = mended === 0 ? 'not mended' : mended === count ? 'mended' : `${grouped(mended)} of them mended`;
  return `${grouped(count)} ${count === 1 ? one : many}: ${says}; ${done}`;
}

/** Why something thin is not called a flexure. */
const PASSED_OVER: Readonly<Record<PassedOverWhy, string>> = {
  'free-end': 'one end is free: a fin or a rib',
  'held-at-side': 'held along its side as well: a wall or a skin',
  'too-thick': 'thicker than what was looked for',
  'open-there': 'the surface has a hole there',
  ring: 'both ends join the same pad close by: an eye or a ring',
};

/** “0.80 mm thick at 12.0, 5.0, 3.0: one end is free: a fin or a rib”. */
export function passedOverText({ why, thickness, at }: PassedOver, unit: LengthUnit): string {
  return `${length(thickness, unit)} thick at ${placeText(at, unit)}; ${PASSED_OVER[why]}`;
}

/** A place in the coordinates of the file: “x 14.5, y 5.0, z 3.0”. */
export function placeText({ x, y, z }: PassedOver['at'], unit: LengthUnit): string {
  const say = (value: number) => lengthFigure(value, unit, unit === 'mm' ? 1 : 3).replace('-', '\u2212');
  return `x ${say(x)}, y ${say(y)}, z ${say(z)}`;
}

/** Units of part files, many of them. */
export const PART_UNITS: Readonly<Record<PartUnit, string>> = {
  micron: 'micrometres',
  millimetre: 'millimetres',
  centimetre: 'centimetres',
  metre: 'metres',
  inch: 'inches',
  foot: 'feet',
};

/** How the file was measured: one sentence. */
export function unitReadText({ unit, by }: UnitRead): string {
  const name = PART_UNITS[unit];
  const says: Readonly<Record<UnitRead['by'], string>> = {
    stated: `The file says ${name}.`,
    told: `Read in ${name}, as you say.`,
    sized: `The file states no unit; read in ${name}, in which it is of a size that printers print.`,
  };
  return says[by];
}

/** “1 600 × 254 × 8 mm”: a part in three directions, whole from 10 mm on. */
export function sizeText(box: Box3, unit: LengthUnit, scale = 1): string {
  const { x, y, z } = printedSize(box, scale);
  const say = (value: number) =>
    unit === 'mm' && value >= 10
      ? grouped(value)
      : lengthFigure(value, unit, unit === 'mm' ? 1 : 2).replace(/\.0$/, '');
  return `${[x, y, z].map(say).join(' × ')}${unitAfter(unit)}`;
}

/** A unit that it may be in as well: “inches: 1 600 × 254 × 152 mm”. */
export function unitChoice(other: PartUnit, { unit }: UnitRead, box: Box3, shown: LengthUnit): string {
  return `${PART_UNITS[other]}: ${sizeText(box, shown, MM_IN[other] / MM_IN[unit])}`;
}

/** The question where the unit is in doubt; empty where it is not. */
export function unitDoubt({ orElse }: UnitRead): string {
  return orElse.length === 0
    ? ''
    : `It may as well be in ${listed(
        orElse.map((one) => PART_UNITS[one]),
        'or',
      )}.`;
}

/** A section of the part by its place among the findings: “A”, “B”, past “Z” by number. */
export function sectionName(index: number): string {
  return index < 26 ? String.fromCodePoint(65 + index) : String(index + 1);
}

/** Something that was passed over by its place in the list: “a”, “b”, past “z” by number. */
export function passedName(index: number): string {
  return sectionName(index).toLowerCase();
}

/** Numbers with runs drawn together: “1 to 4 and 7”. */
export function numbersSaid(numbers: readonly number[]): string {
  const runs: [first: number, last: number][] = [];
  for (const number of numbers) {
    const run = runs.at(-1);
    if (run && number === run[1] + 1) run[1] = number;
    else runs.push([number, number]);
  }
  return listed(
    runs.flatMap(([first, last]) =>
      last - first > 1 ? [`${first} to ${last}`] : first === last ? [`${first}`] : [`${first}`, `${last}`],
    ),
  );
}
