import { nearestWhole } from '../print/nearestCount.ts';
import { outsideRange, plain, type Problem, type ProblemCode } from '../problems.ts';
import type { Mm } from '../units.ts';
import type { BeadSize, FlexureFamily, Parameter } from './family.ts';

/** What family checks say without refusing the joint; every other code refuses it, new ones too until they are listed. */
const CAUTIONS: ReadonlySet<ProblemCode> = new Set<ProblemCode>([
  'leaf-too-thick-for-length',
  'sharp-root',
  'fillet-under-one-line',
  'fillet-in-steps',
  'neck-too-thick',
  'notch-too-sharp',
  'turn-too-tight',
  'nearly-touch',
  'strip-too-short',
  'no-second-rest',
  'frame-must-be-stiff',
]);

const UNITS = { length: 'mm', count: '', angle: '°', ratio: '' } as const;

/**
 * Whether a problem with sizes refuses them, rather than only deserving a caution.
 *
 * @param problem - from `checkSizes` or from `check` of a family [-]
 * @returns true when the joint cannot be assessed or drawn
 *
 * @example isRefusal({ code: 'sharp-root', message: '' }) // → false
 */
export function isRefusal(problem: Problem): boolean {
  return !CAUTIONS.has(problem.code);
}

/**
 * Refusals and cautions about the sizes of one joint: each parameter against its limits, then what the family says of
 * them together. The family is asked only when every size and the thickness can be used.
 *
 * @param family - the kind of flexure [-]
 * @param sizes - its sizes by name [mm], counts, ratios [-] or angles [rad]; anything, as typed or read
 * @param thickness - thickness of the thin section [mm]; whoever made it checks it
 * @param bead - line width and layer height of the print profile [mm], checked
 * @returns problems [-], empty when there is nothing to say
 *
 * Problems: `missing-field`, `not-one-of` (no such size), `not-a-number`, `not-whole`, `below-minimum`,
 * `above-maximum`, and those of the family.
 */
export function checkSizes(
  family: FlexureFamily,
  sizes: Readonly<Record<string, number>>,
  thickness: Mm,
  bead: BeadSize,
): readonly Problem[] {
  const known = Object.entries(family.parameters);
  const names = new Set(known.map(([name]) => name));
  const problems = [
    ...Object.keys(sizes).flatMap((name) => (names.has(name) ? [] : [unknownSize(name, [...names])])),
    ...known.flatMap(([name, parameter]) => checkSize(name, sizes[name], parameter)),
  ];
  if (problems.length > 0 || !(thickness > 0 && Number.isFinite(thickness))) return problems;
  return family.check(sizes, thickness, bead);
}

function checkSize(name: string, value: number | undefined, parameter: Parameter): Problem[] {
  const field = `sizes.${name}`;
  if (value === undefined) {
    return [
      {
        code: 'missing-field',
        message: `The size “${name}” is missing; give one, ${plain(parameter.typical)} is typical`,
        field,
      },
    ];
  }
  const outside = outsideRange(field, `The size “${name}” of`, value, parameter, UNITS[parameter.kind]);
  if (outside) return [outside];
  if (parameter.kind === 'count' && !Number.isInteger(value)) {
    const near = Math.max(parameter.min, nearestWhole(value).count);
    return [
      {
        code: 'not-whole',
        message: `The size “${name}” of ${plain(value)} must be whole; ${near} is nearest`,
        field,
        value,
      },
    ];
  }
  return [];
}

function unknownSize(name: string, names: readonly string[]): Problem {
  return {
    code: 'not-one-of',
    message: `There is no size “${name}”; this flexure has ${names.join(', ')}`,
    field: `sizes.${name}`,
    value: name,
    limit: names.join(', '),
  };
}
