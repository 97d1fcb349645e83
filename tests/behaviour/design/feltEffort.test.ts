/** What is felt of the efforts on a solved way. */
import { describe, expect, it } from 'vitest';
import { feltAt, feltEffort, feltEfforts, strainOutOfSight } from '../../../src/core/design/feltEffort.ts';
import { strainsUpTo } from '../../../src/core/design/solvedPath.ts';
import { wayOf } from '../../../src/ui/charts/solved/way.ts';
import { expectClose } from '../../support/close.ts';
import { assessed, LEAF } from '../../support/joints.ts';
import { answered } from '../../support/solvedJoints.ts';

const round = { abs: 1e-9, because: 'round-off of a straight line read at its end' } as const;
const same = { rel: 1e-12, because: 'the same product in another order' } as const;

describe('what is felt of an effort', () => {
  const leaf = answered('straightLeaf', { drive: 'pushed', amount: 1 });

  it('is modulus times effort while the skin is not strained past yield', () => {
    const [, point] = leaf.solved.forward.points;
    if (!point) throw new Error('a way has a state after rest');
    const { typical, low, high } = feltEfforts(leaf)(point);
    expectClose(typical, leaf.effort.modulus * point.effort, same);
    expectClose(low, leaf.effort.modulusLow * point.effort, same);
    expectClose(high, leaf.effort.modulusHigh * point.effort, same);
  });

  // A rectangular section of any textbook on plasticity: M/My = 3/2·(1 − 1/(3k²)) at k times the strain at yield.
  it('is less past yield, as an elastic and then yielding section takes it', () => {
    const arch = answered('snapArch');
    const last = arch.solved.forward.points.at(-1);
    if (!last) throw new Error('a way has an end');
    const { within, atRoots } = strainsUpTo(arch.solved, last.amount);
    const { modulus } = arch.effort;
    const k = (Math.max(within, atRoots) * modulus) / arch.filament.properties.yieldStress.typical;
    expect(k).toBeGreaterThan(1);
    expectClose(feltEffort(arch, last), (modulus * last.effort * 1.5 * (1 - 1 / (3 * k * k))) / k, same);
  });

  it('is not softened by what the other way of the movement strains', () => {
    const [one, both] = (['one way', 'both ways'] as const).map((ways) => answered('toggle', { ways }));
    const middle = one?.solved.forward.points[Math.floor(one.solved.forward.points.length / 2)];
    if (!one || !both || !middle) throw new Error('a way has a middle');
    expect(strainsUpTo(both.solved, middle.amount).within).toBeGreaterThan(
      strainsUpTo(one.solved, middle.amount).within,
    );
    const close = { rel: 1e-6, because: 'the same way walked twice, each to the aim of the solver' } as const;
    expectClose(feltAt(both, middle.amount), feltAt(one, middle.amount), close);
  });

  it('is what the curve of effort against movement shows', () => {
    for (const a of [leaf, answered('toggle', { ways: 'both ways' }), answered('slitPanel')]) {
      const { forward, back } = wayOf(a);
      for (const { amount, typical, event } of [...forward, ...back]) {
        if (event === undefined) expectClose(typical, feltAt(a, amount), round);
      }
    }
  });

  it('counts strips that twist out of sight, and finds none elsewhere', () => {
    const panel = answered('slitPanel');
    const { amount } = panel.joint.movement;
    expectClose(strainOutOfSight(panel) * amount, panel.strain.nominal, same);
    expect(strainOutOfSight(leaf)).toBe(0);
  });

  it('cannot be told of a joint that the solver was not asked about', () => {
    expect(() => feltAt(assessed(LEAF), 1)).toThrow(RangeError);
  });
});
