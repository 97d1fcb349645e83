import { ABS } from './further/abs.ts';
import { ASA } from './further/asa.ts';
import { PA12 } from './further/pa12.ts';
import { PA6 } from './further/pa6.ts';
import { PC } from './further/pc.ts';
import { PETG } from './further/petg.ts';
import { PLA } from './further/pla.ts';
import { PP } from './further/pp.ts';
import { PP_MOULDED } from './further/ppMoulded.ts';
import { isOwn } from './shelf.ts';
import { TPU95A } from './further/tpu95a.ts';
import type { Filament, FilamentProperties, FurtherRow, Quantity, RowId, WholeFilament } from './types.ts';

/** Apart from the rows, because a page that answers needs none of it until somebody asks where a number comes from. */
const FURTHER: Readonly<Record<RowId, FurtherRow>> = {
  pla: PLA,
  petg: PETG,
  abs: ABS,
  asa: ASA,
  pa6: PA6,
  pa12: PA12,
  pp: PP,
  tpu95a: TPU95A,
  pc: PC,
  'pp-moulded': PP_MOULDED,
};

/** The properties that answers rest on, each with its note where it has one. */
function noted(properties: FilamentProperties, notes: FurtherRow['notes']): FilamentProperties {
  const entries = Object.entries(properties) as [keyof FilamentProperties, Quantity][];
  const withNotes = entries.map(([name, quantity]) => {
    const note = notes[name];
    return [name, note === undefined ? quantity : { ...quantity, note }] as const;
  });
  return Object.fromEntries(withNotes) as unknown as FilamentProperties;
}

/**
 * A row of the filament table with everything that is known of it: notes, and what no answer rests on yet.
 *
 * @param filament - row of the filament table [-]
 * @returns the same figures with their notes, and the further ones; a row of the user's own as it is
 */
export function wholeRow(filament: Filament): WholeFilament {
  if (isOwn(filament)) return filament;
  const { notes, life, properties } = FURTHER[filament.id as RowId];
  return {
    ...filament,
    properties: { ...noted(filament.properties, notes), ...properties },
    life: { ...filament.life, note: life },
  };
}
