import { archForceUnit, bistableRatio, restPoints, snapLoads } from '../../closedForms/snapArch.ts';
import type { Mm } from '../../units.ts';
import type { PageMaker } from './exercise.ts';
import { factsOf, linesAcross, steps, type FilamentFacts, type LinesAcross } from './grids.ts';
import { read, READING, worked } from './question.ts';
import { LEAF_LETTERS } from './threeLengths.ts';

export interface ArchSpringsBack extends LinesAcross {
  readonly filament: FilamentFacts;
  readonly depth: Mm;
  /** Between the walls; the same for all three. */
  readonly span: Mm;
  /** Of arches P, Q and R, from the flattest. */
  readonly rises: readonly [Mm, Mm, Mm];
  /** Rise over thickness from which an arch stays: two joined at the middle, and one alone. */
  readonly staysFrom: { readonly double: number; readonly free: number };
}

const FILAMENT_IDS = ['petg', 'asa', 'pc', 'pa12', 'pa6', 'pp'] as const;

/** From narrow to wide, so that neighbours have arches enough to differ by [mm]. */
const WIDTHS: readonly Mm[] = [0.36, 0.4, 0.42, 0.45, 0.5, 0.55, 0.6];

const ratiosOf = ({ rises, thickness }: ArchSpringsBack) => rises.map((rise) => rise / thickness);

/** To three figures, as it stands on the page. */
const said = (value: number) => Number(value.toPrecision(3));
const STAYS_FROM = { double: said(bistableRatio('double')), free: said(bistableRatio('free')) } as const;

/** Arches are drawn twice as large as they are: a rise is small. */
export const ARCH_SCALE = 2;
const ARCH_READING = READING / ARCH_SCALE;

/** The way of an arch is long to walk, and pages ask for few ratios over and over. */
const snapped = new Map<number, number>();

/** Force that snaps arch R, in E·I·h/L³. */
export function snapsAt({ rises, thickness }: ArchSpringsBack): number {
  const ratio = rises[2] / thickness;
  const known = snapped.get(ratio);
  if (known !== undefined) return known;
  const force = said(snapLoads(ratio, 'double')?.top.force ?? 0);
  snapped.set(ratio, force);
  return force;
}

/** More than a hand pushes with ease [N]. */
const MOST_FORCE = 150;

function forceOf(given: ArchSpringsBack): number {
  const { filament, depth, thickness, span, rises } = given;
  return snapsAt(given) * archForceUnit(filament.modulus, depth, thickness, span, rises[2]);
}

const onPaper = (value: Mm, of = '') => read('width', value, ARCH_READING, of);

/** Arches that stay, and arches that spring back. */
export const archSpringsBack: PageMaker<ArchSpringsBack> = {
  seed: 9,
  draw: (pick) => {
    const across = linesAcross(pick([2, 3, 4]), pick(WIDTHS));
    const rises = [pick(steps(0.75, 4, 0.25)), pick(steps(2, 8, 0.25)), pick(steps(5.5, 12, 0.5))] as const;
    return {
      ...across,
      filament: factsOf(pick(FILAMENT_IDS)),
      depth: pick([2, 3, 4]),
      span: pick(steps(44, 64)),
      rises,
      staysFrom: STAYS_FROM,
    };
  },
  // One springs back, one stays; and of those that stay, one would not stay alone, or one would.
  isFit: (given) => {
    const { staysFrom, thickness, rises } = given;
    const ratios = ratiosOf(given);
    const [flat = 0, , high = 0] = ratios;
    const isClearOf = (limit: number) =>
      ratios.every((ratio) => Math.abs(ratio - limit) > (1.2 * ARCH_READING) / thickness);
    return (
      rises[1] - rises[0] >= 1 &&
      rises[2] - rises[1] >= 1 &&
      flat < staysFrom.double &&
      high > staysFrom.free &&
      isClearOf(staysFrom.double) &&
      isClearOf(staysFrom.free) &&
      forceOf(given) <= MOST_FORCE
    );
  },
  ask: (given) => {
    const { rises, thickness, staysFrom, span } = given;
    const ratios = ratiosOf(given);
    const [rise, ratio] = [rises[2], ratios[2] ?? 0];
    const staying = (from: number) => LEAF_LETTERS.filter((_, at) => (ratios[at] ?? 0) >= from);
    const travel = (restPoints(ratio, 'double')?.snapped ?? 0) * rise;
    const force = forceOf(given);
    // The force goes with the rise, and with the span by its cube.
    const off = force * (ARCH_READING / rise + (3 * ARCH_READING) / span);
    return [
      { key: 'measure', figures: [onPaper(span), ...rises.map((one, at) => onPaper(one, LEAF_LETTERS[at]))] },
      {
        key: 'ratio',
        figures: ratios.map((one, at) => read('times', one, ARCH_READING / thickness, LEAF_LETTERS[at])),
      },
      { key: 'stays', figures: [], choice: { among: LEAF_LETTERS, right: staying(staysFrom.double) } },
      { key: 'least', figures: [worked('width', staysFrom.double * thickness)] },
      { key: 'rest', figures: [read('width', travel, 2 * ARCH_READING)] },
      { key: 'force', figures: [read('force', force, off)] },
      { key: 'alone', figures: [], choice: { among: LEAF_LETTERS, right: staying(staysFrom.free) } },
    ];
  },
};
