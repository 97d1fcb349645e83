/** Filaments of the user's own whose shape is right, taken over: names cleaned, everything else judged by the core. */
import { checkFilament } from '../core/material/ownCheck.ts';
import { inOrder } from '../core/material/ownFilament.ts';
import type { OwnFilament } from '../core/material/types.ts';
import type { Problem } from '../core/problems.ts';
import { failIfAny, ok, type Result } from '../core/result.ts';
import { checkTests } from '../core/tallies/checkTally.ts';
import { readName } from './names.ts';
import { within } from './shape.ts';

/**
 * All of these filaments, with repairs as notes; or every problem of every one.
 *
 * Problems: those of `checkFilament` and of `checkTests`, and `given-twice` where two have one key, since a joint could mean
 * either.
 *
 * @param shaped - rows of the right shape, with any figures
 * @param at - path of the list or of the one row, as problems name it
 */
export function readFilaments(
  shaped: readonly OwnFilament[],
  at = (index: number) => `filaments[${index}]`,
): Result<readonly OwnFilament[]> {
  const notes: Problem[] = [];
  const problems: Problem[] = [];
  const taken = new Set<string>();
  const filaments = shaped.map((given, index) => {
    const read = readName(given.name, 'name', 'My filament');
    const filament = inOrder({
      ...given,
      name: read.name,
      fullName: readName(given.fullName, 'fullName', read.name).name,
    });
    notes.push(...read.notes.map((note) => within(at(index), note)));
    problems.push(...judged(filament).map((problem) => within(at(index), problem)));
    if (taken.has(given.id)) problems.push(within(at(index), givenTwice(given.id)));
    taken.add(given.id);
    return filament;
  });
  return failIfAny(problems) ?? ok(filaments, notes);
}

function judged(filament: OwnFilament): readonly Problem[] {
  const { tests } = filament.own;
  const tallied = tests === undefined ? [] : checkTests(tests);
  return [...checkFilament(filament), ...tallied.map((problem) => within('own.tests', problem))];
}

function givenTwice(id: string): Problem {
  const message = `key “${id.slice(0, 60)}” stands for two filaments; give one of them another`;
  return { code: 'given-twice', message, field: 'id', value: id.slice(0, 60) };
}
