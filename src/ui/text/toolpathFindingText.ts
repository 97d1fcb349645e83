/** What is said of what is laid across a thin section of a toolpath: findings, what is wanted beside it, what to change. */
import type { FlexureKind } from '../../core/inspect/flexure.ts';
import type { JudgedPlace, LaidFinding, LaidFindingKind, LayerRun } from '../../core/inspect/toolpath/judgedPlace.ts';
import type { Place } from '../../core/inspect/toolpath/place.ts';
import { counted, grouped, inWords, lengthFigure, share, unitAfter, type LengthUnit } from './numbers.ts';
import { asLaidMore, asLaidSaid } from './toolpathChangeText.ts';
import { capital, figure, listed, type Said } from './said.ts';

/** What the thin section is called where it is spoken of. */
export function placeWord({ flexure }: Pick<Place, 'flexure'>): string {
  const kinds: Readonly<Record<FlexureKind, string>> = {
    leaf: 'leaf',
    neck: 'neck',
    crease: 'crease',
    arch: 'arch',
    'spiral run': 'spiral run',
  };
  return flexure ? kinds[flexure.kind] : 'section';
}

/** More runs than this are counted, not listed. */
const MOST_RUNS = 12;

const countOf = (runs: readonly LayerRun[]) => runs.reduce((sum, [first, last]) => sum + last - first + 1, 0);

/** “9 to 14”, “1 and 2”, “3, 6 and 9 to 12”. */
export function runsText(runs: readonly LayerRun[]): string {
  return listed(
    runs.flatMap(([first, last]) =>
      last - first > 1 ? [`${first} to ${last}`] : first === last ? [`${first}`] : [`${first}`, `${last}`],
    ),
  );
}

/** “layers 9 to 14”, “layer 5”, “all 30 layers”, “40 layers” where they are scattered. */
export function layersText(runs: readonly LayerRun[], all: number): string {
  const count = countOf(runs);
  if (count === all) return all === 1 ? 'its one layer' : `all ${grouped(all)} layers`;
  if (runs.length > MOST_RUNS) return `${grouped(count)} layers`;
  return `${count === 1 ? 'layer' : 'layers'} ${runsText(runs)}`;
}

interface Saying {
  readonly judged: JudgedPlace;
  readonly finding: LaidFinding;
  readonly unit: LengthUnit;
}

interface FindingSaid {
  readonly said: Said;
  /** What it does and what helps. */
  readonly more: string;
}

const size = (value: number | undefined, unit: LengthUnit) =>
  `${value === undefined ? '–' : lengthFigure(value, unit)}${unitAfter(unit)}`;

/** “0.10 to 0.27 mm”, or one figure where both ends come to the same. */
function spanText(span: { readonly least: number; readonly most: number } | undefined, unit: LengthUnit): string {
  if (!span) return size(undefined, unit);
  const [least, most] = [lengthFigure(span.least, unit), lengthFigure(span.most, unit)];
  return least === most ? size(span.most, unit) : `${least} to ${most}${unitAfter(unit)}`;
}

const layersOf = ({ judged, finding }: Saying) => layersText(finding.layers, judged.audit.layers.length);
const num = (text: string) => figure(text);
const on = (saying: Saying) => (saying.finding.layers.length === 0 ? '' : ` on ${layersOf(saying)}`);

function textLines({ textLines: lines = [] }: LaidFinding): string {
  if (lines.length === 0) return '';
  return ` In the text: ${lines.length === 1 ? 'line' : 'lines'} ${listed(lines.map((line) => grouped(line)))}.`;
}

function along({ finding, unit }: Saying): string {
  return finding.at ? `, ${spanText(finding.at, unit)} from its first root` : '';
}

const ORDINALS = ['', 'first', 'second', 'third', 'fourth', 'fifth', 'sixth', 'seventh'];

function thinLine(saying: Saying): FindingSaid {
  const { judged, finding, unit } = saying;
  const broken = finding.broken ?? [];
  const name = `thin ${ORDINALS[judged.wanted.count + 1] ?? 'extra'} line`;
  const where: Said =
    broken.length === 0 ? ['.'] : ['; it is broken on ', num(String(countOf(broken))), `: ${runsText(broken)}.`];
  return {
    said: [
      `A ${name} of `,
      num(spanText(finding.widths, unit)),
      ` lies among the others on ${layersOf(saying)}`,
      ...where,
    ],
    more: 'Such a line changes width all along and holds poorly. Have gaps under one line left alone, or draw whole lines.',
  };
}

const linesOf = ({ judged: { wanted }, unit }: Saying) =>
  `${counted(wanted.count, wanted.countOf === 'lines' ? 'line' : 'layer')} of ${size(wanted.each, unit)}`;

const across = ({ judged }: Saying) => (judged.wanted.countOf === 'lines' ? 'across' : 'through');

