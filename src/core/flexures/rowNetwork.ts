/** Flexures one behind the other along x, with rigid pads between them that share out the movement. */
import type { BeamNode, Member, Motion, Pad, Support } from '../beam/model.ts';
import type { Point } from '../geometry/outline.ts';
import type { Mm } from '../units.ts';
import { hold, modelOf } from './commonNetwork.ts';
import { CENTRED, PUSHED } from './commonDrives.ts';
import type { FlexureNetwork, NetworkAsked } from './network.ts';

/** One flexure of the row: where it starts and ends, and the ids of its end nodes. */
export interface Place {
  /** 1 for the one on the fixed pad. */
  readonly number: number;
  readonly start: Point;
  readonly end: Point;
  readonly from: string;
  readonly to: string;
}

/** Members of one flexure, and the nodes between them when it is made of several. */
export interface Pieces {
  readonly members: readonly Member[];
  readonly nodes?: readonly BeamNode[];
}

/**
 * Where the flexures of a row lie: the first from x = 0 to its span, the others behind it.
 *
 * @param count - how many in a row [-], ≥ 1
 * @param span - length of each along x [mm], > 0
 * @param between - rigid length between one and the next [mm], > 0
 * @returns places in order from the fixed pad
 */
export function placesInRow(count: number, span: Mm, between: Mm): readonly Place[] {
  return Array.from({ length: count }, (_, i) => {
    const x = i * (span + between);
    const number = i + 1;
    return { number, start: { x, y: 0 }, end: { x: x + span, y: 0 }, from: `from${number}`, to: `to${number}` };
  });
}

/**
 * The network of a row of flexures and how it is driven: by a pure moment, by a push across its end, or about a pin.
 *
 * @param places - from `placesInRow` [mm]
 * @param pieces - members and inner nodes of the flexure at a place [mm]
 * @param asked - drive and amount [rad] or [mm]
 * @param pin - where the pin lies when it turns about one [mm]
 * @returns model and the direction that is driven
 */
export function rowModel(
  places: readonly Place[],
  pieces: (place: Place) => Pieces,
  asked: Pick<NetworkAsked, 'drive' | 'amount'>,
  pin: Point,
): Pick<FlexureNetwork, 'model' | 'driven' | 'moving'> {
  const made = places.map(pieces);
  const ends = places.flatMap(({ from, to, start, end }) => [
    { id: from, ...start },
    { id: to, ...end },
  ]);
  return {
    model: modelOf({
      nodes: [...ends, ...made.flatMap(({ nodes }) => nodes ?? [])],
      members: made.flatMap(({ members }) => members),
      pads: padsOf(places, asked.drive === CENTRED.id ? pin : undefined),
      ...drivenBy(asked),
    }),
    driven: { at: 'moving', direction: asked.drive === PUSHED.id ? 'y' : 'turn' },
    moving: 'moving',
  };
}

function padsOf(places: readonly Place[], pin: Point | undefined): readonly Pad[] {
  const between = places.slice(1).map(({ number, from }) => ({
    id: `between${number - 1}`,
    nodes: [`to${number - 1}`, from],
  }));
  const last = `to${places.length}`;
  return [{ id: 'fixed', nodes: ['from1'] }, ...between, { id: 'moving', nodes: [last], ...(pin ? { at: pin } : {}) }];
}

function drivenBy({ drive, amount }: Pick<NetworkAsked, 'drive' | 'amount'>): {
  readonly supports: readonly Support[];
  readonly motions: readonly Motion[];
} {
  const fixed = hold('fixed');
  if (drive === PUSHED.id) return { supports: [fixed], motions: [{ at: 'moving', y: amount }] };
  const pinned: readonly Support[] = drive === CENTRED.id ? [{ at: 'moving', x: true, y: true }] : [];
  return { supports: [fixed, ...pinned], motions: [{ at: 'moving', turn: amount }] };
}
