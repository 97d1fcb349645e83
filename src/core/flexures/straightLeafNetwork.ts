import type { Path } from '../geometry/outline.ts';
import type { Mm } from '../units.ts';
import { CENTRED, PUSHED } from './commonDrives.ts';
import { padOutline, type PadRoot } from './commonNetwork.ts';
import { padLength } from './commonSizes.ts';
import type { Body, Dimension, FlexureNetwork, Mechanics, NetworkAsked } from './network.ts';
import { arcReach, pinnedReach } from './reach.ts';
import { placesInRow, rowModel, type Pieces, type Place } from './rowNetwork.ts';
import type { LeafSizes } from './straightLeaf.ts';

/** Past seven tenths of its length a leaf is pulled along rather than pushed across. */
const FAR_PUSH = 0.7;
/** A pin that stays squeezes the leaf; past this it folds beside the pin instead of turning about it. */
const FAR_ABOUT_PIN = Math.PI / 3;

/** Leaf along x from the fixed pad to the moving one; several in a row with pads between them. */
export const straightLeafNetwork: Mechanics<LeafSizes> = {
  network: leafNetwork,

  reach: (sizes, _, drive) => {
    if (drive === PUSHED.id) return FAR_PUSH * sizes.length;
    const met = padsMeet(sizes, drive);
    return drive === CENTRED.id ? Math.min(FAR_ABOUT_PIN, met) : met;
  },

  // A tip is never further out than its leaf is long.
  limit: (sizes, _, drive) => (drive === PUSHED.id ? sizes.length : padsMeet(sizes, drive)),
};

function padsMeet({ length, fillet, pad, inRow, centre }: LeafSizes, drive: string): number {
  if (drive !== CENTRED.id) return inRow * arcReach(length, pad / 2, fillet);
  return pinnedReach((1 - centre) * length + fillet, centre * length + fillet, pad / 2);
}

function leafNetwork(sizes: LeafSizes, thickness: Mm, asked: NetworkAsked): FlexureNetwork {
  const { length, fillet, depth, inRow, taper, centre, sideBySide } = sizes;
  const places = placesInRow(inRow, length, padLength(thickness) + 2 * fillet);
  const pin = { x: centre * length, y: 0 };
  const leaf = ({ number, from, to }: Place): Pieces => ({
    members: [
      {
        id: `leaf${number}`,
        from,
        to,
        shape: { kind: 'straight' },
        thickness: taper === 1 ? thickness : { kind: 'taper', from: thickness, to: taper * thickness },
        width: depth,
        widthRatio: asked.widthRatio,
      },
    ],
  });
  return {
    ...rowModel(places, leaf, asked, pin),
    alike: sideBySide,
    bodies: leafBodies(places, sizes, thickness),
    dimensions: leafDimensions(sizes),
  };
}

/** A pad before the first leaf, one between each two, and one behind the last. */
function leafBodies(places: readonly Place[], { fillet, pad, taper }: LeafSizes, thickness: Mm): readonly Body[] {
  const outline = (before: Place | undefined, after: Place | undefined): Path => {
    const far = fillet + padLength(thickness);
    const left = before ? before.end.x + fillet : (after?.start.x ?? 0) - far;
    const right = after ? after.start.x - fillet : (before?.end.x ?? 0) + far;
    const roots: readonly PadRoot[] = [
      ...(before
        ? [{ side: 'left', end: before.end, heading: Math.PI, thickness: taper * thickness, fillet } as const]
        : []),
      ...(after ? [{ side: 'right', end: after.start, heading: 0, thickness, fillet } as const] : []),
    ];
    return padOutline({ left, right, bottom: -pad / 2, top: pad / 2 }, roots);
  };
  const ids = ['fixed', ...places.slice(1).map(({ number }) => `between${number - 1}`), 'moving'];
  return ids.map((id, i) => ({ pad: id, outlines: [outline(places[i - 1], places[i])] }));
}

function leafDimensions({ length, fillet, pad }: LeafSizes): readonly Dimension[] {
  const root = { x: 0, y: 0 };
  const face = -fillet;
  return [
    { kind: 'distance', parameter: 'length', from: root, to: { x: length, y: 0 }, off: pad / 2 + 4 },
    { kind: 'thickness', parameter: 'lines', member: 'leaf1', share: 0.5 },
    { kind: 'distance', parameter: 'pad', from: { x: face, y: -pad / 2 }, to: { x: face, y: pad / 2 }, off: 6 },
  ];
}