function counts({ finding, judged }: Saying): string {
  const { lines } = finding;
  const one = judged.wanted.countOf === 'lines' ? 'line' : 'layer';
  if (!lines) return `another count of ${one}s`;
  return lines.least === lines.most ? counted(lines.most, one) : `${lines.least} to ${lines.most} ${one}s`;
}

const SAY: Readonly<Record<LaidFindingKind, (saying: Saying) => FindingSaid>> = {
  'nothing-laid': (saying) => ({
    said: ['Nothing is laid across it', on(saying), '.'],
    more: 'Draw it at least one whole line thick, or scale the part up.',
  }),
  'starts-on-it': (saying) => ({
    said: [
      num(counted(saying.finding.places ?? saying.finding.count, 'contour')),
      ` ${(saying.finding.places ?? saying.finding.count) === 1 ? 'starts' : 'start'} on the ${placeWord(saying.judged.place)}${on(saying)}`,
      `${along(saying)}: move ${(saying.finding.places ?? 2) === 1 ? 'it' : 'them'} to the pad.`,
    ],
    more: `It usually breaks at its start points first.${textLines(saying.finding)}`,
  }),
  'stops-on-it': (saying) => ({
    said: [
      num(counted(saying.finding.places ?? saying.finding.count, 'line')),
      ` ${saying.finding.places === 1 ? 'stops' : 'stop'} inside it${on(saying)}${along(saying)}.`,
    ],
    more: `Where a line ends only those beside it hold.${textLines(saying.finding)}`,
  }),
  'too-few': (saying) => ({
    said: [
      'Only ',
      num(counts(saying)),
      ` lie${saying.finding.lines?.most === 1 ? 's' : ''} ${across(saying)} where ${saying.judged.wanted.count} ${saying.judged.wanted.count === 1 ? 'was' : 'were'} wanted${on(saying)}.`,
    ],
    more: 'It is softer there than it was meant to be. Draw it thicker, or set narrower lines.',
  }),
  'too-many': (saying) => ({
    said: [
      num(capital(counts(saying))),
      ` lie ${across(saying)} where ${saying.judged.wanted.count} ${saying.judged.wanted.count === 1 ? 'was' : 'were'} wanted${on(saying)}.`,
    ],
    more: 'Each line more makes it stiffer and strains it more.',
  }),
  'thin-line': thinLine,
  'open-all-along': (saying) => ({
    said: [num(spanText(saying.finding.widths, saying.unit)), ` between two lines stays open all along${on(saying)}.`],
    more: 'There the halves bend as separate lines, far softer than one piece.',
  }),
  'open-places': (saying) => ({
    said: [
      num(counted(saying.finding.places ?? saying.finding.count, 'gap')),
      ` of up to ${size(saying.finding.widths?.most, saying.unit)} ${saying.finding.places === 1 ? 'is' : 'are'} left between lines${on(saying)}.`,
    ],
    more: 'Bending gathers where a section is open.',
  }),
  uneven: (saying) => ({
    said: [
      'Whole lines are ',
      num(spanText(saying.finding.widths, saying.unit)),
      ` wide${on(saying)}, where ${size(saying.judged.wanted.each, saying.unit)} was wanted.`,
    ],
    more: 'More than a tenth off: the thinnest place bends most.',
  }),
  'wider-first': (saying) => ({
    said: [
      capital(layersOf(saying)),
      ` ${saying.finding.count === 1 ? 'is' : 'are'} ${(saying.finding.share ?? 0) < 0 ? 'narrower' : 'wider'} by `,
      num(share(Math.abs(saying.finding.share ?? 0))),
      '.',
    ],
    more: 'First layers usually are; where they stand out they can be trimmed.',
  }),
  thickness: (saying) => ({
    said: [
      'It is laid ',
      num(spanText(saying.finding.widths, saying.unit)),
      ` thick where ${size(saying.judged.wanted.thickness, saying.unit)} was wanted`,
      ...asLaidSaid(saying.judged, saying.unit),
      '.',
    ],
    more: asLaidMore(saying.judged),
  }),
  depth: (saying) => ({
    said: [
      'It is ',
      num(spanText(saying.finding.widths, saying.unit)),
      ` deep where ${size(saying.judged.wanted.depth, saying.unit)} was wanted.`,
    ],
    more: 'Its push grows with its depth; its strain does not.',
  }),
  'runs-across': (saying) => ({
    said: [
      `Lines run across it${on(saying)}`,
      ...(saying.finding.share === undefined
        ? []
        : [': only ', num(share(saying.finding.share)), ' of what is laid runs along it']),
      '.',
    ],
    more: 'Across, lines hold only by sticking to one another.',
  }),
  pressed: (saying) => ({
    said: [
      'Lines lie up to ',
      num(size(saying.finding.widths?.most, saying.unit)),
      ` closer than their plastic has room for${on(saying)}.`,
    ],
    more: 'What is too much bulges out at the sides or builds up. Lay them farther apart, or less of it.',
  }),
  crossed: (saying) => ({
    said: [
      num(counted(saying.finding.places ?? saying.finding.count, 'move')),
      ` that ${saying.finding.places === 1 ? 'lays' : 'lay'} nothing ${saying.finding.places === 1 ? 'crosses' : 'cross'} it${on(saying)}`,
      saying.finding.lifted
        ? `, ${grouped(saying.finding.lifted)} of them lifted clear.`
        : ', none of them lifted clear.',
    ],
    more: 'A hot nozzle that drags over a thin line can pull or string it.',
  }),
  'no-direction': () => ({
    said: ['It stands upright: bending pulls its layers apart, so every layer is a joint in it.'],
    more: 'Turn the part so that lines run along it.',
  }),
  whole: (saying) => ({
    said: [
      `${capital(layersOf(saying))}: `,
      ...(saying.judged.wanted.countOf === 'lines'
        ? [num(linesOf(saying))]
        : ['each whole, of ', num(size(saying.judged.wanted.each, saying.unit))]),
      '.',
    ],
    more: 'Whole and equal from end to end.',
  }),
  'free-of-starts': () => ({ said: ['No contour starts on it, and no line stops inside it.'], more: '' }),
  'as-thick': ({ judged, unit }) => ({
    said: ['It is laid ', num(size(judged.wanted.thickness, unit)), ' thick, as wanted.'],
    more: '',
  }),
  'as-deep': ({ judged, unit }) => ({
    said: ['It is ', num(size(judged.wanted.depth, unit)), ' deep, as wanted.'],
    more: '',
  }),
};

