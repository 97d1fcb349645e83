/** Cures that let thin sections last: another filament, a smaller turn, another side of the part on the plate. */
import { everyFilament } from '../material/shelf.ts';
import { degrees, radians, type Rad } from '../units.ts';
import type { Cure } from './cure.ts';
import { isHelp, type Curable } from './curable.ts';
import { PLATE_UPS } from './judged.ts';
import { isLasting, tallyOf } from './verdicts.ts';

/** So many filaments are told. */
const MOST_FILAMENTS = 2;

const lasting = ({ after }: Cure) => tallyOf(after).lasting;
const feel = ({ costs }: Cure) => Math.abs(Math.log(costs.effort));

/** Most that pass first, then most that last; of those the one that pushes back most alike. */
function byLasting(a: Cure, b: Cure): number {
  return b.passing - a.passing || lasting(b) - lasting(a) || b.whole - a.whole || feel(a) - feel(b);
}

/**
 * The filaments on the shelf in which most sections last.
 *
 * @param part - as checked [-]
 * @returns two cures at most, none where no filament helps [-]
 *
 * Source: strain-life.
 */
export function filamentCures({ as, before, cureOf }: Curable): readonly Cure[] {
  const was = tallyOf(before);
  if (was.lasting === before.length) return [];
  return everyFilament()
    .filter(({ printable, id }) => printable && id !== as.profile.filament)
    .map(({ id }) => cureOf({ kind: 'filament', filament: id }, { ...as, profile: { ...as.profile, filament: id } }))
    .filter(({ after }) => isHelp(was, tallyOf(after)))
    .toSorted(byLasting)
    .slice(0, MOST_FILAMENTS);
}

/** A stop is set in whole degrees; below this in tenths. */
const COARSE_FROM = 5;
const TENTHS = 10;

/**
 * The largest turn at which every section that can be assessed reaches the wanted life and chance.
 *
 * @param part - as checked [-]
 * @returns one cure, none where all last as it is or nothing lasts at any turn [-]
 *
 * Source: strain-life.
 */
export function turnCures({ as, asked, before, judge, cureOf }: Curable): readonly Cure[] {
  const possible = before.filter(({ assessed }) => assessed.ok).length;
  if (possible === 0 || tallyOf(before).lasting === possible) return [];
  const lastAt = (turn: Rad) => judge(as, { ...asked, turn }).filter(isLasting).length >= possible;
  // Short of what is asked for by round-off is not less.
  const below = degrees(asked.turn) - 1e-9;
  const whole = largest(Math.ceil(below) - 1, (count) => lastAt(radians(count)));
  const tenths =
    whole >= COARSE_FROM
      ? whole * TENTHS
      : largest(Math.min(Math.ceil(below * TENTHS) - 1, COARSE_FROM * TENTHS), (count) =>
          lastAt(radians(count / TENTHS)),
        );
  if (tenths < 1) return [];
  const turn = radians(tenths / TENTHS);
  return [cureOf({ kind: 'turn', turn }, as, { ...asked, turn })];
}

/** The largest whole number up to a most for which something holds that holds for all smaller ones; 0 where it never does. */
function largest(most: number, holds: (count: number) => boolean): number {
  let [good, bad] = [0, Math.max(0, most) + 1];
  while (bad - good > 1) {
    const middle = Math.floor((good + bad) / 2);
    if (holds(middle)) good = middle;
    else bad = middle;
  }
  return good;
}

/**
 * The side of the part on the plate with which most sections pass, last and land whole.
 *
 * @param part - as checked [-]
 * @returns one cure, or none [-]
 *
 * Source: common-practice.
 */
export function lyingCures({ as, before, cureOf }: Curable): readonly Cure[] {
  const was = tallyOf(before);
  return PLATE_UPS.filter((up) => up !== as.up)
    .map((up) => cureOf({ kind: 'lying', up }, { ...as, up }))
    .filter(({ after }) => isHelp(was, tallyOf(after)))
    .toSorted(byLasting)
    .slice(0, 1);
}
