/** Words for the boxes that the user draws round thin sections, and for sections carried over from a part. */
import type { DrawnBox } from '../../core/inspect/toolpath/drawnPlace.ts';
import { counted } from './numbers.ts';

export const BOXES = {
  name: 'Where to look',
  aside: 'a section that was not found can be boxed in by hand',
  add: 'Draw a box',
  remove: 'Remove this box',
  coming: 'Gathering what lies near it …',
  full: (most: number) => `No more than ${most} boxes are looked at; remove one first.`,
  trouble: (why: string) => `What lies near the new place could not be gathered: ${why}`,
  added: (number: number) => `Box ${number} drawn`,
  removed: (number: number) => `Box ${number} removed`,
  look: (number: number) => `Look at box ${number}`,
  lookShort: 'Look at it',
} as const;

export const BOX_LABELS: Readonly<Record<keyof DrawnBox, string>> = {
  x: 'Middle, x',
  y: 'Middle, y',
  angle: 'Direction',
  length: 'Length',
  thickness: 'Thickness',
  bottom: 'Bottom',
  top: 'Top',
};

/** Several boxes have fields of the same name. */
export function boxLabel(name: keyof DrawnBox, number: number): string {
  return `${BOX_LABELS[name]} of box ${number}`;
}

export function boxChanged(name: keyof DrawnBox, number: number, now: string, was: string): string {
  return `${boxLabel(name, number)} set to ${now}, was ${was}`;
}

export const CARRY = {
  /** In the place of a button, while no part has been checked. */
  none: 'Sections of a part that is checked under Mesh can be carried over to here.',
  other: (part: string) =>
    `The sections of “${part}” do not fit this toolpath: its size is another, or it lies otherwise under Mesh.`,
  take: (count: number, part: string) => `Take the ${counted(count, 'section')} of “${part}”`,
  back: 'Take those found in the layers',
  taken: (part: string) => `Sections taken from “${part}”, were those found in the layers`,
  given: 'Sections found in the layers taken again',
  now: (part: string) => `Looked at are the sections of “${part}” as it stands under Mesh.`,
} as const;
