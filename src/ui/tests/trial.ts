/** What is tested now: the filament or spool, the joint it is for, and the strips as they come out. */
import { useMemo } from 'react';
import type { Joint } from '../../core/design/joint.ts';
import { sectionOf } from '../../core/design/sectionOf.ts';
import { crease } from '../../core/flexures/crease.ts';
import { straightLeaf } from '../../core/flexures/straightLeaf.ts';
import type { Bend } from '../../core/material/tally.ts';
import { findFilament, isOwn } from '../../core/material/shelf.ts';
import type { Filament, OwnFilament } from '../../core/material/types.ts';
import type { PrintProfile } from '../../core/print/profile.ts';
import { priorOf } from '../../core/tallies/learnRow.ts';
import { strainOfBend } from '../../core/tallies/strainOfBend.ts';
import type { Mm } from '../../core/units.ts';
import { USUAL_PROFILE } from '../../store/newJoint.ts';
import { useSession } from '../../store/session.ts';
import { useShelf } from '../../store/shelf.ts';
import { openJointOf, type Work } from '../../store/state.ts';
import { bendOf, lyingOf, useTests, type TestValues } from '../../store/tests.ts';

/** A row of the user's own that tests correct. */
export type Spool = OwnFilament & { readonly own: { readonly tests: NonNullable<OwnFilament['own']['tests']> } };

export function isSpool(row: Filament | undefined): row is Spool {
  return row !== undefined && isOwn(row) && row.own.tests !== undefined;
}

export interface Trial {
  readonly values: TestValues;
  /** What is tested: a spool, or a filament of which nothing has been counted yet. */
  readonly row: Filament;
  readonly spool: Spool | undefined;
  /** Its figures stand where nothing has been tested. */
  readonly prior: Filament;
  readonly joint: Joint | undefined;
  /** Lies as the pieces do. */
  readonly profile: PrintProfile;
  readonly countOf: 'lines' | 'layers';
  readonly thickness: Mm;
  readonly bend: Bend;
  /** Peak strain of a strip bent so, as a fraction. */
  readonly strain: number;
}

/** As thick as so many lines or layers come out on this printer. */
function stripThickness(values: TestValues, profile: PrintProfile, row: Filament): Mm {
  const { count, depth } = values;
  const family = profile.lying === 'crease' ? crease : straightLeaf;
  return sectionOf(family, { lines: count, layers: count, depth }, profile, row).thickness;
}

/** The row that was chosen; one that was taken back gives way to what it was like, and that to the filament of the joint. */
function rowOf({ filament, like }: TestValues, joint: Joint | undefined): Filament {
  const wanted = [filament, like, joint?.profile.filament, USUAL_PROFILE.filament];
  for (const id of wanted) {
    const found = id === undefined ? undefined : findFilament(id);
    if (found?.printable) return found;
  }
  throw new RangeError('the table of filaments is empty');
}

function trialOf(values: TestValues, joint: Joint | undefined): Trial {
  const row = rowOf(values, joint);
  const lying = lyingOf(values);
  const profile = { ...(joint?.profile ?? USUAL_PROFILE), lying, filament: row.id };
  const thickness = stripThickness(values, profile, row);
  const bend = bendOf(values);
  return {
    values,
    row,
    spool: isSpool(row) ? row : undefined,
    prior: isSpool(row) ? priorOf(row) : row,
    joint,
    profile,
    countOf: lying === 'crease' ? 'layers' : 'lines',
    thickness,
    bend,
    strain: strainOfBend(bend, thickness),
  };
}

/** The joint that the trial is for: the one chosen, else the one that is open. */
function jointIn({ joint }: TestValues, work: Pick<Work, 'part' | 'current'>): Joint | undefined {
  return work.part.joints.find(({ id }) => id === joint) ?? openJointOf(work);
}

/** The trial as it stands, for what is done when a file has come. */
export function trialNow(): Trial {
  const { values } = useTests.getState();
  return trialOf(values, jointIn(values, useSession.getState()));
}

/** The trial as it stands, and again at every change of it. */
export function useTrial(): Trial {
  const values = useTests((state) => state.values);
  const shelf = useShelf();
  const part = useSession((state) => state.part);
  const current = useSession((state) => state.current);
  return useMemo(() => {
    return trialOf(values, jointIn(values, { part, current }));
    // Rows are found on the shelf by their keys.
    // oxlint-disable-next-line react-hooks/exhaustive-deps
  }, [values, part, current, shelf]);
}
