import { printedLine } from '../beam/printedLine.ts';
import type { FlexureNetwork } from '../flexures/network.ts';
import type { MiddleLine } from '../geometry/band.ts';
import type { Mm } from '../units.ts';

/** How far a chord may lie from the curve it stands for [mm], a quarter of what a printer repeats. */
export const TOLERANCE: Mm = 0.005;

/** The middle line of a member, and the plane that it lies in. */
export interface PlacedLine {
  readonly line: MiddleLine;
  readonly plane: number;
}

/**
 * The middle lines of all members of a network as printed.
 *
 * @param network - of a joint [mm]
 * @returns lines, each in its plane [mm]
 */
export function printedLines({ model }: FlexureNetwork): readonly PlacedLine[] {
  const nodes = new Map(model.nodes.map((node) => [node.id, node] as const));
  return model.members.map((member) => {
    const [from, to] = [nodes.get(member.from), nodes.get(member.to)];
    if (!from || !to) throw new RangeError(`the member ${member.id} hangs on no node`);
    return { line: printedLine(member, from, to, TOLERANCE / 2), plane: member.plane ?? 0 };
  });
}
