/**
 * How a toolpath is looked at: kept between visits as far as it is about the printer, with an undo of its own, because none
 * of it changes the joints. The file itself is not kept, nor what was said of its sections.
 */
import { create } from 'zustand';
import type { DrawnBox } from '../core/inspect/toolpath/drawnPlace.ts';
import type { Mm } from '../core/units.ts';
import { changing, isWithin, keptRecord, type Changing, type Range } from './history.ts';
import { browserStorage, keepChoice, type PreferenceStorage } from './preferences.ts';

/** What a section is held against: a joint by its id, or what the file itself lays most. */
export type Against = { readonly joint: string } | 'file';

export interface ToolpathValues {
  /** Of the filament [mm]; absent until the user says it. */
  readonly diameter?: Mm;
  /** The thickest that is looked for [mm]. */
  readonly thickest: Mm;
  /** By the number of the section, as far as the user chose; otherwise the joint that fits it. */
  readonly against: Readonly<Record<number, Against>>;
  /** Drawn by the user. */
  readonly boxes: readonly DrawnBox[];
  /** Whether sections of the part that was checked under Mesh are looked at, in the place of those found in the layers. */
  readonly isCarried: boolean;
}

/** What each value may be; chosen, wide enough for any desktop printer [mm]. */
export const TOOLPATH_LIMITS: Readonly<Record<'diameter' | 'thickest', Range>> = {
  diameter: { min: 1, max: 4 },
  thickest: { min: 0.2, max: 8 },
};

/** More boxes than this are not drawn by hand. */
export const MOST_BOXES = 12;

/** Anything up to some six lines is looked for, as in parts. */
export const FIRST_TOOLPATH: ToolpathValues = { thickest: 2.6, against: {}, boxes: [], isCarried: false };

const KEY = 'bendbook.toolpath';

/** The values of the last visit, each as far as it can still be used. */
export function readToolpathValues(storage: PreferenceStorage | undefined): ToolpathValues {
  const { diameter, thickest } = keptRecord(storage, KEY);
  return {
    ...FIRST_TOOLPATH,
    ...(isWithin(diameter, TOOLPATH_LIMITS.diameter) && { diameter }),
    ...(isWithin(thickest, TOOLPATH_LIMITS.thickest) && { thickest }),
  };
}

export function keepToolpathValues(storage: PreferenceStorage | undefined, values: ToolpathValues): void {
  const { diameter, thickest } = values;
  keepChoice(storage, KEY, JSON.stringify({ diameter, thickest }));
}

/** Values with another box in the place of one, or one more at the end. */
export function withBox(values: ToolpathValues, box: DrawnBox, index = values.boxes.length): ToolpathValues {
  const boxes = index < values.boxes.length ? values.boxes.with(index, box) : [...values.boxes, box];
  return { ...values, boxes };
}

/**
 * Values without a box. What is held against what goes by number: `number` is that of the box, and those after it move up.
 */
export function withoutBox(values: ToolpathValues, index: number, number: number): ToolpathValues {
  const boxes = values.boxes.filter((_, i) => i !== index);
  const moved = Object.entries(values.against).flatMap(([key, against]) => {
    const at = Number(key);
    return at === number ? [] : [[at > number ? at - 1 : at, against] as const];
  });
  return { ...values, boxes, against: Object.fromEntries(moved) };
}

export const useToolpaths = create<Changing<ToolpathValues>>()((set, get) =>
  changing(readToolpathValues(browserStorage()), set, get, (values) => keepToolpathValues(browserStorage(), values)),
);
