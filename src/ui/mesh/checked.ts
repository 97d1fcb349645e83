/** A part as it is shown: what was found, judged for the printer and the use that stand in the brief. */
import { createContext, useContext } from 'react';
import type { CheckedPart } from '../../core/inspect/checkedPart.ts';
import type { PartSection } from '../../core/inspect/flexure.ts';
import type { Judged } from '../../core/inspect/judged.ts';
import type { CheckValues } from '../../store/checking.ts';
import type { LengthUnit } from '../text/numbers.ts';
import type { Alike } from '../../core/inspect/alike.ts';

export interface Checked {
  readonly part: CheckedPart;
  /** Of the file. */
  readonly name: string;
  readonly bytes: number;
  readonly file: Blob;
  readonly values: CheckValues;
  readonly unit: LengthUnit;
  readonly judged: readonly Judged[];
  readonly groups: readonly Alike[];
  readonly chosen: number;
}

const CheckedContext = createContext<Checked | undefined>(undefined);
export const CheckedProvider = CheckedContext.Provider;

/** The part that is shown; everything on the sheet is about the same one. */
export function useChecked(): Checked {
  const checked = useContext(CheckedContext);
  if (!checked) throw new RangeError('no part is shown');
  return checked;
}

/** The section in which a thin section was measured. */
export function sectionOf({ part }: Checked, { flexure }: Judged): PartSection | undefined {
  return part.findings.sections[flexure.section];
}

/** Whether one of them is the one that is looked at. */
export function isChosen({ numbers }: Pick<Alike, 'numbers'>, { chosen }: Checked): boolean {
  return numbers.includes(chosen);
}
