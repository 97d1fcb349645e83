import type { BeamNode, Member, Support } from '../beam/model.ts';
import { unfoldedLength } from '../closedForms/foldedLeafTurns.ts';
import type { Point } from '../geometry/outline.ts';
import type { Mm } from '../units.ts';
import { hold, modelOf, padOutline } from './commonNetwork.ts';
import { padLength } from './commonSizes.ts';
import type { FoldedSizes } from './foldedLeaf.ts';
import type { Body, Dimension, FlexureNetwork, Mechanics, NetworkAsked } from './network.ts';

/** A spring pulled to half its unfolded length has long ceased to be soft. */
const FAR = 0.5;
/** A single run in a slide is stretched as well as bent. */
const FAR_ALONE = 0.25;

/**
 * Runs along y, the first up from the fixed pad at x = 0, the others to its right; the moving pad is below the last run
 * where their number is even and above it where it is odd. Its place is told where that run ends.
 */
export const foldedLeafNetwork: Mechanics<FoldedSizes> = {
  network: foldedNetwork,

  reach: (sizes, _, drive) => {
    if (drive === 'turned') return Math.PI;
    const { runs, length, spacing } = sizes;
    if (runs === 1) return FAR_ALONE * length;
    return FAR * (drive === 'pulled' ? unfoldedLength(sizes) - (runs - 1) * spacing : (runs - 1) * spacing);
  },

  limit: pulledStraight,
};

/** Where the whole leaf would lie straight between its ends; a single run in a slide is stretched from the beginning. */
function pulledStraight(sizes: FoldedSizes, _: Mm, drive: string): number {
  const { runs, length, spacing } = sizes;
  if (runs === 1 || drive === 'turned') return Infinity;
  const across = (runs - 1) * spacing;
  const along = runs % 2 === 0 ? 0 : length;
  const [before, beside] = drive === 'pulled' ? [across, along] : [along, across];
  return Math.sqrt(unfoldedLength(sizes) ** 2 - beside ** 2) - before;
}

function foldedNetwork(sizes: FoldedSizes, thickness: Mm, asked: NetworkAsked): FlexureNetwork {
  const { drive, amount } = asked;
  const runs = runsOf(sizes);
  const last = `end${runs.length}`;
  return {
    model: modelOf({
      nodes: runs.flatMap(({ start, end }) => [start, end]),
      members: membersOf(runs, sizes, thickness, asked.widthRatio),
      pads: [
        { id: 'fixed', nodes: ['start1'] },
        { id: 'moving', nodes: [last] },
      ],
      supports: [hold('fixed'), ...slideOf(drive)],
      motions: [{ at: 'moving', [directionOf(drive)]: amount }],
    }),
    driven: { at: 'moving', direction: directionOf(drive) },
    moving: 'moving',
    alike: sizes.sideBySide,
    bodies: foldedBodies(runs, sizes, thickness),
    dimensions: foldedDimensions(sizes),
  };
}

function directionOf(drive: string): 'x' | 'y' | 'turn' {
  if (drive === 'pulled') return 'x';
  return drive === 'shifted' ? 'y' : 'turn';
}

/** A slide holds everything but the way it lies; a pure moment lets the pad go where the folds take it. */
function slideOf(drive: string): readonly Support[] {
  if (drive === 'pulled') return [{ at: 'moving', y: true, turn: true }];
  return drive === 'shifted' ? [{ at: 'moving', x: true, turn: true }] : [];
}

interface Run {
  readonly number: number;
  readonly start: BeamNode;
  readonly end: BeamNode;
}

function runsOf({ runs, length, spacing }: FoldedSizes): readonly Run[] {
  return Array.from({ length: runs }, (_, i) => {
    const [x, number, isUp] = [i * spacing, i + 1, i % 2 === 0];
    const [bottom, top] = [
      { x, y: 0 },
      { x, y: length },
    ];
    return {
      number,
      start: { id: `start${number}`, ...(isUp ? bottom : top) },
      end: { id: `end${number}`, ...(isUp ? top : bottom) },
    };
  });
}

/** The runs, and between them the turns: to the right at the top, to the left at the bottom. */
function membersOf(runs: readonly Run[], sizes: FoldedSizes, thickness: Mm, widthRatio: number): readonly Member[] {
  const common = { thickness, width: sizes.depth, widthRatio };
  return runs.flatMap(({ number, start, end }): readonly Member[] => {
    const run: Member = { id: `run${number}`, from: start.id, to: end.id, shape: { kind: 'straight' }, ...common };
    if (number === runs.length) return [run];
    const turn = number % 2 === 1 ? -Math.PI : Math.PI;
    return [
      run,
      { id: `turn${number}`, from: end.id, to: `start${number + 1}`, shape: { kind: 'arc', turn }, ...common },
    ];
  });
}

function foldedBodies(runs: readonly Run[], sizes: FoldedSizes, thickness: Mm): readonly Body[] {
  const [first, last] = [runs[0], runs.at(-1)];
  if (!first || !last) throw new RangeError('a folded leaf has at least one run');
  return [
    { pad: 'fixed', outlines: [padAt(first.start, 'below', sizes, thickness)] },
    { pad: 'moving', outlines: [padAt(last.end, runs.length % 2 === 1 ? 'above' : 'below', sizes, thickness)] },
  ];
}

function padAt(end: Point, place: 'above' | 'below', { fillet, pad }: FoldedSizes, thickness: Mm) {
  const isBelow = place === 'below';
  const [near, far] = [fillet, fillet + padLength(thickness)];
  const box = {
    left: end.x - pad / 2,
    right: end.x + pad / 2,
    bottom: isBelow ? end.y - far : end.y + near,
    top: isBelow ? end.y - near : end.y + far,
  };
  const side = isBelow ? 'top' : 'bottom';
  return padOutline(box, [{ side, end, heading: isBelow ? Math.PI / 2 : -Math.PI / 2, thickness, fillet }]);
}

function foldedDimensions({ runs, length, spacing, fillet, pad }: FoldedSizes): readonly Dimension[] {
  const foot = { x: 0, y: 0 };
  const face = -fillet;
  const common: readonly Dimension[] = [
    { kind: 'distance', parameter: 'length', from: foot, to: { x: 0, y: length }, off: pad / 2 + 4 },
    { kind: 'thickness', parameter: 'lines', member: 'run1', share: 0.5 },
    { kind: 'distance', parameter: 'pad', from: { x: pad / 2, y: face }, to: { x: -pad / 2, y: face }, off: 6 },
  ];
  if (runs === 1) return common;
  const from = { x: 0, y: length };
  const off = spacing / 2 + 4;
  return [...common, { kind: 'distance', parameter: 'spacing', from, to: { x: spacing, y: length }, off }];
}
