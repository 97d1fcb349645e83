/** What there is to say of what is laid across a thin section. */
import type { Grade } from '../../design/assessment.ts';
import { WHOLE_WITHIN } from '../../design/fit.ts';
import { SEVERITY } from '../../design/verdict.ts';
import type { PathEnd, Span } from './audit.ts';
import type { LaidFinding, LaidFindingKind, WantedLaid } from './judgedPlace.ts';
import { middleOf, type LaidFacts, type LayerFacts } from './laidFacts.ts';
import { runsOf } from './layerRuns.ts';
import type { Place } from './place.ts';
import { spanOf } from './span.ts';

/** Whole lines may be so far off the wanted width [-]: strain goes with thickness, and so much is well beyond what flow varies by. Ours. */
export const UNEVEN_OVER = 0.1;
/** First layers are told apart from here on [-]: half of what makes others uneven. Ours. */
const WIDER_FROM = 0.05;
/** So many layers at the bottom are laid as first ones are [-]. Common practice, no source. */
const FIRST_LAYERS = 2;
/** Less than this share of what is laid runs along [-]: most of it does not. Ours. */
const RUNS_ACROSS = 0.5;
/** Neighbours may lie closer by this share of a line than they have room for [-], as flow varies by some hundredths; over this share of the section. Ours. */
const PRESSED_OVER = 0.12;
const PRESSED_ALONG = 0.25;
/** So many lines of the text are named [-]. */
const MOST_NAMED = 5;

export interface Judging {
  readonly place: Place;
  readonly wanted: WantedLaid;
  readonly facts: LaidFacts;
}

const numbers = (layers: readonly LayerFacts[]) => layers.map(({ laid }) => laid.layer);

function told(
  kind: LaidFindingKind,
  grade: Grade,
  layers: readonly LayerFacts[],
  more: Omit<LaidFinding, 'kind' | 'grade' | 'layers' | 'count'> = {},
): readonly LaidFinding[] {
  if (layers.length === 0) return [];
  return [{ kind, grade, layers: runsOf(numbers(layers)), count: layers.length, ...more }];
}

/** Of the section as a whole. */
const ofAll = (
  kind: LaidFindingKind,
  grade: Grade,
  more: Omit<LaidFinding, 'kind' | 'grade' | 'layers' | 'count'> = {},
): readonly LaidFinding[] => [{ kind, grade, layers: [], count: 0, ...more }];

const span = (values: readonly number[]): { readonly widths?: Span } => {
  const found = spanOf(values);
  return found ? { widths: found } : {};
};

function endsTold(
  kind: 'starts-on-it' | 'stops-on-it',
  grade: Grade,
  layers: readonly LayerFacts[],
  ends: (layer: LayerFacts) => readonly PathEnd[],
): readonly LaidFinding[] {
  const having = layers.filter((layer) => ends(layer).length > 0);
  const all = having.flatMap(ends);
  const at = spanOf(all.map((end) => end.at));
  const textLines = all.slice(0, MOST_NAMED).map(({ line }) => line);
  return told(kind, grade, having, { places: all.length, ...(at && { at }), textLines });
}

function missing({ facts: { layers } }: Judging): readonly LaidFinding[] {
  return told(
    'nothing-laid',
    'fail',
    layers.filter(({ isLaid }) => !isLaid),
  );
}

function countTold(kind: 'too-few' | 'too-many', grade: Grade, layers: readonly LayerFacts[]): readonly LaidFinding[] {
  const lines = spanOf(layers.map(({ count }) => count));
  return told(kind, grade, layers, lines ? { lines } : {});
}

/** Whole lines in each layer, or layers in all, against how many are wanted. */
function counted({ wanted, facts }: Judging): readonly LaidFinding[] {
  const { count, countOf } = wanted;
  if (countOf === 'layers') {
    const lines = facts.counts;
    if (lines.most === count || lines.most === 0) return [];
    return lines.most < count ? ofAll('too-few', 'fail', { lines }) : ofAll('too-many', 'caution', { lines });
  }
  const laid = facts.layers.filter(({ isLaid }) => isLaid);
  const few = laid.filter((layer) => layer.count < count);
  const many = laid.filter((layer) => layer.count > count);
  return [...countTold('too-few', 'fail', few), ...countTold('too-many', 'caution', many)];
}

