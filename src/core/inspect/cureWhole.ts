/** Cures that make thin sections whole: another scale, another line width, or both. */
import { checkProfile, layableWidths } from '../print/checkProfile.ts';
import type { PrintProfile } from '../print/profile.ts';
import type { Cure } from './cure.ts';
import type { Curable } from './curable.ts';
import type { PrintedAs } from './judged.ts';
import { tallyOf } from './verdicts.ts';
import { byScale, byWidth, rounded, stretchesOf, thinOf, type Span, type Stretch, type Thin } from './wholeSearch.ts';

/** A part scaled beyond this is another part. Our judgement, no source. */
export const SCALES = { min: 0.8, max: 4 } as const;
/** Below the size of the file walls grow thinner than meant; only where nothing larger helps. */
const AS_FILE = 1;

type Order = (a: Stretch, b: Stretch) => number;

/** Our order: sections that are even count most, then those that are whole, then nearness. */
const evenFirst =
  (near: number): Order =>
  (a, b) =>
    b.even - a.even || b.whole - a.whole || apart(a, near) - apart(b, near);
const wholeFirst =
  (near: number): Order =>
  (a, b) =>
    b.whole - a.whole || apart(a, near) - apart(b, near);

function apart({ value }: Stretch, near: number): number {
  return Math.abs(Math.log(value / near));
}

/** A scale is set with three decimals, a line width with two. */
const SCALE_DECIMALS = [3, 4, 6];
const WIDTH_DECIMALS = [2, 3, 4];

/**
 * The scale nearest to the file's size at which most sections are whole, and the one at which most are even, where they help.
 *
 * @param part - as checked [-]
 * @returns cures [-], none where all are whole and even, one where both are the same
 *
 * Source: bead-section.
 */
export function scaleCures(part: Curable): readonly Cure[] {
  const { as, flexures, box, before } = part;
  if (tallyOf(before).even === before.length) return [];
  const thins = thinOf(flexures, box, as);
  const larger = bestScales(part, thins, { min: AS_FILE, max: SCALES.max });
  return larger.length > 0 ? larger : bestScales(part, thins, { min: SCALES.min, max: AS_FILE });
}

function bestScales({ as, before, cureOf }: Curable, thins: readonly Thin[], span: Span): readonly Cure[] {
  const lines = byScale(thins, as.profile);
  const stretches = stretchesOf(lines, span);
  const was = tallyOf(before);
  const best = [wholeFirst(AS_FILE), evenFirst(AS_FILE)].flatMap((order) => stretches.toSorted(order).slice(0, 1));
  const helping = best.filter(({ whole, even }) => whole >= was.whole && (whole > was.whole || even > was.even));
  const scales = helping.map((one) => rounded(one, SCALE_DECIMALS, lines));
  return [...new Set(scales)]
    .filter((scale) => scale !== as.scale)
    .map((scale) => cureOf({ kind: 'scale', scale }, { ...as, scale }));
}

/** Line widths that the nozzle lays well, then those that it lays at all; no narrower than layers are high. */
function widthRanges({ nozzle, layerHeight }: PrintProfile) {
  const { soft, hard } = layableWidths(nozzle);
  return [soft, hard]
    .map(({ min, max }) => ({ min: Math.max(min, layerHeight), max }))
    .filter(({ min, max }) => min < max);
}

/**
 * The line width at which most sections are whole, as near as can be to the present one.
 *
 * @param part - as checked [-]
 * @returns one cure, or none [-]
 *
 * Source: bead-section, common-practice.
 */
export function lineWidthCures({ as, flexures, box, before, cureOf }: Curable): readonly Cure[] {
  const lines = byWidth(thinOf(flexures, box, as), as);
  const was = tallyOf(before).whole;
  for (const range of widthRanges(as.profile)) {
    const best = stretchesOf(lines, range).toSorted(mostWhole(as))[0];
    if (best === undefined || best.whole <= was) continue;
    const width = rounded(best, WIDTH_DECIMALS, lines);
    const profile = { ...as.profile, lineWidth: width };
    if (checkProfile(profile).problems.length > 0) continue;
    return [cureOf({ kind: 'line-width', lineWidth: width }, { ...as, profile })];
  }
  return [];
}

/** Of a line width no size hangs: whole ones count most, then even ones. */
function mostWhole({ profile }: PrintedAs): Order {
  return (a, b) => b.whole - a.whole || evenFirst(profile.lineWidth)(a, b);
}

/** Line widths that a pair is looked for among [mm]. */
const WIDTH_STEP = 0.01;
/** Of more different sections a pair that makes all whole is chance. */
const MOST_DIFFERENT = 12;

/**
 * A scale and a line width together that make all sections whole, where no single one does: the nearest to the file's size.
 *
 * @param part - as checked [-]
 * @param alone - cures of one of both [-]
 * @returns one cure, or none [-]
 *
 * Source: bead-section, common-practice.
 */
export function pairCures({ as, flexures, box, before, cureOf }: Curable, alone: readonly Cure[]): readonly Cure[] {
  const all = flexures.length;
  const isDone = tallyOf(before).whole === all || alone.some(({ whole }) => whole === all);
  const thins = thinOf(flexures, box, as);
  const [well] = widthRanges(as.profile);
  if (isDone || thins.length > MOST_DIFFERENT || !well) return [];
  const steps = Math.floor((well.max - well.min) / WIDTH_STEP + 1e-9);
  const pairs = Array.from({ length: steps + 1 }, (_, i) => Number((well.min + i * WIDTH_STEP).toFixed(4))).flatMap(
    (lineWidth) => {
      const profile = { ...as.profile, lineWidth };
      const lines = byScale(thins, profile);
      const whole = stretchesOf(lines, { min: AS_FILE, max: SCALES.max }).filter((one) => one.whole === all);
      return whole.map((stretch) => ({ profile, stretch, lines }));
    },
  );
  const wide = (profile: PrintProfile) => Math.abs(Math.log(profile.lineWidth / as.profile.lineWidth));
  const [best] = pairs.toSorted(
    (a, b) => apart(a.stretch, AS_FILE) - apart(b.stretch, AS_FILE) || wide(a.profile) - wide(b.profile),
  );
  if (!best || checkProfile(best.profile).problems.length > 0) return [];
  const scale = rounded(best.stretch, SCALE_DECIMALS, best.lines);
  return [cureOf({ kind: 'scale', scale }, { ...as, scale, profile: best.profile })];
}
