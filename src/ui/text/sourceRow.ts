/** A row of “Where the numbers come from”, and that of a figure of a filament. */
import type { ProvenanceKind, Quantity } from '../../core/material/types.ts';
import { rangeText, valueText } from './figureText.ts';
import { originOfQuantity, originText } from './filamentValueText.ts';
import { sentence, type About } from './said.ts';

export interface SourceRow {
  readonly kind: ProvenanceKind;
  readonly name: string;
  /** In one line: the formula in words, or what kind of figure it is. */
  readonly says: string;
  /** The whole of it: document, place, how much of it was read, notes. */
  readonly more: readonly string[];
  /** Of which figures it tells, where marks lead to it and not only to its kind. */
  readonly about?: About;
}

/** A row to which the marks of these figures lead. */
export function telling(about: About, of: SourceRow): SourceRow {
  return { ...of, about };
}

export function row(
  kind: ProvenanceKind,
  name: string,
  says: string,
  more: readonly (string | undefined)[] = [],
): SourceRow {
  return { kind, name, says, more: more.flatMap((part) => (part ? [sentence(part)] : [])) };
}

export function quantityRow(name: string, quantity: Quantity, isStrain = false): SourceRow {
  const { provenance, range: rangeKind } = quantity;
  const range = rangeText(quantity, isStrain);
  const { kind, note, full } = originOfQuantity(quantity);
  const amount = `${valueText(quantity, isStrain)}${range === '' ? '' : ` (${range})`}`;
  return row(kind, `${name}, ${amount}`, originText(provenance, rangeKind), [note, ...full]);
}
