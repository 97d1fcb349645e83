import type { Member, Profile } from '../beam/model.ts';
import type { Mm } from '../units.ts';
import { CENTRED } from './commonDrives.ts';
import { padOutline } from './commonNetwork.ts';
import { padLength } from './commonSizes.ts';
import type { NeckSizes } from './neck.ts';
import type { Body, Dimension, FlexureNetwork, Mechanics, NetworkAsked } from './network.ts';
import { pinnedReach } from './reach.ts';
import { placesInRow, rowModel, type Pieces, type Place } from './rowNetwork.ts';

/** Neck along x from the fixed pad to the moving one; several in a row with pads between them. */
export const neckNetwork: Mechanics<NeckSizes> = {
  network: neckRow,

  reach: (sizes, thickness, drive) => {
    const met = padsMeet(sizes, thickness, drive);
    return drive === CENTRED.id ? Math.min(met, Math.PI / 3) : met;
  },
  limit: padsMeet,
};

/** A neck turns nearly about its middle, whether a pin holds it there or not. */
function padsMeet(sizes: NeckSizes, thickness: Mm, drive: string): number {
  const half = spanOf(sizes) / 2;
  const each = pinnedReach(half, half, sizes.deep + thickness / 2);
  return drive === CENTRED.id ? each : sizes.inRow * each;
}

/** A straight part shorter than this is no part of its own: the notch is as much longer. */
const LEAST_STRAIGHT = 0.01;

function spanOf({ along, straight }: NeckSizes): Mm {
  return 2 * along + straight;
}

function neckRow(sizes: NeckSizes, thickness: Mm, asked: NetworkAsked): FlexureNetwork {
  const { inRow, sideBySide } = sizes;
  const places = placesInRow(inRow, spanOf(sizes), padLength(thickness));
  return {
    ...rowModel(places, (place) => piecesOf(place, sizes, thickness, asked.widthRatio), asked, {
      x: spanOf(sizes) / 2,
      y: 0,
    }),
    alike: sideBySide,
    bodies: neckBodies(places, sizes, thickness),
    dimensions: neckDimensions(sizes, thickness),
  };
}

/** One whole notch, or a half at either end of a straight part. */
function piecesOf(place: Place, sizes: NeckSizes, thickness: Mm, widthRatio: number): Pieces {
  const { number, from, to, start, end } = place;
  const { along, deep, straight, depth } = sizes;
  const member = (id: string, ends: readonly [string, string], profile: Profile): Member => ({
    id: `${id}${number}`,
    from: ends[0],
    to: ends[1],
    shape: { kind: 'straight' },
    thickness: profile,
    width: depth,
    widthRatio,
  });
  const notch = (part: 'whole' | 'opening' | 'closing'): Profile => ({ kind: 'notch', least: thickness, deep, part });
  if (straight < LEAST_STRAIGHT) return { members: [member('neck', [from, to], notch('whole'))] };
  const [first, second] = [`thin${number}`, `thick${number}`];
  return {
    nodes: [
      { id: first, x: start.x + along, y: 0 },
      { id: second, x: end.x - along, y: 0 },
    ],
    members: [
      member('opening', [from, first], notch('opening')),
      member('neck', [first, second], thickness),
      member('closing', [second, to], notch('closing')),
    ],
  };
}

/** A pad before the first neck, one between each two, and one behind the last. */
function neckBodies(places: readonly Place[], { deep }: NeckSizes, thickness: Mm): readonly Body[] {
  const half = thickness / 2 + deep;
  const far = padLength(thickness);
  const ids = ['fixed', ...places.slice(1).map(({ number }) => `between${number - 1}`), 'moving'];
  return ids.map((id, i) => {
    const [before, after] = [places[i - 1], places[i]];
    const left = before?.end.x ?? (after?.start.x ?? 0) - far;
    const right = after?.start.x ?? (before?.end.x ?? 0) + far;
    return { pad: id, outlines: [padOutline({ left, right, bottom: -half, top: half }, [], 0)] };
  });
}

function neckDimensions(sizes: NeckSizes, thickness: Mm): readonly Dimension[] {
  const { along, deep, straight } = sizes;
  const [a, top] = [thickness / 2, thickness / 2 + deep];
  const measured: readonly Dimension[] = [
    { kind: 'distance', parameter: 'along', from: { x: 0, y: top }, to: { x: along, y: top }, off: 4 },
    { kind: 'thickness', parameter: 'lines', member: 'neck1', share: 0.5 },
    { kind: 'distance', parameter: 'deep', from: { x: 0, y: a }, to: { x: 0, y: top }, off: padLength(thickness) + 4 },
  ];
  if (straight < LEAST_STRAIGHT) return measured;
  const from = { x: along, y: top };
  return [...measured, { kind: 'distance', parameter: 'straight', from, to: { x: along + straight, y: top }, off: 4 }];
}
