/** A network on file: one JSON document in the solver's own terms, written by hand or by another program. */
import * as v from 'valibot';
import { checkModel } from '../core/beam/checkModel.ts';
import type { BeamModel } from '../core/beam/model.ts';
import type { Problem } from '../core/problems.ts';
import { fail, failIfAny, ok, type Result } from '../core/result.ts';
import { readDocument, textOf } from './jsonDocument.ts';
import { networkShape } from './networkShape.ts';
import { capped, ignoredFields, shapeProblem } from './shape.ts';

/** Two hundred members with every field take a tenth of this. */
export const MAX_NETWORK_BYTES = 1_000_000;
const KIND = { format: 'bendbook-network', noun: 'network', newest: 1, maxBytes: MAX_NETWORK_BYTES } as const;

/**
 * A network from the text of a file, checked in this order: can it be read, is it ours, is it too new, is its shape
 * right, can it be solved. Lists but those of nodes and members may be left out. Never throws, whatever the text.
 *
 * Problems: `too-large`, `unreadable`, `not-our-file`, `newer-version`, `missing-field`, `wrong-type`, `not-one-of`,
 * `not-a-number`, and those of `checkModel`. Fields that are not known come back as notes.
 *
 * @param text - what the file holds
 */
export function readNetwork(text: string): Result<BeamModel> {
  const document = readDocument(text, KIND);
  if (!document.ok) return document;
  const shape = v.safeParse(networkShape, document.value);
  if (!shape.success) return failWith(shape.issues.map(shapeProblem));
  const { units: _, ...model } = shape.output;
  const checked = checkModel(model);
  if (!checked.ok) return failWith(checked.problems);
  const strangers = ignoredFields(document.value, { format: 0, version: 0, ...shape.output });
  return ok(checked.value, capped([...strangers, ...checked.notes]));
}

/** The same from bytes: UTF-8, with or without its mark. */
export function readNetworkBytes(bytes: Uint8Array): Result<BeamModel> {
  const text = textOf(bytes, KIND);
  return text.ok ? readNetwork(text.value) : text;
}

function failWith<T>(problems: readonly Problem[]): Result<T> {
  return failIfAny(capped(problems)) ?? fail({ code: 'unreadable', message: 'The file cannot be read' });
}
