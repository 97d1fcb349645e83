/** The fields of a box that the user draws round a thin section. */
import { checkBox, type DrawnBox } from '../../core/inspect/toolpath/drawnPlace.ts';
import type { CheckedToolpath } from '../../core/inspect/toolpath/checkedToolpath.ts';
import type { Box3 } from '../../core/geometry/mesh/triangleMesh.ts';
import { asRad, radians } from '../../core/units.ts';
import { withBox } from '../../store/toolpaths.ts';
import { stepIn } from '../controls/settle.ts';
import type { ValueSpec } from '../controls/valueSpec.ts';
import { sayValue, shownNumber, suffixOf } from '../joints/briefValues.ts';
import { boxChanged, boxLabel, BOX_LABELS } from '../text/toolpathBoxText.ts';
import { problemText } from '../text/problemText.ts';
import type { BriefOfToolpath } from './toolpathSpecs.ts';

/** One press of an arrow key [mm], and on a direction. */
const STEPS: Readonly<Record<keyof DrawnBox, number>> = {
  x: 1,
  y: 1,
  angle: radians(5),
  length: 0.5,
  thickness: 0.05,
  bottom: 0.2,
  top: 0.2,
};

interface BoxField {
  readonly box: DrawnBox;
  readonly index: number;
  readonly number: number;
  readonly name: keyof DrawnBox;
}

export function boxSpec({ box, index, number, name }: BoxField, of: BriefOfToolpath): ValueSpec {
  const { values, unit, change } = of;
  const kind = name === 'angle' ? 'angle' : 'length';
  const field = { kind, value: box[name], least: 2 } as const;
  const say = (value: number) => sayValue(field, value, unit);
  const suffix = suffixOf(field, unit);
  const step = () => (kind === 'angle' ? STEPS.angle : stepIn(unit, STEPS[name]));
  return {
    key: name,
    label: boxLabel(name, number),
    kind,
    unit,
    value: box[name],
    say,
    suffix,
    step,
    min: Number.NEGATIVE_INFINITY,
    max: Number.POSITIVE_INFINITY,
    shownNumber: shownNumber(field, unit),
    figure: say(box[name]),
    hint: `up and down keys step; next ${say(box[name] + step())}${suffix}`,
    take: (value, was, run) => {
      const next: DrawnBox = { ...box, [name]: name === 'angle' ? asRad(value) : value };
      const [problem] = checkBox(next);
      if (problem) return problemText(problem, unit, BOX_LABELS[name]);
      change(withBox(values, next, index), boxChanged(name, number, `${say(value)}${suffix}`, say(was)), run);
      return undefined;
    },
  };
}

const round = (value: number, to: number) => Math.round(value / to) * to;

/** A first box, in the middle of what is laid and along its longer side. */
export function firstBox({ figures }: Pick<CheckedToolpath<unknown>, 'figures'>): DrawnBox {
  const nothing: Box3 = { min: { x: 0, y: 0, z: 0 }, max: { x: 10, y: 5, z: 5 } };
  const { min, max } = figures.box ?? nothing;
  return {
    x: round((min.x + max.x) / 2, 0.1),
    y: round((min.y + max.y) / 2, 0.1),
    angle: max.x - min.x >= max.y - min.y ? radians(0) : radians(90),
    length: 5,
    thickness: 1,
    bottom: 0,
    top: Math.max(0.2, round(max.z, 0.01)),
  };
}
