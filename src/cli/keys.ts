/** Keys of the terminal's documents: every one says its unit. */
import type { Drive, Parameter } from '../core/flexures/family.ts';
import { asRad, degrees } from '../core/units.ts';

export type Json = string | number | boolean | null | readonly Json[] | { readonly [key: string]: Json | undefined };

export const UNITS = {
  length: 'mm',
  angle: 'rad, and deg where the key says so',
  torque: 'N·mm',
  force: 'N',
  energy: 'N·mm',
  stress: 'MPa',
  strain: 'fraction',
  life: 'cycles',
} as const;

export const SIZE_UNITS: Readonly<Record<Parameter['kind'], string>> = {
  length: '_mm',
  count: '',
  angle: '_rad',
  ratio: '',
};

export type Measure = Drive['measure'];

export const EFFORT_UNITS = {
  turn: { name: 'torque', effort: 'Nmm', stiffness: 'Nmm_per_rad' },
  travel: { name: 'force', effort: 'N', stiffness: 'N_per_mm' },
} as const satisfies Readonly<Record<Measure, unknown>>;

/** `inRow` → `in_row`. */
export function snake(name: string): string {
  return name.replaceAll(/[A-Z]/g, (capital) => `_${capital.toLowerCase()}`);
}

/** A travel, or an angle in both units; degrees to twelve figures, so that 35 reads as 35. */
export function amounts(name: string, amount: number, measure: Measure): Readonly<Record<string, number>> {
  if (measure === 'travel') return { [`${name}_mm`]: amount };
  return { [`${name}_rad`]: amount, [`${name}_deg`]: figures(degrees(asRad(amount))) };
}

/** `torque_Nmm` or `force_N`, with a word before it where it is not simply the effort there. */
export function effort(value: number, measure: Measure, which = ''): Readonly<Record<string, number>> {
  const unit = EFFORT_UNITS[measure];
  return { [`${which}${unit.name}_${unit.effort}`]: value };
}

/** To twelve figures: more than any answer is good to, and shorter than all of them. */
export function figures(value: number): number {
  return Number(value.toPrecision(12));
}
