import type { Assessment } from '../../core/design/assessment.ts';
import { sectionOf } from '../../core/design/sectionOf.ts';
import { checkSizes, isRefusal } from '../../core/flexures/checkSizes.ts';
import type { FlexureFamily } from '../../core/flexures/family.ts';
import { familyOf } from '../../core/flexures/known.ts';
import type { Point } from '../../core/geometry/outline.ts';
import { counted, length as lengthText, type LengthUnit } from '../text/numbers.ts';
import type { Layout } from './layout.ts';

/** A size that can be dragged on the drawing, with all that a slider needs. */
export interface HandleSpec {
  readonly parameter: string;
  readonly label: string;
  readonly at: Point;
  readonly value: number;
  readonly min: number;
  readonly max: number;
  /** One press of an arrow key. */
  readonly step: number;
  /** A drag lands on multiples of this. */
  readonly snap: number;
  /** How much the value grows for one px to the right, and for one px down. */
  readonly perPx: Point;
  readonly cursor: 'ew-resize' | 'ns-resize' | 'nwse-resize' | 'nesw-resize';
  readonly say: (value: number) => string;
}

/** A size that is held on the drawing: where [px], and how much it grows for one px to the right, and for one px down. */
export type Grip = Pick<HandleSpec, 'parameter' | 'at' | 'perPx'>;

/** Home goes to the least, End to so many times what is typical: the largest possible would leave the screen. */
const ENDS = { count: 3, other: 5 };
const SNAP = { count: 1, fillet: 0.1, other: 0.5 };

/** A value of a drag or a key, on its grid and between its ends. */
export function settled({ min, max }: Pick<HandleSpec, 'min' | 'max'>, value: number, grid: number): number {
  const onGrid = Number((Math.round(value / grid) * grid).toFixed(6));
  return Math.min(max, Math.max(min, onGrid));
}

/** What a slider needs of a size that is held on the drawing. */
export function handleOf(a: Assessment, unit: LengthUnit, grip: Grip, label: string): HandleSpec {
  const family = familyOf(a.joint);
  const { parameter: name } = grip;
  const parameter = family.parameters[name];
  const value = a.joint.sizes[name] ?? Number.NaN;
  if (!parameter) throw new RangeError(`${family.id} has no ${name}`);
  const isCount = parameter.kind === 'count';
  const times = isCount ? ENDS.count : ENDS.other;
  const end = Math.max(value, Math.min(parameter.max, times * parameter.typical));
  const one = a.section.countOf === 'lines' ? 'line' : 'layer';
  return {
    ...grip,
    label,
    value,
    min: parameter.min,
    max: furthest(a, family, name, value, end, parameter.step),
    step: parameter.step,
    snap: isCount ? SNAP.count : name === family.roles.fillet ? SNAP.fillet : SNAP.other,
    cursor: cursorFor(grip.perPx),
    say: (size) => (isCount ? counted(size, one) : lengthText(size, unit)),
  };
}

/** A hand goes aslant where it goes less than twice as far one way as the other. */
const ASLANT = 2;

function cursorFor({ x, y }: Point): HandleSpec['cursor'] {
  if (Math.abs(x) > ASLANT * Math.abs(y)) return 'ew-resize';
  if (Math.abs(y) > ASLANT * Math.abs(x)) return 'ns-resize';
  return x * y > 0 ? 'nwse-resize' : 'nesw-resize';
}

/** The handles of a drawing, in the order in which they are tabbed to. */
export function handlesOf(layout: Layout): readonly HandleSpec[] {
  const { a, sheet, handles, unit, figure } = layout;
  const { roles } = familyOf(a.joint);
  const mmPerPx = 1 / sheet.pxPerMm;
  const lines = a.section.countOf === 'lines';
  const one = lines ? a.joint.profile.lineWidth : a.joint.profile.layerHeight;
  const handle = (parameter: string | undefined, label: string, at: Point | undefined, perPx: (at: Point) => Point) =>
    parameter === undefined || !at ? [] : [handleOf(a, unit, { parameter, at, perPx: perPx(at) }, label)];
  // The middle of the leaf stays where it is, so each face moves by half. What was measured is no count to be dragged.
  const count = a.joint.measuredThickness === undefined ? handles.count : undefined;
  return [
    ...handle(roles.length, 'Flexing length', handles.length, () => ({ x: mmPerPx, y: 0 })),
    ...handle(roles.count, lines ? 'Lines across' : 'Layers through', count, () => ({ x: 0, y: (2 * mmPerPx) / one })),
    ...handle(roles.fillet, 'Root fillet', handles.fillet, (at) => filletDrag(at, figure.length / 2, layout)),
  ];
}

/**
 * As a fillet grows, the middle of its arc goes out along the leaf by r/√2 and away from it by r·(1 − 1/√2);
 * the handle keeps its distance from there.
 */
function filletDrag(at: Point, middle: number, { sheet, figure }: Layout): Point {
  const side = at.x > sheet.rootX + middle * sheet.pxPerMm ? 1 : -1;
  const down = figure.padBelow && at.y > 0 ? 1 : -1;
  const [out, away] = [side * Math.SQRT1_2, down * (1 - Math.SQRT1_2)];
  const scale = sheet.pxPerMm * (out ** 2 + away ** 2);
  return { x: out / scale, y: away / scale };
}

/** The largest value on the grid above `from` that the family does not refuse. */
function furthest(a: Assessment, family: FlexureFamily, name: string, from: number, to: number, step: number): number {
  const at = (n: number) => Math.min(to, Number((from + n * step).toFixed(6)));
  const isAllowed = (n: number) => {
    const sizes = { ...a.joint.sizes, [name]: at(n) };
    const thickness = a.joint.measuredThickness ?? sectionOf(family, sizes, a.joint.profile, a.filament).thickness;
    return !checkSizes(family, sizes, thickness, a.joint.profile).some(isRefusal);
  };
  let [low, high] = [0, Math.ceil((to - from) / step - 1e-9)];
  while (low < high) {
    const middle = Math.ceil((low + high) / 2);
    if (isAllowed(middle)) low = middle;
    else high = middle - 1;
  }
  return at(low);
}
