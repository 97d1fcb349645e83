/** Changes to the whole part or print that help its thin sections, each with every section before and after. */
import type { Box3 } from '../geometry/mesh/triangleMesh.ts';
import type { Cure, CureChange } from './cure.ts';
import { filamentCures, lyingCures, turnCures } from './cureUse.ts';
import { lineWidthCures, pairCures, scaleCures } from './cureWhole.ts';
import type { Flexure } from './flexure.ts';
import { judgeAll } from './judge.ts';
import type { AskedOfAll, Judged, PrintedAs } from './judged.ts';
import { isHelp, type Curable } from './curable.ts';
import { tallyOf } from './verdicts.ts';

/** More are not read. */
const MOST = 6;

/**
 * Cures for a part: one change to all of it at a time, the most helpful first.
 *
 * - scale: the nearest to the file's size at which most sections are whole, and the one at which most are even;
 * - line width: within what the nozzle lays well, else within what it lays at all;
 * - scale and line width together, only where neither alone makes all whole;
 * - filament: those on the shelf in which most last;
 * - turn: the largest at which all last;
 * - lying: the side of the part on which most last.
 *
 * None lowers how many pass, how many land whole or how many last; each raises one of these, or how many are even.
 *
 * @param flexures - as found [mm]
 * @param box - of the part as in the file [mm]
 * @param as - scale, which way is up, print profile [mm]
 * @param asked - how far each bends [rad] and how often [-]
 * @param fileName - of the part [-]
 * @returns at most six cures, none where all pass and are even
 *
 * Source: plane-bending, bead-section, common-practice.
 */
export function cures(
  flexures: readonly Flexure[],
  box: Box3,
  as: PrintedAs,
  asked: AskedOfAll,
  fileName: string,
): readonly Cure[] {
  if (flexures.length === 0) return [];
  const judge = (changed: PrintedAs, wanted = asked) => judgeAll(flexures, box, changed, wanted, fileName);
  const before = judge(as);
  const cureOf: Curable['cureOf'] = (change, changed, wanted = asked) => {
    const after = judge(changed, wanted);
    const { whole, even, passing } = tallyOf(after);
    const costs = costsOf(change, as, changed, before, after);
    return { change, as: changed, asked: wanted, before, after, whole, even, passing, costs };
  };
  const part: Curable = { flexures, box, as, asked, before, judge, cureOf };
  const [scales, widths] = [scaleCures(part), lineWidthCures(part)];
  const found = [
    ...scales,
    ...widths,
    ...pairCures(part, [...scales, ...widths]),
    ...filamentCures(part),
    ...turnCures(part),
    ...lyingCures(part),
  ];
  const was = tallyOf(before);
  return found
    .filter((cure) => isHelp(was, tallyOf(cure.after)))
    .toSorted(byHelp)
    .slice(0, MOST);
}

function costsOf(
  change: CureChange,
  was: PrintedAs,
  is: PrintedAs,
  before: readonly Judged[],
  after: readonly Judged[],
): Cure['costs'] {
  const size = is.scale / was.scale;
  // A smaller turn leaves the effort at the same turn as it is.
  const effort = change.kind === 'turn' ? 1 : effortRatio(before, after);
  return { volume: size ** 3, effort, size };
}

/** New over old effort: the geometric mean over all sections that can be assessed both ways. */
function effortRatio(before: readonly Judged[], after: readonly Judged[]): number {
  const logs = before.flatMap(({ assessed: was }, i) => {
    const is = after[i]?.assessed;
    return was.ok && is?.ok ? [Math.log(is.value.effort.effort / was.value.effort.effort)] : [];
  });
  return logs.length === 0 ? 1 : Math.exp(logs.reduce((sum, log) => sum + log, 0) / logs.length);
}

/** Weights that rank cures which help as much; our judgement, in the proportions of those that rank ways out of one joint. */
const COST: Readonly<Record<Exclude<CureChange['kind'], 'scale' | 'turn'>, number>> = {
  'line-width': 0.2,
  lying: 0.3,
  filament: 0.35,
};

function costOf({ change, as, before, costs }: Cure): number {
  switch (change.kind) {
    case 'scale': {
      const second = as.profile.lineWidth === before[0]?.joint.profile.lineWidth ? 0 : 0.5;
      return 1.2 * Math.abs(Math.log(costs.size)) + second;
    }
    case 'turn':
      return 1.6 * Math.log2((before[0]?.joint.movement.amount ?? change.turn) / change.turn);
    case 'line-width':
    case 'lying':
    case 'filament':
      return COST[change.kind];
  }
}

const helped = ({ after }: Cure) => tallyOf(after).whole + tallyOf(after).lasting;

function byHelp(a: Cure, b: Cure): number {
  return b.passing - a.passing || helped(b) - helped(a) || costOf(a) - costOf(b);
}
