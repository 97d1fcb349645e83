/** The toolpath as it is shown: what was found, judged, and what of it is looked at. */
import { createContext, useContext } from 'react';
import { create } from 'zustand';
import type { CheckedToolpath, PlaceNear } from '../../core/inspect/toolpath/checkedToolpath.ts';
import type { JudgedPlace } from '../../core/inspect/toolpath/judgedPlace.ts';
import type { GcodeText } from '../../files/gcode/gcodeText.ts';
import type { LengthUnit } from '../text/numbers.ts';

export interface ShownToolpath {
  readonly toolpath: CheckedToolpath<GcodeText>;
  /** Of the file. */
  readonly name: string;
  readonly bytes: number;
  readonly unit: LengthUnit;
  /** Those found or carried over, then those drawn. */
  readonly places: readonly PlaceNear[];
  readonly judged: readonly JudgedPlace[];
}

/** The one thin section that is looked at, and its layer. */
export interface ShownPlace {
  readonly judged: JudgedPlace;
  readonly placed: PlaceNear;
  /** Counted from 1 at the bottom of the section. */
  readonly layer: number;
}

interface Looking {
  /** Number of the thin section that is looked at. */
  readonly place: number;
  /** Of its layers; taken to its last one where it is past it. */
  readonly layer: number;
}

const useLooking = create<Looking>()(() => ({ place: 1, layer: 1 }));

export function choosePlace(place: number, layer = 1): void {
  useLooking.setState({ place, layer });
}

export function chooseLayer(layer: number): void {
  useLooking.setState({ layer });
}

const ShownContext = createContext<ShownToolpath | undefined>(undefined);
export const ShownProvider = ShownContext.Provider;

/** The toolpath that is shown; everything on the sheet is about the same one. */
export function useShown(): ShownToolpath {
  const shown = useContext(ShownContext);
  if (!shown) throw new RangeError('no toolpath is shown');
  return shown;
}

/** The thin section that is looked at; undefined where there is none. */
export function useShownPlace(): ShownPlace | undefined {
  const { places, judged } = useShown();
  const { place, layer } = useLooking();
  const index = Math.max(
    0,
    judged.findIndex((one) => one.place.number === place),
  );
  const [one, placed] = [judged[index], places[index]];
  if (!one || !placed) return undefined;
  return { judged: one, placed, layer: Math.min(Math.max(1, layer), Math.max(1, one.audit.layers.length)) };
}
