/** Joints and networks of every family, for laws that hold for all of them. */
import fc from 'fast-check';
import { assess } from '../../src/core/design/assess.ts';
import type { Assessment } from '../../src/core/design/assessment.ts';
import { bySolver } from '../../src/core/design/bySolver.ts';
import type { Joint } from '../../src/core/design/joint.ts';
import type { SolveDetail } from '../../src/core/design/solveJoint.ts';
import type { Solved } from '../../src/core/design/solved.ts';
import type { Drive, FlexureFamily, Parameter, Sizes } from '../../src/core/flexures/family.ts';
import { checkSizes, isRefusal } from '../../src/core/flexures/checkSizes.ts';
import { sizesInForce } from '../../src/core/flexures/drives.ts';
import { LEAF } from './joints.ts';
import { LEAF_KINDS } from './leafKinds.ts';
import { typicalSizes, type Kind } from './networks.ts';
import { SPRING_KINDS } from './springKinds.ts';

/** Every family with its network. */
export const KINDS: readonly Kind[] = [...LEAF_KINDS, ...SPRING_KINDS];

/** Every way in which a family can be moved. */
export const DRIVEN = KINDS.flatMap((kind) =>
  kind.family.drives.map((drive) => ({ id: `${kind.family.id} ${drive.id}`, kind, drive })),
);

/** Lines and layers of the joints here [mm]. */
const BEAD = { lineWidth: 0.42, layerHeight: 0.2 };

/** Thickness of the thin section that these sizes make [mm]. */
export function thicknessOf(family: FlexureFamily, sizes: Sizes): number {
  const unit = family.countOf === 'lines' ? BEAD.lineWidth : BEAD.layerHeight;
  return (sizes[family.roles.count] ?? Number.NaN) * unit;
}

/** Sizes as they act under a drive, unless they are refused. */
export function actingSizes(family: FlexureFamily, sizes: Sizes, drive: Drive): Sizes | undefined {
  const acting = sizesInForce(family, sizes, drive.id);
  return checkSizes(family, acting, thicknessOf(family, acting), BEAD).some(isRefusal) ? undefined : acting;
}

/** Where between half and twice its typical value a size lies, on a grid. */
function near({ min, max, typical }: Parameter): fc.Arbitrary<number> {
  return fc.integer({ min: 10, max: 40 }).map((n) => Math.min(max, Math.max(min, (typical * n) / 20)));
}

/** Anywhere between its limits, in even ratios: as often between 1 and 2 as between 10 and 20. */
function anywhere({ min, max, typical }: Parameter): fc.Arbitrary<number> {
  const least = Math.max(min, 0.01 * (typical > 0 ? typical : max));
  return fc.integer({ min: 0, max: 40 }).map((n) => Number((least * (max / least) ** (n / 40)).toPrecision(3)));
}

function sizeNear(parameter: Parameter): fc.Arbitrary<number> {
  const { kind, min, max, typical } = parameter;
  if (kind === 'count') return fc.integer({ min, max: Math.min(max, Math.max(min + 1, 2 * typical)) });
  if (typical === 0) return fc.constantFrom(0, 0, Math.min(max, 1));
  return fc.oneof({ arbitrary: near(parameter), weight: 3 }, { arbitrary: anywhere(parameter), weight: 1 });
}

/** Sizes of a family, most of them near its typical ones; they may be refused. */
export function sizesNear(family: FlexureFamily): fc.Arbitrary<Sizes> {
  return fc.record(
    Object.fromEntries(Object.entries(family.parameters).map(([name, parameter]) => [name, sizeNear(parameter)])),
  );
}

/** A joint of a family with nothing unusual about it, moved in one way. */
export function jointOf({ family }: Kind, drive: Drive, sizes: Sizes = {}, amount = drive.typical): Joint {
  return {
    ...LEAF,
    id: family.id,
    name: family.id,
    family: family.id,
    sizes: typicalSizes(family, sizes),
    movement: { ...LEAF.movement, drive: drive.id, amount, cycles: 1000 },
    profile: { ...LEAF.profile, lying: family.lyings[0] },
  };
}

/** The solved assessment of a joint that must be answered. */
export function solvedOf(joint: Joint, detail: SolveDetail = {}): Assessment & { readonly solved: Solved } {
  const result = assess(joint, bySolver(detail));
  if (!result.ok) throw new Error(result.problems.map(({ message }) => message).join('; '));
  const { solved } = result.value;
  if (!solved) throw new Error('the solver was not asked');
  return { ...result.value, solved };
}
