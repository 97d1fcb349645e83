import { armLength } from '../../../core/flexures/spiralSizes.ts';
import { setLength, unitAfter } from '../numbers.ts';
import { briefs, LINES, sizeOf, type KindText } from './kind.ts';

export const SPIRAL: KindText = {
  name: 'spiral',
  does: 'Turns a hub in its ring and brings it back.',
  chooseFor: 'a return spring; 35° both ways and more.',
  costs: 'no bearing: add a pin. Arms can touch. Sags if held wound.',
  piece: 'arm',
  pieces: 'arms',
  thin: 'each arm',
  unitOfCount: 'line',
  sizes: {
    lines: 'Lines across',
    arms: 'Arms',
    hub: 'Hub, to the middle line',
    ring: 'Ring, to the middle line',
    turns: 'Turns of each arm',
    depth: 'Depth of the arms',
    fillet: 'Root fillet',
  },
  room: { called: 'ring diameter', thing: 'ring', is: 'across', little: 'small' },
  padName: 'Ring',
  fillets: 'at hub and ring',
  deep: 'deep',
  drives: { centred: 'turns on a pin', turned: 'turns without a pin', shifted: 'is pushed off its centre' },
  ...briefs(
    '{drive}{by} {amount} {ways}, {cycles} times and {held}, in {filament}, {depth} deep, printed flat with {lineWidth} lines',
    'on {sizes.arms} arm{s.arms} of {sizes.turns} turn{s.turns} from a hub of {sizes.hub} to a ring of {length}',
  ),
  details: () =>
    `{chance} should get there; it may push back {wish}. Roots filleted {fillet} into hub and ring. ${LINES}`,
  follows: (sizes) => [
    {
      label: 'Length of each arm',
      value: armLength({ hub: sizeOf(sizes, 'hub'), ring: sizeOf(sizes, 'ring'), turns: sizeOf(sizes, 'turns') }),
    },
    {
      label: 'The radius grows in one turn by',
      value: (sizeOf(sizes, 'ring') - sizeOf(sizes, 'hub')) / 2 / sizeOf(sizes, 'turns'),
    },
  ],
  starts: 'Start points on the ring or hub, never on an arm.',
  notes: ({ drive, joint }, unit) => [
    `Arms as printed must stay a line, ${setLength(joint.profile.lineWidth, unit)}${unitAfter(unit)}, or more apart, or they fuse.`,
    ...(drive.id === 'centred'
      ? ['Put a pin through the hub: by itself it gives sideways and along its axis as well as it turns.']
      : ['The hub has no bearing: it gives sideways and along its axis as well.']),
    'Fit it unloaded; a spiral kept wound sags.',
  ],
  eyes: 'A wound spring stores energy: eye protection, and let it back slowly. Printed parts vary, so test yours.',
};
