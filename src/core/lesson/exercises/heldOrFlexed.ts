import { bendingStrain } from '../../closedForms/leafBending.ts';
import { assess } from '../../design/assess.ts';
import type { Assessment } from '../../design/assessment.ts';
import { holdAnswer, type HoldAnswer } from '../../design/hold.ts';
import type { Joint } from '../../design/joint.ts';
import type { Mm, Rad } from '../../units.ts';
import type { PageMaker } from './exercise.ts';
import {
  anglesOf,
  factsOf,
  isClear,
  LINE_WIDTHS,
  linesAcross,
  steps,
  type FilamentFacts,
  type LinesAcross,
} from './grids.ts';
import { measured, overLength, read, worked } from './question.ts';

export interface HeldOrFlexed extends LinesAcross {
  readonly filament: FilamentFacts;
  readonly angle: Rad;
  readonly length: Mm;
  readonly depth: Mm;
  /** When the push is asked for, hours after it was bent. */
  readonly hours: readonly [number, number, number];
  /** When it is to be read off the line that was drawn. */
  readonly readAt: number;
  /** Push one minute after it was bent [N·mm]. */
  readonly push: number;
  /** Exponent of time by which the push falls. */
  readonly exponent: number;
  /** Share of the angle that stays after a day. */
  readonly stays: number;
}

/** A day, for what stays. */
const DAY = 24;
const FILAMENT_IDS = ['petg', 'pla', 'asa', 'abs', 'pa12', 'pa6'] as const;
export const USES = ['flexed', 'held'] as const;
/** A line through three points is read to so much of a share: judgement, no source. */
const BY_EYE = 0.015;
const [PAD, FILLET] = [6, 0.8];

interface Held {
  readonly assessed: Assessment;
  readonly answer: HoldAnswer;
}

/** The leaf as the program would judge it, with pads that play no part in what is asked. */
function heldOf(given: Omit<HeldOrFlexed, 'push' | 'exponent' | 'stays'>): Held | undefined {
  const { lines, lineWidth, length, depth, angle, filament } = given;
  const joint: Joint = {
    id: 'exercise',
    name: 'Exercise',
    family: 'straightLeaf',
    sizes: { lines, length, depth, fillet: FILLET, pad: PAD, inRow: 1, sideBySide: 1, taper: 1, centre: 0.5 },
    movement: { drive: 'turned', amount: angle, ways: 'one way', cycles: 100, held: true, heldHours: DAY, chance: 0.9 },
    profile: {
      nozzle: 0.4,
      lineWidth,
      layerHeight: 0.2,
      firstLayerHeight: 0.2,
      lying: 'flat',
      fitRule: 'nominal',
      filament: filament.id,
    },
  };
  const assessed = assess(joint);
  const answer = assessed.ok ? holdAnswer(assessed.value) : assessed;
  return assessed.ok && answer.ok ? { assessed: assessed.value, answer: answer.value } : undefined;
}

/** To three figures, as it stands on the page. */
const said = (value: number) => Number(value.toPrecision(3));

/** Held bent, or flexed again and again. */
export const heldOrFlexed: PageMaker<HeldOrFlexed> = {
  seed: 8,
  draw: (pick) => {
    const given = {
      ...linesAcross(pick([2, 3]), pick(LINE_WIDTHS)),
      filament: factsOf(pick(FILAMENT_IDS)),
      angle: pick(anglesOf(15, 60)),
      length: pick(steps(14, 60)),
      depth: pick([5, 6, 8, 10]),
      hours: [pick([0.2, 0.25, 0.5, 1]), pick([4, 6, 8, 12, 24]), pick([48, 72, 120, 168, 240, 336])] as const,
      readAt: pick([2, 3, 16, 36]),
    };
    const held = heldOf(given);
    if (!held) return { ...given, push: 0, exponent: 0, stays: 0 };
    const { exponent, setAfterDay } = held.answer;
    return {
      ...given,
      push: said(held.assessed.effort.effort),
      exponent: exponent.typical,
      stays: setAfterDay.typical / 100,
    };
  },
  // It stands being flexed and not being held: else there is nothing to tell apart. Nothing may stay of one bend alone.
  isFit: (given) => {
    const { filament, thickness, length, angle, push } = given;
    const strain = bendingStrain(thickness, length, angle);
    const held = heldOf(given);
    return (
      push >= 3 &&
      held !== undefined &&
      held.assessed.set.amount === 0 &&
      strain < filament.again &&
      strain > filament.held &&
      isClear(strain, filament.again, length) &&
      isClear(strain, filament.held, length)
    );
  },
  ask: (given) => {
    const { thickness, length, angle, filament, hours, push, readAt } = given;
    const strain = bendingStrain(thickness, length, angle);
    const held = heldOf(given);
    if (!held) throw new RangeError('a page that is not fit is not asked');
    const { at } = held.answer;
    const right = [...(strain <= filament.again ? ['flexed'] : []), ...(strain <= filament.held ? ['held'] : [])];
    return [
      { key: 'measure', figures: [measured(length)] },
      { key: 'strain', figures: [overLength('strain', strain, length)] },
      { key: 'limits', figures: [], choice: { among: USES, right } },
      { key: 'left', figures: hours.map((hour) => worked('share', at(hour).left.typical)) },
      { key: 'push', figures: [worked('torque', push * at(hours[2]).left.typical)] },
      { key: 'plot', figures: [read('share', at(readAt).left.typical, BY_EYE)] },
      { key: 'stays', figures: [worked('angle', at(DAY).stays.typical)] },
    ];
  },
};
