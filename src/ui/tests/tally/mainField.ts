/** The one figure of a tally that was read off, as a field. */
import type { MarkTally, Tally } from '../../../core/material/tally.ts';
import { ANGLE_LIMITS, TALLY_LIMITS } from '../../../core/tallies/tallyLimits.ts';
import { asRad, radians } from '../../../core/units.ts';
import type { ChoiceSpec } from '../../controls/ChoiceField.tsx';
import { cyclesStep } from '../../controls/settle.ts';
import type { ValueSpec } from '../../controls/valueSpec.ts';
import { NO_BREAK, type LengthUnit } from '../../text/numbers.ts';
import { HEADS, LOOKS, TALLY } from '../../text/testsTallyText.ts';
import { numberSpec, type NumberField } from '../specs.ts';

interface Of {
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

/** Its field: what was measured, or how it looked. */
export function mainField(tally: Tally, of: Of): ValueSpec | ChoiceSpec {
  const { name, unit, put } = of;
  const field = (
    what: string,
    key: string,
    value: number,
    more: Omit<NumberField, 'key' | 'label' | 'value' | 'unit' | 'take'>,
    next: (value: number) => Tally,
  ) =>
    numberSpec({
      ...more,
      key,
      label: labelOf(what, name),
      value,
      unit,
      take: (now, said, was, run) => put(next(now), said, was, run),
    });
  const mm = { kind: 'length', step: STEP } as const;
  switch (tally.kind) {
    case 'flexes': {
      const more = { kind: 'count', ...TALLY_LIMITS.cycles, step: cyclesStep } as const;
      return field(TALLY.bends, 'cycles', tally.cycles, more, (cycles) => ({ ...tally, cycles }));
    }
    case 'mark':
      return looksSpec(tally, of);
    case 'thickness': {
      const more = { ...mm, ...TALLY_LIMITS.measured };
      return field(HEADS.thickness[2], 'measured', tally.measured, more, (measured) => ({ ...tally, measured }));
    }
    case 'sag':
      return field(HEADS.sag[2], 'sag', tally.sag, { ...mm, step: 0.5, ...TALLY_LIMITS.sag }, (sag) => ({
        ...tally,
        sag,
      }));
    case 'hold': {
      const more = { kind: 'angle', step: radians(1), ...ANGLE_LIMITS.left } as const;
      return field(HEADS.hold[2], 'left', tally.left, more, (left) => ({ ...tally, left: asRad(left) }));
    }
    case 'pull': {
      const more = { kind: 'number', step: 0.5, after: `${NO_BREAK}MPa`, ...TALLY_LIMITS.strength } as const;
      return field(HEADS.pull[2], 'strength', tally.strength, more, (strength) => ({ ...tally, strength }));
    }
  }
}
