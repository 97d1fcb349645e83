/** What a search tries of each kind, for laws and examples that hold for all of them. */
import fc from 'fast-check';
import { FAMILIES } from '../../src/core/flexures/index.ts';
import { isAsked } from '../../src/core/flexures/drives.ts';
import type { Drive, FlexureFamily, Sizes } from '../../src/core/flexures/family.ts';
import type { Rungs, Sought } from '../../src/core/flexures/sought.ts';
import { soughtOf } from '../../src/core/flexures/soughts.ts';
import type { PrintProfile } from '../../src/core/print/profile.ts';
import { LEAF } from './joints.ts';
import { typicalSizes } from './networks.ts';

export const SEARCHED: readonly { readonly id: string; readonly family: FlexureFamily; readonly sought: Sought }[] =
  FAMILIES.map((family) => ({ id: family.id, family, sought: soughtOf(family.id) }));

/** As most printers are set: lines of 0.42 mm, layers of 0.2 mm. */
export const USUAL: PrintProfile = {
  ...LEAF.profile,
  lineWidth: 0.42,
  layerHeight: 0.2,
  firstLayerHeight: 0.2,
  fitRule: 'nominal',
};

/** Settings that other nozzles have. */
export const profiles: fc.Arbitrary<PrintProfile> = fc
  .record({
    lineWidth: fc.integer({ min: 30, max: 80 }),
    share: fc.integer({ min: 25, max: 75 }),
    fitRule: fc.constantFrom('nominal', 'overlapped'),
  })
  .map(({ lineWidth, share, fitRule }) => {
    const layerHeight = (lineWidth * share) / 1e4;
    return { ...USUAL, lineWidth: lineWidth / 100, layerHeight, firstLayerHeight: layerHeight, fitRule };
  });

/** The rungs that a search climbs where the joint is moved in a certain way. */
export function rungsFor({ parameters }: FlexureFamily, { rungs }: Sought, drive: Drive): readonly Rungs[] {
  return rungs.filter(({ size }) => {
    const parameter = parameters[size];
    return parameter !== undefined && isAsked(parameter, drive.id);
  });
}

/** One value of every rung. */
export function triedOf(rungs: readonly Rungs[]): fc.Arbitrary<Sizes> {
  return fc.record(Object.fromEntries(rungs.map(({ size, values }) => [size, fc.constantFrom(...values)])));
}

/** All sizes of a shape that is tried, and its thickness. */
export function shapeOf(family: FlexureFamily, sought: Sought, tried: Sizes, profile: PrintProfile) {
  const { thickness } = family.section(typicalSizes(family, tried), profile);
  return { sizes: sought.sizes(tried, thickness, profile), thickness };
}

/** Every combination of rungs. */
export function everyShape(rungs: readonly Rungs[]): readonly Sizes[] {
  return rungs.reduce<readonly Sizes[]>(
    (shapes, { size, values }) => shapes.flatMap((shape) => values.map((value) => ({ ...shape, [size]: value }))),
    [{}],
  );
}
