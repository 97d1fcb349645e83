/** Where everything goes on the axis of a way out: strain before and after, against the limits of what is proposed. */
import { allowableNamed } from '../../core/design/allowables.ts';
import type { Assessment } from '../../core/design/assessment.ts';
import { lettersWidth } from '../charts/letters.ts';
import { axisFigure } from '../text/remedyText.ts';

export const AXIS = { height: 40, line: 22, above: 11, below: 38, letter: 13 } as const;
const DOT = 4.5;

interface AxisLetters {
  readonly x: number;
  readonly text: string;
}

export interface AxisPlan {
  /** Where the tints begin and the axis ends. */
  readonly again: number;
  readonly staysBent: number;
  readonly end: number;
  readonly before: number;
  readonly after: number;
  /** From ring to dot; absent where they are too near for one. */
  readonly arrow: { readonly from: number; readonly to: number } | undefined;
  readonly limits: readonly AxisLetters[];
  readonly strains: readonly AxisLetters[];
  /** The strain does not change, so one figure stands for both. */
  readonly same: boolean;
}

/** Moves two labels apart, and both into the axis, by as little as it takes. */
function apart(labels: readonly [AxisLetters, AxisLetters], end: number, gap: number): readonly AxisLetters[] {
  const [left, right] = labels[0].x <= labels[1].x ? labels : [labels[1], labels[0]];
  const half = (label: AxisLetters) => lettersWidth(label.text, AXIS.letter) / 2;
  const least = half(left) + half(right) + gap;
  const short = Math.max(0, least - (right.x - left.x));
  const leftX = Math.max(half(left), Math.min(left.x - short / 2, end - half(right) - least));
  const rightX = Math.min(end - half(right), Math.max(right.x + short / 2, leftX + least));
  return [
    { ...left, x: leftX },
    { ...right, x: rightX },
  ];
}

/** The limits are those of the joint after the change, so that another filament moves the ticks and not the dots. */
export function planAxis(before: Assessment, after: Assessment, width: number, inWords: boolean): AxisPlan {
  const [again, staysBent] = [
    allowableNamed(after.allowables, 'repeated').limit,
    allowableNamed(after.allowables, 'yield').limit,
  ];
  const [was, now] = [before.strain.peak, after.strain.peak];
  const most = Math.max(staysBent * 1.15, was * 1.06, now * 1.06);
  const at = (strain: number) => (strain / most) * width;
  const [x0, x1] = [at(was), at(now)];
  const way = Math.sign(x1 - x0);
  const short = { again: axisFigure(again), bent: axisFigure(staysBent) };
  const long = { again: `${short.again} again and again`, bent: `${short.bent} stays bent` };
  const room = lettersWidth(long.again + long.bent, AXIS.letter) + 24;
  const words = inWords && room < width ? long : short;
  const same = axisFigure(was) === axisFigure(now);
  const limits = apart(
    [
      { x: at(again), text: words.again },
      { x: at(staysBent), text: words.bent },
    ],
    width,
    8,
  );
  const strains = apart(
    [
      { x: x0, text: axisFigure(was) },
      { x: x1, text: axisFigure(now) },
    ],
    width,
    6,
  );
  return {
    again: at(again),
    staysBent: at(staysBent),
    end: width,
    before: x0,
    after: x1,
    arrow: Math.abs(x1 - x0) > 4 * DOT ? { from: x0 + way * DOT, to: x1 - way * (DOT + 1) } : undefined,
    limits,
    strains: same ? [{ x: x1, text: axisFigure(now) }] : strains,
    same,
  };
}
