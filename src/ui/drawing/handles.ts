import type { Assessment } from '../../core/design/assessment.ts';
import { checkSizes, isRefusal } from '../../core/flexures/checkSizes.ts';
import type { FlexureFamily } from '../../core/flexures/family.ts';
import { familyOf } from '../../core/flexures/known.ts';
import type { Point } from '../../core/geometry/outline.ts';
import { counted, length as lengthText } from '../text/numbers.ts';
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

/** Home and End go to the least, and to so many times what is typical: the largest possible would leave the screen. */
const ENDS = { length: 5, count: 3, fillet: 5 } as const;
const SNAP = { length: 0.5, count: 1, fillet: 0.1 } as const;

/** A value of a drag or a key, on its grid and between its ends. */
export function settled({ min, max }: Pick<HandleSpec, 'min' | 'max'>, value: number, grid: number): number {
  const onGrid = Number((Math.round(value / grid) * grid).toFixed(6));
  return Math.min(max, Math.max(min, onGrid));
}

/** The handles of a drawing, in the order in which they are tabbed to. */
export function handlesOf(layout: Layout): readonly HandleSpec[] {
  const { a, sheet, handles, unit, figure } = layout;
  const family = familyOf(a.joint);
  const { roles } = family;
  const mmPerPx = 1 / sheet.pxPerMm;
  const inLength = (value: number) => lengthText(value, unit);
  const lines = a.section.countOf === 'lines';
  const length: HandleSpec = {
    ...sliderOf(a, family, 'length'),
    parameter: roles.length,
    label: 'Flexing length',
    at: handles.length,
    perPx: { x: mmPerPx, y: 0 },
    cursor: 'ew-resize',
    say: inLength,
  };
  const count: HandleSpec = {
    ...sliderOf(a, family, 'count'),
    parameter: roles.count,
    label: lines ? 'Lines across' : 'Layers through',
    at: handles.count,
    // The middle of the leaf stays where it is, so each face moves by half.
    perPx: { x: 0, y: (2 * mmPerPx) / (lines ? a.joint.profile.lineWidth : a.joint.profile.layerHeight) },
    cursor: 'ns-resize',
    say: (value) => counted(value, lines ? 'line' : 'layer'),
  };
  const fillet: HandleSpec | undefined =
    handles.fillet && roles.fillet !== undefined
      ? {
          ...sliderOf(a, family, 'fillet'),
          parameter: roles.fillet,
          label: 'Root fillet',
          at: handles.fillet,
          ...filletDrag(handles.fillet, figure.length / 2, layout),
          say: inLength,
        }
      : undefined;
  // What was measured is not a whole count to be dragged.
  const isCounted = a.joint.measuredThickness === undefined;
  return [length, ...(isCounted ? [count] : []), ...(fillet ? [fillet] : [])];
}

/**
 * As a fillet grows, the middle of its arc goes out along the leaf by r/√2 and away from it by r·(1 − 1/√2);
 * the handle keeps its distance from there.
 */
function filletDrag(at: Point, middle: number, { sheet, figure }: Layout): Pick<HandleSpec, 'perPx' | 'cursor'> {
  const side = at.x > sheet.rootX + middle * sheet.pxPerMm ? 1 : -1;
  const down = figure.padBelow && at.y > 0 ? 1 : -1;
  const [out, away] = [side * Math.SQRT1_2, down * (1 - Math.SQRT1_2)];
  const scale = sheet.pxPerMm * (out ** 2 + away ** 2);
  return { perPx: { x: out / scale, y: away / scale }, cursor: side === down ? 'nwse-resize' : 'nesw-resize' };
}

function sliderOf(a: Assessment, family: FlexureFamily, role: keyof typeof ENDS) {
  return sliderOfSize(a, family, family.roles[role] ?? role, ENDS[role], SNAP[role]);
}

/** What a slider needs of a size: End goes to so many times what is typical, a drag lands on multiples of `snap`. */
export function sliderOfSize(a: Assessment, family: FlexureFamily, name: string, times: number, snap: number) {
  const parameter = family.parameters[name];
  const value = a.joint.sizes[name] ?? Number.NaN;
  if (!parameter) throw new RangeError(`${family.id} has no ${name}`);
  const end = Math.max(value, Math.min(parameter.max, times * parameter.typical));
  return {
    value,
    min: parameter.min,
    max: furthest(a, family, name, value, end, parameter.step),
    step: parameter.step,
    snap,
  };
}

/** The largest value on the grid above `from` that the family does not refuse. */
function furthest(a: Assessment, family: FlexureFamily, name: string, from: number, to: number, step: number): number {
  const at = (n: number) => Math.min(to, Number((from + n * step).toFixed(6)));
  const isAllowed = (n: number) => {
    const sizes = { ...a.joint.sizes, [name]: at(n) };
    const thickness = a.joint.measuredThickness ?? family.section(sizes, a.joint.profile).thickness;
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