function thinLines({ facts: { layers } }: Judging): readonly LaidFinding[] {
  const having = layers.filter(({ thin }) => thin.length > 0);
  const widths = spanOf(having.flatMap(({ thinWidths }) => (thinWidths ? [thinWidths.least, thinWidths.most] : [])));
  const broken = runsOf(numbers(having.filter(({ isBroken }) => isBroken)));
  return told('thin-line', 'caution', having, { ...(widths && { widths }), broken });
}

/** Gaps where a thin line is broken are told with it. */
function gaps({ facts: { layers } }: Judging): readonly LaidFinding[] {
  const all = layers.filter(({ openAllAlong, thin }) => openAllAlong.length > 0 && thin.length === 0);
  const here = layers.map((layer) => ({
    layer,
    open: layer.openElsewhere.filter(({ kind }) => kind === 'along' || layer.thin.length === 0),
  }));
  const some = here.filter(({ open }) => open.length > 0);
  const open = some.flatMap((one) => one.open);
  const isParted = open.some(({ kind }) => kind === 'along');
  return [
    ...told('open-all-along', 'caution', all, span(all.flatMap((one) => one.openAllAlong.map(({ width }) => width)))),
    ...told(
      'open-places',
      isParted ? 'fail' : 'caution',
      some.map(({ layer }) => layer),
      { places: open.length, ...span(open.map(({ width }) => width)) },
    ),
  ];
}

/** Neighbours laid into one another over a good part of the section; not a crease, whose layers may cross. */
function pressedTold({ wanted, facts: { layers } }: Judging): readonly LaidFinding[] {
  if (wanted.countOf === 'layers') return [];
  const having = layers.filter(({ laid: { pressed } }) => {
    return pressed.most > PRESSED_OVER * wanted.each && pressed.share > PRESSED_ALONG;
  });
  return told('pressed', 'caution', having, span(having.map(({ laid }) => laid.pressed.most)));
}

/** The lowest layers, where they lie on the plate and are wider or narrower than those above; in one sense. */
export function firstLayers({ wanted, facts: { layers } }: Judging): {
  readonly layers: readonly LayerFacts[];
  readonly share: number;
} {
  const [first] = layers;
  const above = layers.slice(FIRST_LAYERS).flatMap(({ widths }) => widths?.mean ?? []);
  const usual = middleOf(above);
  const isOnPlate = first !== undefined && first.laid.z < 1.5 * first.laid.height;
  if (wanted.countOf === 'layers' || !isOnPlate || !(usual > 0)) return { layers: [], share: 0 };
  const shares = layers.slice(0, FIRST_LAYERS).map(({ widths }) => (widths ? widths.mean / usual - 1 : 0));
  const off = shares.findIndex((share) => !(Math.abs(share) >= WIDER_FROM && share * shares[0]! > 0));
  const count = off < 0 ? shares.length : off;
  const share = shares.slice(0, count).reduce((most, one) => (Math.abs(one) > Math.abs(most) ? one : most), 0);
  return { layers: layers.slice(0, count), share };
}

function isUneven({ widths }: LayerFacts, each: number): boolean {
  if (!widths) return false;
  return widths.most > (1 + UNEVEN_OVER) * each || widths.least < (1 - UNEVEN_OVER) * each;
}

function evenness(judging: Judging): readonly LaidFinding[] {
  const { wanted, facts } = judging;
  if (wanted.countOf === 'layers') return [];
  const first = firstLayers(judging);
  const others = facts.layers.slice(first.layers.length).filter((layer) => isUneven(layer, wanted.each));
  const found = spanOf(others.flatMap((layer) => (layer.widths ? [layer.widths.least, layer.widths.most] : [])));
  const grade = Math.abs(first.share) > UNEVEN_OVER ? 'caution' : 'pass';
  return [
    ...told('uneven', 'caution', others, found ? { widths: found } : {}),
    ...told('wider-first', grade, first.layers, { share: first.share }),
  ];
}

function direction({ place, facts: { layers } }: Judging): readonly LaidFinding[] {
  if (place.lying === 'upright') return ofAll('no-direction', 'caution');
  const across = layers.filter(({ isLaid, laid }) => isLaid && laid.along < RUNS_ACROSS);
  const share = across.reduce((sum, { laid }) => sum + laid.along, 0) / Math.max(1, across.length);
  // Layers of a crease are often laid aslant in turns; of a leaf that bends in the plane of the plate there is no reason to.
  return told('runs-across', place.lying === 'crease' ? 'caution' : 'fail', across, { share });
}

