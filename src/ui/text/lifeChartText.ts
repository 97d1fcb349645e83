/** What the curve of life says besides the joint's own: other filaments, all its wear, and the cloud of prints. */
import { cycles, grouped, percent } from './numbers.ts';
import { listed } from './said.ts';

/** At the second mark of a joint that smaller movements wear as well. */
export const WITH_ALL_WEAR = 'with all its wear';

/** Names beside a mark; of many that last past the data the first two. */
const NAMED = 2;

/** “ABS”, “PP and TPU, past the data”, “PA12, PA6 and 2 more, past the data”. */
export function filamentLabel(names: readonly string[], isPast: boolean): string {
  if (!isPast) return listed(names);
  const more = names.length - NAMED;
  const said = more > 1 ? [...names.slice(0, NAMED), `${more} more`] : names;
  return `${listed(said)}, past the data`;
}

export const OTHER_FILAMENTS = {
  caption: 'Median life in other filaments at the strain that the joint has, by its own swing alone',
  heads: ['filament', 'half have broken by'],
} as const;

/** A life is never told past the data. */
export function medianText(median: number, isPast: boolean): string {
  if (isPast) return `more than ${grouped(median)}, beyond the data`;
  return median < 1 ? 'the first flex' : `${cycles(median)} cycles`;
}

export function wornText(median: number, maxReportableCycles: number): string {
  const said = median > maxReportableCycles ? 'beyond the data' : `${cycles(median)} cycles`;
  return `With all its wear half have broken by ${said}.`;
}

/** What the small dots are, for those who do not see them. */
export function cloudText(cloud: readonly { readonly strain: number }[]): string {
  const strains = cloud.map(({ strain }) => strain);
  const span = `${percent(Math.min(...strains))} to ${percent(Math.max(...strains))}`;
  return `Small dots: ${cloud.length} prints as they may come out, strained ${span}.`;
}
