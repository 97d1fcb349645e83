/** A row of “Where the numbers come from”, and that of a figure of a filament. */
import { soundness } from '../../core/material/choose.ts';
import type { Provenance, ProvenanceKind, Quantity } from '../../core/material/types.ts';
import { SOURCES, type SourceKey } from '../../core/sources.ts';
import { grouped, NO_BREAK } from './numbers.ts';
import { sentence } from './said.ts';

export interface SourceRow {
  readonly kind: ProvenanceKind;
  readonly name: string;
  /** In one line: the formula in words, or what kind of figure it is. */
  readonly says: string;
  /** The whole of it: document, place, how much of it was read, notes. */
  readonly more: readonly string[];
}

export const cited = (key: SourceKey) => `${SOURCES[key].cite} (${SOURCES[key].read})`;

export function row(
  kind: ProvenanceKind,
  name: string,
  says: string,
  more: readonly (string | undefined)[] = [],
): SourceRow {
  return { kind, name, says, more: more.flatMap((part) => (part ? [sentence(part)] : [])) };
}

/** What kind of figure it is, in a few words. */
const IN_SHORT: Readonly<Record<ProvenanceKind, string>> = {
  published: 'published',
  computed: 'computed',
  memory: 'a usual value, not looked up',
  measured: 'measured',
};

function saysOf({ provenance, range }: Quantity): string {
  const short = provenance.kind === 'computed' ? provenance.from : IN_SHORT[provenance.kind];
  return range === 'memory' && provenance.kind !== 'memory' ? `${short}; low and high from memory` : short;
}

function originOf(provenance: Provenance): string | undefined {
  if (provenance.kind === 'published') return `${cited(provenance.source)}, ${provenance.place}`;
  if (provenance.kind === 'measured') return provenance.what;
  if (provenance.kind === 'memory') return provenance.because;
  return provenance.inputs === 'published'
    ? 'its inputs are published'
    : `its inputs are ${inputsFrom(provenance.inputs)}`;
}

function inputsFrom(inputs: 'memory' | 'published and memory'): string {
  return inputs === 'memory' ? 'from memory' : 'published in part and from memory in part';
}

/** “1 850 MPa (1 450 to 2 150)”; a strain in per cent. */
function amount({ typical, low, high, unit }: Quantity, isStrain: boolean): string {
  const say = (value: number): string => {
    const inUnit = isStrain ? value * 100 : value;
    return inUnit >= 1000 ? grouped(inUnit) : String(Number(inUnit.toPrecision(3)));
  };
  const after = isStrain ? `${NO_BREAK}%` : unit === '' ? '' : `${NO_BREAK}${unit}`;
  const range = low === undefined || high === undefined ? '' : ` (${say(low)} to ${say(high)})`;
  return `${say(typical)}${after}${range}`;
}

export function quantityRow(name: string, quantity: Quantity, isStrain = false): SourceRow {
  const { provenance, note } = quantity;
  return row(soundness(provenance), `${name}, ${amount(quantity, isStrain)}`, saysOf(quantity), [
    originOf(provenance),
    note,
  ]);
}
