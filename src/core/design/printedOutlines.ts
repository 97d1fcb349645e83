import { familyOf } from '../flexures/known.ts';
import { mechanicsOf } from '../flexures/networks.ts';
import type { FlexureNetwork } from '../flexures/network.ts';
import type { Path } from '../geometry/outline.ts';
import { unionOutline } from '../geometry/unionOutline.ts';
import type { Mm } from '../units.ts';
import type { Assessment } from './assessment.ts';
import { printedLines, TOLERANCE, type PlacedLine } from './printedLines.ts';

/** What is printed in one plane: closed outlines, holes clockwise. */
export interface PlaneOutlines {
  readonly plane: number;
  readonly paths: readonly Path[];
}

/**
 * Outlines of a joint as printed, plane by plane from the lowest up: as the family draws it, from above where it has a plan,
 * else round the pads and members of its network. Needs the polygon library, and so is loaded only when a file is asked for.
 *
 * @param a - the joint as assessed: its kind, sizes in force [mm] and section [mm]
 * @returns closed paths of every plane [mm]
 */
export function printedOutlines(a: Pick<Assessment, 'joint' | 'sizes' | 'section'>): readonly PlaneOutlines[] {
  const { joint, sizes, section } = a;
  const family = familyOf(joint);
  const drawn = family.plan?.(sizes) ?? family.outline?.(sizes, section.thickness);
  if (drawn) return [{ plane: 0, paths: drawn }];
  const { drive, amount } = joint.movement;
  const network = mechanicsOf(family.id).network(sizes, section.thickness, { drive, amount, widthRatio: 1 });
  const lines = printedLines(network);
  const fillet = sizes[family.roles.fillet ?? ''] ?? 0;
  const planes = [...new Set(lines.map(({ plane }) => plane))].toSorted((p, q) => p - q);
  return planes.map((plane) => ({ plane, paths: outlinesIn(network, lines, plane, fillet) }));
}

const padsIn = ({ bodies }: FlexureNetwork, plane: number) =>
  bodies.filter((body) => (body.plane ?? 0) === plane).flatMap(({ outlines }) => outlines);

function outlinesIn(network: FlexureNetwork, lines: readonly PlacedLine[], plane: number, fillet: Mm): readonly Path[] {
  const { nodes, pads, members } = network.model;
  const onPad = new Set(pads.flatMap((pad) => pad.nodes));
  const ends = new Set(members.filter((member) => (member.plane ?? 0) === plane).flatMap(({ from, to }) => [from, to]));
  const roots = nodes.filter(({ id }) => onPad.has(id) && ends.has(id)).map((at) => ({ at, fillet }));
  const bands = lines.filter((one) => one.plane === plane).map(({ line }) => line);
  return unionOutline({ pads: padsIn(network, plane), bands, roots }, TOLERANCE);
}