function travel({ facts: { layers } }: Judging): readonly LaidFinding[] {
  const crossed = layers.filter(({ laid }) => laid.crossings > laid.lifted);
  const total = (of: 'crossings' | 'lifted') => crossed.reduce((sum, { laid }) => sum + laid[of], 0);
  return told('crossed', 'caution', crossed, { places: total('crossings'), lifted: total('lifted') });
}

/** A thickness that was measured in the toolpath itself is not held against it. */
export const isThicknessKnown = ({ place, wanted }: Judging): boolean =>
  wanted.from === 'joint' || place.from === 'carried';

const one = (value: number) => ({ widths: { least: value, most: value } });

/** Thickness and depth, against what is wanted. */
function sizes(judging: Judging): readonly LaidFinding[] {
  const { wanted, facts } = judging;
  const { thickness, depth } = facts;
  if (!(thickness > 0)) return [];
  const found: LaidFinding[] = [];
  if (isThicknessKnown(judging)) {
    const isAs = isAsThick(judging);
    found.push(...ofAll(isAs ? 'as-thick' : 'thickness', isAs ? 'pass' : 'caution', one(thickness)));
  }
  if (wanted.depth !== undefined && depth !== undefined) {
    const isAs = isAsDeep(judging);
    found.push(...ofAll(isAs ? 'as-deep' : 'depth', isAs ? 'pass' : 'caution', one(depth)));
  }
  return found;
}

/** A twentieth of a line or layer off is whole still. */
export function isAsThick({ wanted, facts }: Judging): boolean {
  return Math.abs(facts.thickness - wanted.thickness) <= WHOLE_WITHIN * wanted.each + 1e-9;
}

/** Half a layer, of a crease half a line: what is drawn comes out as a whole number of them. */
export function isAsDeep({ place, wanted: { depth = 0 }, facts }: Judging): boolean {
  const step =
    place.lying === 'crease' ? middleOf(facts.layers.flatMap(({ widths: w }) => w?.mean ?? [])) : layerOf(facts);
  return Math.abs((facts.depth ?? depth) - depth) <= step / 2 + 1e-9;
}

const layerOf = ({ layers }: LaidFacts) => middleOf(layers.map(({ laid }) => laid.height));

/** Layers with the wanted count of equal lines and nothing amiss between them. */
function good(judging: Judging): readonly LaidFinding[] {
  const { wanted, facts } = judging;
  const isWhole = (layer: LayerFacts) =>
    layer.isLaid &&
    layer.thin.length === 0 &&
    layer.laid.open.length === 0 &&
    layer.laid.lines.least === layer.laid.lines.most &&
    (wanted.countOf === 'layers' || (layer.count === wanted.count && !isUneven(layer, wanted.each)));
  const whole = facts.layers.filter(isWhole);
  const isFree =
    facts.layers.length > 0 && facts.layers.every(({ laid }) => laid.starts.length === 0 && laid.stops.length === 0);
  const isCounted = wanted.countOf === 'lines' || facts.counts.most === wanted.count;
  return [...(isCounted ? told('whole', 'pass', whole) : []), ...(isFree ? ofAll('free-of-starts', 'pass') : [])];
}

/**
 * Everything there is to say, worst first and what is good last.
 *
 * @param judging - the section, what is wanted and what is laid [mm]
 * @returns findings with grades and layers
 *
 * Source: common-practice.
 */
export function laidFindings(judging: Judging): readonly LaidFinding[] {
  const { place, facts } = judging;
  // Of an upright section every contour lies on it, and has to start somewhere.
  const starting = place.lying === 'upright' ? 'caution' : 'fail';
  const found = [
    ...missing(judging),
    ...endsTold('starts-on-it', starting, facts.layers, ({ laid }) => laid.starts),
    ...endsTold('stops-on-it', 'fail', facts.layers, ({ stops }) => stops),
    ...counted(judging),
    ...direction(judging),
    ...thinLines(judging),
    ...gaps(judging),
    ...pressedTold(judging),
    ...evenness(judging),
    ...sizes(judging),
    ...travel(judging),
    ...good(judging),
  ];
  return found.toSorted((a, b) => SEVERITY[b.grade] - SEVERITY[a.grade]);
}

/**
 * The worst of some grades.
 *
 * @param grades - any [-]
 * @returns the worst; `pass` of none
 *
 * @example worstGrade(['pass', 'caution']) // → 'caution'
 */
export function worstGrade(grades: readonly Grade[]): Grade {
  return grades.toSorted((a, b) => SEVERITY[b] - SEVERITY[a])[0] ?? 'pass';
}
