/** The two strains that tie the ramp to a filament, as fractions. */
export interface RampStops {
  readonly repeated: number;
  readonly yield: number;
  /** Where the ramp ends. */
  readonly full: number;
}

/**
 * The colour of a strain, as a mixture of the ramp's inks, so that theme and print change it without a redraw.
 * Mixed in linear light: mixing the coded values would darken the middle of each stretch.
 */
export function strainColour(strain: number, { repeated, yield: atYield, full }: RampStops): string {
  if (strain <= 0) return 'var(--r0)';
  if (strain < repeated) return mixed('--r0', '--r1', strain / repeated);
  if (strain < atYield) return mixed('--r1', '--r2', (strain - repeated) / (atYield - repeated));
  if (strain < full) return mixed('--r2', '--r3', (strain - atYield) / (full - atYield));
  return 'var(--r3)';
}

function mixed(from: string, to: string, share: number): string {
  return `color-mix(in srgb-linear, var(${to}) ${(share * 100).toFixed(1)}%, var(${from}))`;
}
