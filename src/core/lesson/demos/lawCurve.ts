import { assess, type Judge } from '../../design/assess.ts';
import type { Assessment } from '../../design/assessment.ts';
import type { Demo, Law, LawFigure, Values } from './demo.ts';
import { countedLife } from './goals.ts';
import { stopsOf } from './handles.ts';
import { heldOf } from './heldOrFlexed.ts';

/** A place on the plot of a law: across as the law says, up a strain, an effort, a life or a share. */
export interface LawPoint {
  readonly x: number;
  readonly y: number;
}

/**
 * The figure of a joint that a law speaks of.
 *
 * @param figure - which [-]
 * @param a - the joint as assessed [-]
 * @returns strain or share of the push left [-], effort [N·mm] or [N], counted life [cycles]; undefined where there is none
 */
export function lawFigure(figure: LawFigure, a: Assessment): number | undefined {
  if (figure === 'strain') return a.strain.peak;
  if (figure === 'effort') return a.effort.effort;
  return figure === 'life' ? countedLife(a) : heldOf(a)?.left.typical;
}

/**
 * The curve of one joint of a demonstration, as its law goes along a handle while the other stays.
 *
 * @param demo - handles and joints [-]
 * @param law - its law [-]
 * @param at - which joint, from 0 [-]
 * @param values - where the handles stand [mm], [rad] or [-]
 * @param judge - what assesses the joints [-]
 * @returns points in the order of the handle; places that are refused are left out
 */
export function lawCurve(
  demo: Pick<Demo, 'handles' | 'joints'>,
  law: Law,
  at: number,
  values: Values,
  judge: Judge = assess,
): readonly LawPoint[] {
  const handle = demo.handles.find(({ key }) => key === law.along);
  if (!handle) throw new RangeError(`there is no handle ${law.along}`);
  return stopsOf(handle).flatMap((stop) => {
    const there = { ...values, [law.along]: stop };
    const joint = demo.joints(there)[at];
    const x = law.places(there)[at];
    const assessed = joint && judge(joint);
    const y = assessed?.ok ? lawFigure(law.figure, assessed.value) : undefined;
    return x === undefined || y === undefined ? [] : [{ x, y }];
  });
}
