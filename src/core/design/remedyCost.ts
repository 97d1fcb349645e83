import type { Parameter } from '../flexures/family.ts';
import { familyOf } from '../flexures/known.ts';
import type { Mm } from '../units.ts';
import type { Assessment } from './assessment.ts';
import type { RemedyKind } from './remedy.ts';

/**
 * Weights by which ways out are ranked, smallest cost first. They are our judgement, not data: 1 is about what
 * doubling the room for the flexure costs. They decide the order only, never whether a way out is offered.
 */
const WEIGHT = {
  /** Of log2 of the length ratio: doubling costs 1, and the tenth millimetre more costs less than the first. */
  room: 1,
  /** Of |ln| of the stiffness ratio: a joint that feels different is a different joint. */
  feel: 0.3,
  /** Of log2 of the ratio of amounts: the movement is what was asked for, so half of it costs more than twice the room. */
  travel: 1.6,
  /** A line set off the common width prints less surely. */
  lineWidth: 0.2,
  /** Another spool on the shelf. */
  filament: 0.35,
  /** Each further flexure in the row: room, and a pad between. */
  anotherFlexure: 0.8,
  /** A single line tears from the side. */
  singleLine: 0.6,
  /** A fillet costs next to nothing where there is room for it. */
  fillet: 0.1,
  /**
   * Of |ln| of the ratio of any other size: less than of a length, because most of them change what lies within the room
   * that the joint has already.
   */
  size: 1,
  /** Turning the part may need supports. */
  turn: 0.3,
  /** Of |ln s|: everything the part fits must follow. */
  scale: 1.2,
  /** Each change beyond the first: two things to remember and to explain. */
  second: 0.3,
  /** Redrawing the thin section of somebody else's part. */
  redraw: 0.7,
} as const;

/**
 * How much harder than PLA a filament is to print, 0 to 1 (common practice, no source): warping, drying, heat, flow.
 */
const HARD_TO_PRINT: Readonly<Record<string, number>> = {
  pla: 0,
  petg: 0.1,
  tpu95a: 0.35,
  asa: 0.35,
  abs: 0.4,
  pa12: 0.5,
  pp: 0.6,
  pa6: 0.7,
  pc: 0.7,
};

function hardness(a: Assessment): number {
  return HARD_TO_PRINT[a.filament.id] ?? 1;
}

/**
 * How much the feel changes.
 *
 * @param before - the joint as it was [-]
 * @param after - the joint with the change [-]
 * @returns |ln(K_after/K_before)| [-], ≥ 0
 */
export function feelChange(before: Assessment, after: Assessment): number {
  return Math.abs(Math.log(after.effort.stiffness / before.effort.stiffness));
}

/**
 * How much a size changes.
 *
 *     |ln(after/before)|
 *
 * Where nothing of it is allowed, both are counted with what it adds to: a length with the flexing length, so that the first
 * millimetre of it does not count as a change without end; a number or a share with one.
 *
 * @param parameter - the size [-]
 * @param length - flexing length [mm], > 0
 * @param before - as it was [mm], [rad] or [-]
 * @param after - as it is then [mm], [rad] or [-]
 * @returns size of the change [-], ≥ 0
 *
 * @example sizeChange({ kind: 'length', min: 0.2, max: 50, step: 0.1, typical: 3, because: '' }, 30, 3, 1.5) // → 0.693147
 */
export function sizeChange(parameter: Parameter, length: Mm, before: number, after: number): number {
  const beside = parameter.min > 0 ? 0 : parameter.kind === 'length' ? length : 1;
  return Math.abs(Math.log((after + beside) / (before + beside)));
}

/**
 * Cost of getting from one joint to another, for ranking.
 *
 * @param kinds - what kinds of change were made [-]
 * @param before - the joint as it was [-]
 * @param after - the joint with the change [-]
 * @param size - name of the size, where another size was changed [-]
 * @returns cost [-], ≥ 0; 0 is free
 */
export function remedyCost(kinds: readonly RemedyKind[], before: Assessment, after: Assessment, size?: string): number {
  const feel = WEIGHT.feel * feelChange(before, after);
  const single = after.fit.nearest === 1 && before.fit.nearest > 1 ? WEIGHT.singleLine : 0;
  const second = WEIGHT.second * (kinds.length - 1);
  return kinds.reduce((sum, kind) => sum + ownCost(kind, before, after, size), feel + single + second);
}

function ownCost(kind: RemedyKind, before: Assessment, after: Assessment, size = ''): number {
  switch (kind) {
    case 'lengthen':
      return WEIGHT.room * Math.log2(after.length / before.length);
    case 'stop earlier':
      return WEIGHT.travel * Math.log2(before.joint.movement.amount / after.joint.movement.amount);
    case 'line width':
      return WEIGHT.lineWidth;
    case 'share the angle':
      return WEIGHT.anotherFlexure * (after.inRow - before.inRow);
    case 'larger fillet':
      return WEIGHT.fillet * (after.fillet - before.fillet);
    case 'other size': {
      const parameter = familyOf(before.joint).parameters[size] as Parameter;
      const [was, is] = [before, after].map(({ joint }) => joint.sizes[size] ?? Number.NaN) as [number, number];
      return WEIGHT.size * sizeChange(parameter, before.length, was, is);
    }
    case 'other filament':
      return WEIGHT.filament + Math.max(0, hardness(after) - hardness(before));
    case 'turn the part':
      return WEIGHT.turn;
    case 'scale the part':
      return WEIGHT.scale * Math.abs(Math.log(after.section.thickness / before.section.thickness));
    case 'draw whole lines':
      return WEIGHT.redraw;
    case 'fewer lines':
    case 'more lines':
      return 0;
  }
}
