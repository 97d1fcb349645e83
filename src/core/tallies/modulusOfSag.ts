/** Stiffness from how far a loaded bar hangs down, at any size of bending; a bar that was pulled may tell it as well. */
import { endLoadAtTravel } from '../closedForms/endLoadedLeaf.ts';
import { bendingModulus } from '../material/choose.ts';
import type { PullTally, SagTally, Tally } from '../material/tally.ts';
import type { Filament, Provenance, Quantity } from '../material/types.ts';
import { normalQuantile } from '../numeric/normal.ts';
import { CALIPER_SIGMA } from '../print/spread.ts';
import type { MPa, Mm } from '../units.ts';
import type { LearnedFigure } from './learned.ts';
import { taughtBy, taughtSo } from './taught.ts';
import { believed, oddAmong, type Reading } from './believed.ts';

/** What an eye beside a ruler reads wrongly, of the sag and of the arm [mm], one standard deviation. Our judgement. */
const RULER_SIGMA: Mm = 0.5;
/** Share by which a stiffness from a pulled bar may be off, one standard deviation: how its stretch is measured. Our judgement. */
const PULLED_SIGMA = 0.08;
const TENTH = normalQuantile(0.9);
/** A row that gives its stiffness without a range is not beyond all doubt, one standard deviation. Our judgement. */
const LEAST_DOUBT = 0.01;

/**
 * Modulus of a bar that is clamped at one end and hangs down under a weight at the other.
 *
 *     E = F·L²/(α·I),   I = b·t³/12,   α(w/L) of the end-loaded leaf
 *
 * For a little sag it is the handbook's F·L³/(3·w·I); at large sag the weight comes nearer to the clamp, which α knows. The
 * bar's own weight is left out, as the sag is that between the bar with and without the weight.
 *
 * @param tally - force F [N], sag w [mm], length L [mm], thickness t [mm], depth b [mm]; sag at most nine tenths of the length
 * @returns modulus [MPa], > 0
 *
 * Source: end-loaded-elastica.
 * @example stiffnessOfSag({ force: 0.1, sag: 0.71, length: 71, thickness: 0.84, depth: 6 }) // → 56694.7581
 */
export function stiffnessOfSag({
  force,
  sag,
  length,
  thickness,
  depth,
}: Pick<SagTally, 'force' | 'sag' | 'length' | 'thickness' | 'depth'>): MPa {
  const { load } = endLoadAtTravel(sag / length);
  return (12 * force * length ** 2) / (load * depth * thickness ** 3);
}

/** By how much of itself a stiffness may be off through what was read, apart from the thickness of the bar. */
function readWithin({ sag, length }: SagTally): number {
  // α grows about as w/L, so that the sag counts once and the length three times; a little more at large sag.
  return Math.hypot(RULER_SIGMA / sag, (3 * RULER_SIGMA) / length);
}

/** The bar of several readings is often the same one: its thickness is off by the same in all of them. */
function thicknessWithin(sags: readonly SagTally[]): number {
  return Math.max(0, ...sags.map(({ thickness }) => (3 * CALIPER_SIGMA) / thickness));
}

/** The modulus to bend with over that when pulled: the row knows both, as a rubbery filament is bent with a secant half as steep. */
function bentOverPulled(prior: Filament, acrossLayers: boolean): number {
  const { youngsModulus, youngsModulusAcrossLayers } = prior.properties;
  const pulled = acrossLayers ? (youngsModulusAcrossLayers ?? youngsModulus) : youngsModulus;
  return bendingModulus(prior, acrossLayers).typical / pulled.typical;
}

function readingOf(prior: Filament, tally: SagTally | PullTally): Reading<SagTally | PullTally> | undefined {
  if (tally.kind === 'sag') {
    return { tally, value: Math.log(stiffnessOfSag(tally)), sigma: readWithin(tally) };
  }
  if (tally.modulus === undefined) return undefined;
  const bent = tally.modulus * bentOverPulled(prior, isAcross(tally));
  return { tally, value: Math.log(bent), sigma: PULLED_SIGMA };
}

function isAcross(tally: SagTally | PullTally): boolean {
  return tally.kind === 'sag' ? tally.lying === 'upright' : tally.direction === 'across layers';
}

function taughtByBars(by: readonly (SagTally | PullTally)[]): Provenance {
  const pulled = by.filter(({ kind }) => kind === 'pull').length;
  if (pulled === 0) return taughtBy(by.length, 'bar under a weight', 'bars under a weight');
  if (pulled === by.length) return taughtBy(by.length, 'bar pulled', 'bars pulled');
  return taughtSo(`${by.length} bars under a weight or pulled`);
}

/**
 * The modulus to bend with, along lines or across layers, by what the row says and what bars have told.
 *
 * The row's low and high are taken as what one in ten lies below and above; readings are log-normal about the truth. A bar that was
 * pulled tells the modulus when pulled, and that to bend with in the row's own proportion.
 *
 * @param prior - row whose figures stand where nothing was tested [MPa]
 * @param tallies - all of the row; other kinds and those set aside are passed over [-]
 * @param acrossLayers - which of the two [-]
 * @returns the modulus with its range [MPa], and which readings lie far off; undefined where none tells it
 *
 * Source: bayes-rule, end-loaded-elastica.
 */
export function modulusOfSag(
  prior: Filament,
  tallies: readonly Tally[],
  acrossLayers: boolean,
): LearnedFigure<Quantity> | undefined {
  const readings = tallies
    .filter((tally) => tally.kind === 'sag' || tally.kind === 'pull')
    .filter((tally) => !tally.leftOut && isAcross(tally) === acrossLayers)
    .flatMap((tally) => readingOf(prior, tally) ?? []);
  if (readings.length === 0) return undefined;
  const { typical, low = typical / 1.3, high = typical * 1.3, unit } = bendingModulus(prior, acrossLayers);
  const before = { mean: Math.log(typical), sigma: Math.max(LEAST_DOUBT, Math.log(high / low) / (2 * TENTH)) };
  const shared = thicknessWithin(readings.flatMap(({ tally }) => (tally.kind === 'sag' ? [tally] : [])));
  const { mean, sigma } = believed(before, readings, shared);
  const by = readings.map(({ tally }) => tally);
  const value: Quantity = {
    typical: Math.exp(mean),
    low: Math.exp(mean - TENTH * sigma),
    high: Math.exp(mean + TENTH * sigma),
    unit,
    direction: acrossLayers ? 'across layers' : 'along lines',
    provenance: taughtByBars(by),
  };
  return { value, by, odd: oddAmong(before, readings, shared) };
}
