/** How far strips may be bent once, from those that were laid over round bars and left unmarked, whitened or cracked. */
import { strainFactorAcrossLayers } from '../material/choose.ts';
import type { FlexTally, MarkTally, Tally } from '../material/tally.ts';
import type { Filament, Quantity } from '../material/types.ts';
import { normalQuantile } from '../numeric/normal.ts';
import { equivalentOf, flexStrain } from './flexStrain.ts';
import type { LearnedFigure } from './learned.ts';
import { taughtBy } from './taught.ts';
import { thresholdBy, type Tried } from './threshold.ts';

const TENTH = normalQuantile(0.9);
/** What is known of the strain that breaks at once before anything has been bent: within a factor of two. Our judgement. */
const BREAK_SIGMA = Math.log(2) / TENTH;
/** A strip that went through so many flexes did not break on the first. */
const LIVED = 2;

function ofKind<K extends Tally['kind']>(tallies: readonly Tally[], kind: K): readonly Extract<Tally, { kind: K }>[] {
  return tallies.filter((tally): tally is Extract<Tally, { kind: K }> => tally.kind === kind && !tally.leftOut);
}

const once = (tally: MarkTally) =>
  ({ ...tally, bend: { way: 'over', radius: tally.radius }, ways: 'one way' }) as const;

/** As if along lines: across layers a strip marks at a share of the strain. */
function strainOf(tally: MarkTally, filament: Filament): number {
  const { peak } = flexStrain(once(tally));
  return tally.lying === 'upright' ? peak / strainFactorAcrossLayers(filament).typical : peak;
}

/**
 * The strain of one brief flex that leaves nine strips in ten unmarked.
 *
 * A strip marks about where it yields, so that the yield strain of the row with its low and high is what is believed before;
 * each strip over a bar says on which side it was, in the manner of the mandrel test of coatings.
 *
 * @param prior - row whose figures stand where nothing was tested [-]
 * @param tallies - all of a row; other kinds and those set aside are passed over [-]
 * @returns strain as a fraction (a tenth of the strips mark below it; low and high: a hundredth, and half), and which
 *   strips are at odds with the others; undefined where none was tried
 *
 * Source: bayes-rule, iso-1519.
 */
export function allowableOfMarks(prior: Filament, tallies: readonly Tally[]): LearnedFigure<Quantity> | undefined {
  const by = ofKind(tallies, 'mark');
  if (by.length === 0) return undefined;
  const { typical, low = typical / 1.3, high = typical * 1.3 } = prior.properties.yieldStrain;
  const before = { mean: Math.log(typical), sigma: Math.log(high / low) / (2 * TENTH) };
  const tried = by.map((tally): Tried<MarkTally> => ({
    tally,
    strain: strainOf(tally, prior),
    happened: tally.looks !== 'unmarked',
  }));
  const { p10, p50, odd } = thresholdBy(before, tried);
  const value: Quantity = {
    typical: p10,
    low: p10 ** 2 / p50,
    high: p50,
    unit: prior.properties.permissibleStrainSingle.unit,
    direction: 'along lines',
    provenance: taughtBy(by.length, 'strip laid over a bar', 'strips laid over bars'),
  };
  return { value, by, odd };
}

/**
 * The strain that breaks a strip on its first flex, where strips have cracked at once or lived through some flexes.
 *
 * @param prior - row whose figures stand where nothing was tested [-]
 * @param tallies - all of a row; other kinds and those set aside are passed over [-]
 * @returns equivalent strain as a fraction, half of the strips breaking below it [-], and which are at odds with the others;
 *   undefined where no strip cracked, and where none was bent farther than the row says that it breaks
 *
 * Source: bayes-rule.
 */
export function breakOfMarks(prior: Filament, tallies: readonly Tally[]): LearnedFigure<number> | undefined {
  const marks = ofKind(tallies, 'mark').map((tally): Tried<Tally> => ({
    tally,
    strain: equivalentOf(once(tally), prior),
    happened: tally.looks === 'cracked',
  }));
  const flexes = ofKind(tallies, 'flexes').flatMap((tally: FlexTally): readonly Tried<Tally>[] => {
    const happened = tally.ended === 'broke' && tally.cycles < LIVED;
    return happened || tally.cycles >= LIVED ? [{ tally, strain: equivalentOf(tally, prior), happened }] : [];
  });
  const { firstFlexBreakStrain } = prior.life;
  const tried = [...marks, ...flexes];
  if (!tried.some(({ strain, happened }) => happened || strain > firstFlexBreakStrain)) return undefined;
  const before = { mean: Math.log(firstFlexBreakStrain), sigma: BREAK_SIGMA };
  const { p50, odd } = thresholdBy(before, tried);
  return { value: p50, by: tried.map(({ tally }) => tally), odd };
}
