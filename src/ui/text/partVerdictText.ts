/** What is said of all thin sections of a part, and of one of them. */
import { allowableNamed } from '../../core/design/allowables.ts';
import type { Assessment } from '../../core/design/assessment.ts';
import type { AskedOfAll, Judged, PrintedAs } from '../../core/inspect/judged.ts';
import { gradeOf, isLasting, isWhole, landingGrade } from '../../core/inspect/verdicts.ts';
import { bendingFault, chanceCell, flexureKindText, landingCount, landingFault, landingSays } from './inspectText.ts';
import { angle, grouped, inHundred, inWords, lengthFigure, percent, unitAfter, type LengthUnit } from './numbers.ts';
import { capital, figure, listed, type Said } from './said.ts';
import { gradeWord } from './verdictText.ts';

interface Values {
  readonly as: PrintedAs;
  readonly asked: AskedOfAll;
}

/** More numbers than this are counted, not listed. */
const MOST = 6;

const numberOf = ({ flexure }: Judged) => String(flexure.number);

/** “1, 2 and 5”, or how many where they are many. */
function which(some: readonly Judged[], all: readonly Judged[]): string {
  if (some.length === all.length && all.length > 1) return all.length === 2 ? 'both' : `all ${inWords(all.length)}`;
  return some.length <= MOST ? listed(some.map(numberOf)) : `${grouped(some.length)} of them`;
}

function peakOf(some: readonly Judged[]): Assessment | undefined {
  const all = some.flatMap(({ assessed }) => (assessed.ok ? [assessed.value] : []));
  return all.toSorted((a, b) => b.strain.peak - a.strain.peak)[0];
}

const lineWords = ({ as }: Values, unit: LengthUnit) => `${lengthFigure(as.profile.lineWidth, unit)}${unitAfter(unit)}`;

const layerWords = ({ as }: Values, unit: LengthUnit) =>
  `${lengthFigure(as.profile.layerHeight, unit)}${unitAfter(unit)}`;

function landingSaid(judged: readonly Judged[], kinds: number, values: Values, unit: LengthUnit): Said {
  const counts = judged.map(({ landing }) => (isWhole(landing) ? String(landing.nearest) : landing.exact.toFixed(2)));
  const different = [...new Set(counts)];
  const [first] = judged;
  if (!first) return [];
  const isLayers = judged.map(({ landing }) => landing.countOf === 'layers');
  const of = isLayers.every(Boolean) ? 'layers' : isLayers.some(Boolean) ? 'both' : 'lines';
  const isSame = different.length === 1 && kinds === 1;
  const [lines, layers] = [`${lineWords(values, unit)} lines`, `${layerWords(values, unit)} layers`];
  const inLines = { lines: `In ${lines}`, layers: `In ${layers}`, both: `In ${lines} and ${layers}` }[of];
  const come =
    judged.length === 1
      ? `${inLines} it comes out `
      : isSame
        ? `All are alike: ${inLines.replace('In', 'in')} they come out `
        : `${inLines} they come out `;
  const said = different.length <= MOST ? listed(different) : `${different[0]} to ${different.at(-1)}`;
  const amiss = judged.filter(({ landing }) => landing.state === 'not-laid');
  const rest = judged.filter(({ landing }) => landingGrade(landing) !== 'pass' && landing.state !== 'not-laid');
  const tail =
    amiss.length > 0
      ? `; ${which(amiss, judged)} may not be laid at all.`
      : rest.length > 0
        ? `; ${rest.length === judged.length && judged.length > 1 ? 'they are' : `${which(rest, judged)} ${rest.length > 1 ? 'are' : 'is'}`} squeezed, dropped or left apart.`
        : `; ${judged.length === 1 ? 'it is' : 'they are'} laid whole.`;
  return [
    come,
    figure(said, 'computed', 'thickness'),
    ` ${{ lines: 'across', layers: 'through', both: 'of them' }[of]}${tail} `,
  ];
}

function bendingSaid(judged: readonly Judged[], { asked }: Values): Said {
  const cannot = judged.filter(({ assessed }) => !assessed.ok);
  const amiss = judged.filter((one) => one.assessed.ok && !isLasting(one));
  const worst = peakOf(amiss.length > 0 ? amiss : judged);
  const bent = `Bent ${angle(asked.turn)} ${asked.ways}, `;
  const rest: Said = cannot.length > 0 ? [` ${capital(which(cannot, judged))} cannot be worked out as it stands.`] : [];
  if (!worst) return rest;
  const strain = figure(percent(worst.strain.peak), worst.provenance.strain, 'strain');
  const about = worst.estimate ? 'about ' : '';
  if (amiss.length === 0) {
    const least = Math.min(...judged.flatMap(({ assessed }) => (assessed.ok ? [assessed.value.life.chance] : [])));
    const chance = figure(`${inHundred(least)} in 100`, worst.provenance.life, 'life');
    const up = judged.length > 1 ? 'the most strained reaches ' : 'it strains ';
    return [bent, `${up}${about}`, strain, ', and ', chance, ` reach your ${grouped(asked.cycles)}.`, ...rest];
  }
  const many = amiss.length > 1;
  const past = allowableNamed(worst.allowables, 'yield');
  const one = judged.length === 1 ? 'it' : which(amiss, judged);
  const who = `${one} strain${many ? '' : 's'} ${many ? 'up to ' : ''}${about}`;
  if (past.strain > past.limit) {
    const limit = figure(percent(past.limit, 1), past.provenance.kind);
    return [bent, who, strain, ', past the ', limit, ` at which ${worst.filament.name} stays bent.`, ...rest];
  }
  const chance = figure(`${inHundred(worst.life.chance)} in 100`, worst.provenance.life, 'life');
  return [bent, who, strain, ', so even laid whole only ', chance, ` reach your ${grouped(asked.cycles)}.`, ...rest];
}

export function partSentences(judged: readonly Judged[], kinds: number, values: Values, unit: LengthUnit): Said {
  return [...landingSaid(judged, kinds, values, unit), ...bendingSaid(judged, values)];
}

/** The one that is looked at, in a sentence. */
export function chosenText(one: Judged, { as, asked }: Values, unit: LengthUnit): Said {
  const { flexure, landing, assessed } = one;
  const size = `${lengthFigure(as.scale * flexure.thickness.least, unit)} thick, ${lengthFigure(as.scale * flexure.length, unit)} long`;
  const begin = `Number ${flexure.number}, a ${flexureKindText(flexure)} ${size}: `;
  const lands = `${landingCount(landing)} ${landing.countOf === 'lines' ? 'across' : 'through'}, ${landingSays(landing, unit).replace('; ', ', ')}; `;
  if (!assessed.ok) return [begin, lands, 'it cannot be worked out as it stands.'];
  const { strain, provenance, life, estimate } = assessed.value;
  const reach = life.breaksOnFirstFlex
    ? 'the first flex breaks it'
    : `${inHundred(life.chance)} in 100 reach ${grouped(asked.cycles)}`;
  return [
    begin,
    lands,
    `at ${angle(asked.turn)} ${estimate ? 'about ' : ''}`,
    figure(percent(strain.peak), provenance.strain, 'strain'),
    ` strain, and ${reach}.`,
  ];
}

/** In a cell of the strip: the word, and the one thing behind it. */
export function shortVerdict(one: Judged): string {
  const word = gradeWord(gradeOf(one));
  const fault = landingFault(one.landing) || bendingFault(one);
  return fault === '' ? `${word}, ${chanceCell(one)}` : `${word}, ${fault}`;
}