/** One finding in a sentence, and what it does. */
export function findingSaid(finding: LaidFinding, judged: JudgedPlace, unit: LengthUnit): FindingSaid {
  return SAY[finding.kind]({ finding, judged, unit });
}

/** As it stands in the verdict, among others. */
const CLAIMS: Partial<Readonly<Record<LaidFindingKind, (saying: Saying) => string>>> = {
  'nothing-laid': (saying) => `nothing is laid across it${ofAll(saying)}`,
  'starts-on-it': (saying) => `contours start on it${ofAll(saying)}`,
  'stops-on-it': (saying) => `lines stop inside it${ofAll(saying)}`,
  'too-few': (saying) =>
    `only ${counts(saying)} lie ${across(saying)} where ${inWords(saying.judged.wanted.count)} should`,
  'too-many': (saying) => `${counts(saying)} lie ${across(saying)} where ${inWords(saying.judged.wanted.count)} should`,
  'thin-line': (saying) => `a thin line lies among the whole ones${ofAll(saying)}`,
  'open-all-along': (saying) => `it is open all along${ofAll(saying)}`,
  'open-places': (saying) => `gaps are left${ofAll(saying)}`,
  pressed: (saying) => `lines are pressed into one another${ofAll(saying)}`,
  uneven: (saying) => `lines are ${spanText(saying.finding.widths, saying.unit)} wide`,
  thickness: ({ finding, judged, unit }) =>
    `it is ${spanText(finding.widths, unit)} thick where ${size(judged.wanted.thickness, unit)} was wanted`,
  depth: ({ finding, judged, unit }) =>
    `it is ${spanText(finding.widths, unit)} deep where ${size(judged.wanted.depth, unit)} was wanted`,
  'runs-across': (saying) => `lines run across it${ofAll(saying)}`,
  crossed: (saying) => `travel crosses it${ofAll(saying)}`,
  'no-direction': () => 'bending pulls its layers apart',
};

function ofAll({ finding, judged }: Saying): string {
  const all = judged.audit.layers.length;
  if (finding.count === 0) return '';
  return finding.count === all ? ' on every layer' : ` on ${grouped(finding.count)} of ${grouped(all)} layers`;
}

/** So many claims stand in the verdict; the others are told below it. */
const MOST_CLAIMS = 3;

/** What is amiss with one section, in a sentence; or that it is laid as wanted. */
export function placeSaid(judged: JudgedPlace, unit: LengthUnit): Said {
  const amiss = judged.findings.filter(({ grade, kind }) => grade !== 'pass' && CLAIMS[kind]);
  const claims = amiss.slice(0, MOST_CLAIMS).map((finding) => CLAIMS[finding.kind]!({ judged, finding, unit }));
  if (claims.length > 0) return [`${capital(listed(claims))}.`];
  const saying = { judged, unit, finding: { kind: 'whole', grade: 'pass', layers: [], count: 0 } } as const;
  return [
    'It is laid as ',
    num(linesOf(saying)),
    ` ${across(saying)}, whole from end to end, and no contour starts on it.`,
  ];
}
