import type { Path } from '../geometry/outline.ts';
import { roundedOutline, type Corner } from '../geometry/roundedOutline.ts';
import type { Mm } from '../units.ts';
import { padLength } from './commonSizes.ts';
import type { CreaseSizes } from './crease.ts';
import type { Body, Dimension, FlexureNetwork, Mechanics, NetworkAsked } from './network.ts';
import { arcReach } from './reach.ts';
import { placesInRow, rowModel, type Pieces, type Place } from './rowNetwork.ts';

/** Web along x from the fixed plate to the moving one, its middle on y = 0; the plates stand up from its lower side. */
export const creaseNetwork: Mechanics<CreaseSizes> = {
  network: foldNetwork,

  reach: platesMeet,
  limit: platesMeet,
};

/** It turns towards the side on which the plates stand up. */
function platesMeet({ length, fillet, pad, inRow }: CreaseSizes, thickness: Mm): number {
  return inRow * arcReach(length, pad - thickness / 2, fillet);
}

function foldNetwork(sizes: CreaseSizes, thickness: Mm, asked: NetworkAsked): FlexureNetwork {
  const { length, fillet, depth, inRow, sideBySide } = sizes;
  const places = placesInRow(inRow, length, padLength(thickness) + 2 * fillet);
  const web = ({ number, from, to }: Place): Pieces => ({
    members: [
      {
        id: `web${number}`,
        from,
        to,
        shape: { kind: 'straight' },
        thickness,
        width: depth,
        widthRatio: asked.widthRatio,
      },
    ],
  });
  return {
    ...rowModel(places, web, asked, { x: length / 2, y: 0 }),
    alike: sideBySide,
    bodies: plates(places, sizes, thickness),
    dimensions: foldDimensions(sizes, thickness),
  };
}

/** A plate before the first web, one between each two, and one behind the last. */
function plates(places: readonly Place[], { fillet, pad }: CreaseSizes, thickness: Mm): readonly Body[] {
  const ids = ['fixed', ...places.slice(1).map(({ number }) => `between${number - 1}`), 'moving'];
  const far = fillet + padLength(thickness);
  return ids.map((id, i) => {
    const [before, after] = [places[i - 1], places[i]];
    const left = before?.end.x ?? (after?.start.x ?? 0) - far;
    const right = after?.start.x ?? (before?.end.x ?? 0) + far;
    return {
      pad: id,
      outlines: [plate(left, right, before ? fillet : 0, after ? fillet : 0, pad, thickness)],
    };
  });
}

/** From one web to the next: flush with both below, with their fillets above; a fillet of 0 is a plain end. */
function plate(left: Mm, right: Mm, filletLeft: Mm, filletRight: Mm, pad: Mm, thickness: Mm): Path {
  const [bottom, webTop, top] = [-thickness / 2, thickness / 2, pad - thickness / 2];
  return roundedOutline([
    sharp(left, bottom),
    sharp(right, bottom),
    ...(filletRight > 0 ? [sharp(right, webTop), { x: right - filletRight, y: webTop, radius: filletRight }] : []),
    sharp(right - filletRight, top),
    sharp(left + filletLeft, top),
    ...(filletLeft > 0 ? [{ x: left + filletLeft, y: webTop, radius: filletLeft }, sharp(left, webTop)] : []),
  ]);
}

function sharp(x: Mm, y: Mm): Corner {
  return { x, y, radius: 0 };
}

function foldDimensions({ length, fillet, pad }: CreaseSizes, thickness: Mm): readonly Dimension[] {
  const bottom = -thickness / 2;
  const face = { x: -fillet, y: bottom };
  return [
    { kind: 'distance', parameter: 'length', from: { x: 0, y: 0 }, to: { x: length, y: 0 }, off: pad + 3 },
    { kind: 'thickness', parameter: 'layers', member: 'web1', share: 0.5 },
    { kind: 'distance', parameter: 'pad', from: face, to: { x: face.x, y: bottom + pad }, off: 6 },
  ];
}
