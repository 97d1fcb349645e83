import type { Mm } from '../units.ts';

/** Units in which part files are drawn; those of the 3MF core specification. */
export const LENGTH_UNITS = ['micron', 'millimetre', 'centimetre', 'metre', 'inch', 'foot'] as const;
export type LengthUnit = (typeof LENGTH_UNITS)[number];

/** One of each in millimetres. Source: international yard and pound agreement of 1959 for inch and foot. */
export const MM_IN: Readonly<Record<LengthUnit, Mm>> = {
  micron: 0.001,
  millimetre: 1,
  centimetre: 10,
  metre: 1000,
  inch: 25.4,
  foot: 304.8,
};
