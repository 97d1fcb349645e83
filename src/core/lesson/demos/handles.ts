/** Handles of a demonstration: where they may stand, and how they are written in an address. */
import { asRad, degrees, radians } from '../../units.ts';
import type { Demo, Handle, Values } from './demo.ts';

/** Lengths to a micrometre, angles to a tenth of a degree, the rest to a thousandth. */
const PLACES = { length: 3, angle: 1, count: 0, scale: 3, share: 3, choice: 0 } as const;

function rounded(value: number, { kind }: Handle): number {
  if (kind === 'angle') return radians(Number(degrees(asRad(value)).toFixed(PLACES.angle)));
  return Number(value.toFixed(PLACES[kind]));
}

/**
 * The nearest place where a handle may stand.
 *
 * @param handle - one handle of a demonstration [-]
 * @param value - wished for [mm], [rad] or [-]; where it is no number, the handle stands as at first
 * @returns value within the limits of the handle [mm], [rad] or [-]
 */
export function allowed(handle: Handle, value: number): number {
  if (Number.isNaN(value)) return handle.start;
  return Math.min(handle.max, Math.max(handle.min, rounded(value, handle)));
}

/**
 * Where all handles stand at first.
 *
 * @param demo - a demonstration [-]
 * @returns values by key [mm], [rad] or [-]
 */
export function startOf({ handles }: Pick<Demo, 'handles'>): Values {
  return Object.fromEntries(handles.map(({ key, start }) => [key, start]));
}

/**
 * All places of a handle that its steps reach.
 *
 * @param handle - one handle of a demonstration [-]
 * @returns values in rising order, both ends among them [mm], [rad] or [-]
 */
export function stopsOf(handle: Handle): readonly number[] {
  const { min, max, step } = handle;
  const count = Math.floor((max - min) / step + 1e-9);
  const stops = Array.from({ length: count + 1 }, (_, i) => allowed(handle, min + i * step));
  return stops.at(-1) === max ? stops : [...stops, max];
}

/**
 * A value as it stands in an address: mm, degrees, a plain number or the word of an option.
 *
 * @param handle - one handle of a demonstration [-]
 * @param value - where it stands [mm], [rad] or [-]
 * @returns text without spaces [-]
 */
export function written(handle: Handle, value: number): string {
  if (handle.kind === 'choice') return handle.options?.[value] ?? '';
  return String(Number((handle.kind === 'angle' ? degrees(asRad(value)) : value).toFixed(PLACES[handle.kind])));
}

/**
 * The value that a text of an address names; never throws.
 *
 * @param handle - one handle of a demonstration [-]
 * @param text - as `written`, or anything; null where the address does not speak of it [-]
 * @returns the nearest that is allowed, or where it stands at first when nothing is named [mm], [rad] or [-]
 */
export function readValue(handle: Handle, text: string | null): number {
  if (text === null || text.trim() === '') return handle.start;
  if (handle.kind === 'choice') {
    const at = handle.options?.indexOf(text) ?? -1;
    return at < 0 ? handle.start : at;
  }
  const number = Number(text);
  return allowed(handle, handle.kind === 'angle' ? radians(number) : number);
}
