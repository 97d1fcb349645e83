/** The figure of a tally that was read off, as a field; of a pulled bar there may be a second. */
import type { MarkTally, Tally } from '../../../core/material/tally.ts';
import { ANGLE_LIMITS, TALLY_LIMITS } from '../../../core/tallies/tallyLimits.ts';
import { asRad, radians } from '../../../core/units.ts';
import type { ChoiceSpec } from '../../controls/ChoiceField.tsx';
import { cyclesStep } from '../../controls/settle.ts';
import type { ValueSpec } from '../../controls/valueSpec.ts';
import { NO_BREAK, type LengthUnit } from '../../text/numbers.ts';
import { HEADS, LOOKS, PULL, TALLY } from '../../text/testsTallyText.ts';
import { numberSpec, type NumberField } from '../specs.ts';

export interface Of {
  /** “Strip 2”; empty while it is not written down. */
  readonly name: string;
  readonly unit: LengthUnit;
  readonly put: (tally: Tally, now: string, was: string, run?: string) => string | undefined;
}

const STEP = 0.01;

function looksSpec(tally: MarkTally, { name, put }: Of): ChoiceSpec {
  return {
    key: 'looks',
    label: labelOf(HEADS.mark[2], name),
    value: tally.looks,
    options: Object.entries(LOOKS).map(([value, text]) => ({ value, text })),
    take: (value) => {
      const looks = value as MarkTally['looks'];
      return put({ ...tally, looks }, LOOKS[looks], LOOKS[tally.looks]);
    },
  };
}

const labelOf = (what: string, name: string) => (name === '' ? what : `${what}, ${name.toLowerCase()}`);

/** A figure of a tally as a field, and the tally that another value of it makes. */
function figureField(
  { name, unit, put }: Of,
  what: string,
  more: Omit<NumberField, 'label' | 'unit' | 'take'>,
  next: (value: number) => Tally,
): ValueSpec {
  return numberSpec({
    ...more,
    label: labelOf(what, name),
    unit,
    take: (now, said, was, run) => put(next(now), said, was, run),
  });
}

const MM = { kind: 'length', step: STEP } as const;
const STRESS = { kind: 'number', after: `${NO_BREAK}MPa` } as const;

/** Its field: what was measured, or how it looked. */
export function mainField(tally: Tally, of: Of): ValueSpec | ChoiceSpec {
  const field = (what: string, more: Omit<NumberField, 'label' | 'unit' | 'take'>, next: (value: number) => Tally) =>
    figureField(of, what, more, next);
  switch (tally.kind) {
    case 'flexes': {
      const more = { kind: 'count', ...TALLY_LIMITS.cycles, step: cyclesStep } as const;
      return field(TALLY.bends, { ...more, key: 'cycles', value: tally.cycles }, (cycles) => ({ ...tally, cycles }));
    }
    case 'mark':
      return looksSpec(tally, of);
    case 'thickness': {
      const more = { ...MM, ...TALLY_LIMITS.measured, key: 'measured', value: tally.measured };
      return field(HEADS.thickness[2], more, (measured) => ({ ...tally, measured }));
    }
    case 'sag': {
      const more = { ...MM, step: 0.5, ...TALLY_LIMITS.sag, key: 'sag', value: tally.sag };
      return field(HEADS.sag[2], more, (sag) => ({ ...tally, sag }));
    }
    case 'hold': {
      const more = { kind: 'angle', step: radians(1), ...ANGLE_LIMITS.left, key: 'left', value: tally.left } as const;
      return field(HEADS.hold[2], more, (left) => ({ ...tally, left: asRad(left) }));
    }
    case 'pull': {
      const more = { ...STRESS, step: 0.5, ...TALLY_LIMITS.strength, key: 'strength', value: tally.strength };
      return field(HEADS.pull[2], more, (strength) => ({ ...tally, strength }));
    }
  }
}

const stiffnessStep = (modulus: number, up: boolean) => (modulus < 100 || (modulus === 100 && !up) ? 1 : 10);

/** The stiffness of a pulled bar as a field, where its stretch was measured as well. */
export function stiffnessField(tally: Tally, of: Of): ValueSpec | undefined {
  if (tally.kind !== 'pull' || tally.modulus === undefined) return undefined;
  const more = { ...STRESS, step: stiffnessStep, ...TALLY_LIMITS.modulus, key: 'modulus', value: tally.modulus };
  return figureField(of, PULL.stiffness, more, (modulus) => ({ ...tally, modulus }));
}
