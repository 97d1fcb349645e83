import { disc } from '../geometry/disc.ts';
import type { Point } from '../geometry/outline.ts';
import { radians, type Mm } from '../units.ts';
import { hold, modelOf } from './commonNetwork.ts';
import { padLength } from './commonSizes.ts';
import type { Dimension, FlexureNetwork, Mechanics, NetworkAsked } from './network.ts';
import { armLength, type SpiralSizes } from './spiralSizes.ts';

const CENTRE: Point = { x: 0, y: 0 };

/**
 * Hub and ring are drawn with their edges where the middle lines of the arms begin and end, which is where they bend
 * from: nearer in, an arm at a slant is still half one with the hub.
 */
export const spiralNetwork: Mechanics<SpiralSizes> = {
  network: (sizes, thickness, asked) => {
    const { arms, hub, ring, turns, depth } = sizes;
    const each = Array.from({ length: arms }, (_, k) => (2 * Math.PI * k) / arms);
    const inner = each.map((angle, k) => ({ id: `hub${k}`, ...onCircle(hub / 2, angle) }));
    const outer = each.map((angle, k) => ({ id: `ring${k}`, ...onCircle(ring / 2, angle + 2 * Math.PI * turns) }));
    return {
      model: modelOf({
        nodes: [...inner, ...outer],
        members: each.map((_, k) => ({
          id: `arm${k}`,
          from: `hub${k}`,
          to: `ring${k}`,
          shape: { kind: 'spiral', centre: CENTRE, turns },
          thickness,
          width: depth,
          widthRatio: asked.widthRatio,
        })),
        pads: [
          { id: 'ring', nodes: outer.map(({ id }) => id), at: CENTRE },
          { id: 'hub', nodes: inner.map(({ id }) => id), at: CENTRE },
        ],
        ...driveOf(asked),
      }),
      driven: { at: 'hub', direction: asked.drive === 'shifted' ? 'x' : 'turn' },
      moving: 'hub',
      alike: 1,
      bodies: [
        { pad: 'ring', outlines: [disc(CENTRE, ring / 2 + padLength(thickness)), disc(CENTRE, ring / 2, false)] },
        { pad: 'hub', outlines: [disc(CENTRE, hub / 2)] },
      ],
      dimensions: dimensionsOf(sizes),
    };
  },

  reach: (sizes, thickness, drive) => (drive === 'shifted' ? mostShift(sizes, thickness) : mostTurn(sizes, thickness)),
};

function driveOf({ drive, amount }: NetworkAsked): Pick<FlexureNetwork['model'], 'supports' | 'motions'> {
  switch (drive) {
    case 'centred':
      return {
        supports: [hold('ring'), { at: 'hub', x: true, y: true }],
        motions: [{ at: 'hub', turn: amount }],
      };
    case 'turned':
      return { supports: [hold('ring')], motions: [{ at: 'hub', turn: amount }] };
    case 'shifted':
      // Pushed by a force through its centre: it goes aside and turns as the arms let it.
      return { supports: [hold('ring')], motions: [{ at: 'hub', x: amount }] };
    default:
      throw new RangeError(`a spiral cannot be ${drive}`);
  }
}

function onCircle(radius: Mm, angle: number): Point {
  return { x: radius * Math.cos(angle), y: radius * Math.sin(angle) };
}

/**
 * How far the hub turns until half the way to all arms lying on each other is gone: wound on the hub, or unwound
 * against the ring. A wound arm covers its length times its thickness of the annulus it fills. Solved short arms touch
 * near there; the half is a rule of thumb, there only so that curves end somewhere sensible.
 */
function mostTurn(sizes: SpiralSizes, thickness: Mm): number {
  const { arms, turns } = sizes;
  const [r, R] = [sizes.hub / 2, sizes.ring / 2];
  const covered = (arms * armLength(sizes) * thickness) / Math.PI;
  const wound = (Math.sqrt(r * r + covered) - r) / (arms * thickness);
  const unwound = (R - Math.sqrt(Math.max(0, R * R - covered))) / (arms * thickness);
  return Math.max(radians(5), Math.PI * Math.min(wound - turns, turns - unwound));
}

/** Half of what is free between hub and ring once the arms lie on each other on one side. */
function mostShift({ hub, ring, turns, arms }: SpiralSizes, thickness: Mm): Mm {
  return Math.max(0.1, ((ring - hub) / 2 - turns * arms * thickness) / 2);
}

function dimensionsOf({ hub, ring }: SpiralSizes): readonly Dimension[] {
  return [
    { kind: 'diameter', parameter: 'hub', centre: CENTRE, radius: hub / 2, angle: radians(120) },
    { kind: 'diameter', parameter: 'ring', centre: CENTRE, radius: ring / 2, angle: radians(60) },
    { kind: 'thickness', parameter: 'lines', member: 'arm0', share: 0.6 },
  ];
}
