/** What a search looks for, as it is kept between visits: judged as strictly as a part that comes from outside. */
import * as v from 'valibot';
import { checkWanted } from '../core/find/checkWanted.ts';
import type { Wanted } from '../core/find/wanted.ts';
import { findFamily } from '../core/flexures/index.ts';
import { findFilament } from '../core/material/shelf.ts';
import { LYINGS } from '../core/print/profile.ts';
import { fail, failIfAny, ok, type Result } from '../core/result.ts';
import { movementShape, profileShape, surroundingsShape } from './partShape.ts';
import { capped, fields, listOf, number, shapeProblem } from './shape.ts';

/** Many more than there are kinds of flexure, or than anybody makes filaments. */
const MOST_TICKED = 500;

const ticked = listOf(v.string(), MOST_TICKED);

const wantedShape = fields({
  movement: movementShape,
  measure: v.picklist(['turn', 'travel']),
  effortAtLeast: v.exactOptional(number),
  setAtMost: v.exactOptional(number),
  room: fields({ along: number, across: number, depth: number }),
  depthAtLeast: number,
  supports: v.boolean(),
  families: ticked,
  filaments: ticked,
  lyings: listOf(v.picklist(LYINGS), LYINGS.length),
  profile: profileShape,
  surroundings: v.exactOptional(surroundingsShape),
});

/**
 * What is looked for, out of any value that was read. Kinds and filaments that are gone since are left out of what is ticked.
 *
 * @param value - anything, as JSON gives it
 */
export function readWanted(value: unknown): Result<Wanted> {
  const shape = v.safeParse(wantedShape, value);
  if (!shape.success) {
    const problems = capped(shape.issues.map(shapeProblem));
    return failIfAny(problems) ?? fail({ code: 'unreadable', message: 'What was looked for cannot be read' });
  }
  const { families, filaments, ...rest } = shape.output;
  const wanted: Wanted = {
    ...rest,
    families: families.filter((id) => findFamily(id) !== undefined),
    filaments: filaments.filter((id) => findFilament(id) !== undefined),
  };
  return failIfAny(checkWanted(wanted)) ?? ok(wanted);
}
