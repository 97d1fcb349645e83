/** Follows lines from station to station. */
import type { Mm } from '../../units.ts';
import type { Track } from './audit.ts';
import type { Crossing, Walk } from './cutLayer.ts';
import type { RunFrame } from './runFrame.ts';

/** Whether a line goes on from one crossing to the next of its path: to the next station, in the same sense. */
function goesOn(a: Crossing, b: Crossing): boolean {
  return a.sense === b.sense && b.station === a.station + a.sense;
}

/** Crossings of a path in stretches without a break. */
function stretches({ crossings, closes }: Walk, isOn: (crossing: Crossing) => boolean): readonly Crossing[][] {
  const all: Crossing[][] = [];
  for (const [i, crossing] of crossings.entries()) {
    if (!isOn(crossing)) continue;
    const last = all.at(-1);
    // A crossing that was left out between two breaks the line as well.
    if (last && i > 0 && last.at(-1) === crossings[i - 1] && goesOn(last.at(-1)!, crossing)) last.push(crossing);
    else all.push([crossing]);
  }
  const [first, last] = [all[0], all.at(-1)];
  const isWhole = first?.[0] === crossings[0] && last?.at(-1) === crossings.at(-1);
  if (closes && first && last && first !== last && isWhole && goesOn(last.at(-1)!, first[0]!)) {
    all.pop();
    all[0] = [...last, ...first];
  }
  return all;
}

function trackOf(crossings: readonly Crossing[], stations: Float64Array): Track {
  const count = crossings.length;
  const { sense, path } = crossings[0]!;
  const at = new Float64Array(count);
  const off = new Float64Array(count);
  const width = new Float64Array(count);
  for (let i = 0; i < count; i += 1) {
    const crossing = crossings[sense > 0 ? i : count - 1 - i]!;
    at[i] = stations[crossing.station]!;
    off[i] = crossing.off;
    width[i] = crossing.width;
  }
  return { path, at, off, width };
}

/** Lines no farther apart than this lie in one another's continuation, so that round-off does not put them in order [mm]. */
const SAME_PLACE: Mm = 1e-6;

const placeOf = ({ off }: Track) => Math.round(off.reduce((sum, value) => sum + value, 0) / off.length / SAME_PLACE);

/**
 * Lines of a layer between their breaks, from the right of the run to its left.
 *
 * @param walks - crossings of each path in its order [mm]
 * @param isOn - which of them belong to the section [-]
 * @param frame - the stations [mm]
 * @returns lines [mm]
 */
export function tracksOf(
  walks: readonly Walk[],
  isOn: (crossing: Crossing) => boolean,
  { stations }: Pick<RunFrame, 'stations'>,
): readonly Track[] {
  return walks
    .flatMap((walk) => stretches(walk, isOn))
    .map((crossings) => trackOf(crossings, stations))
    .toSorted((a, b) => placeOf(a) - placeOf(b) || a.at[0]! - b.at[0]!);
}
