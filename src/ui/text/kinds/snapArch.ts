import { briefs, LINES, sizeOf, type KindText } from './kind.ts';
import { SNAP_EYES, STIFF_FRAME, USE_OF_SNAP } from './snapping.ts';

export const SNAP_ARCH: KindText = {
  name: 'snap arch',
  does: 'Snaps to a second place and stays.',
  chooseFor: 'a switch, a button that clicks, a latch.',
  costs: 'high strain and a stiff frame; TPU does not stay.',
  piece: 'arch',
  pieces: 'arches',
  thin: 'each arch',
  unitOfCount: 'line',
  sizes: {
    lines: 'Lines across',
    arches: 'Single or double',
    span: 'Arch length between the walls',
    rise: 'Rise of the middle line',
    apart: 'From arch to arch',
    block: 'Width of the middle block',
    depth: 'Arch depth',
    fillet: 'Root fillet',
    sideBySide: 'Side by side',
  },
  drawn: { span: 'Span, from wall to wall' },
  room: { called: 'arch length', thing: 'arch', is: 'long', little: 'short' },
  padName: 'Wall',
  fillets: 'at walls and block',
  deep: 'deep',
  drives: { pressed: 'snaps through', guided: 'snaps through on a guide' },
  choices: { arches: { 1: 'a single arch', 2: 'a double arch' } },
  wish: { any: 'any strength', most: 'at most' },
  ...briefs(
    'Under a push of {wish} it {drive}{by} {amount} and {stays}, {cycles} times, in {filament}, {depth} deep, printed flat with {lineWidth} lines',
    'as {sizes.arches} {length} long and {sizes.rise} high, {sideBySide} side by side',
  ),
  details: (_, { arches }) =>
    `${USE_OF_SNAP} The block in the middle is {sizes.block} wide${arches === 2 ? ', the arches {sizes.apart} apart' : ''}, roots filleted {fillet}. ${LINES}`,
  follows: (sizes) => [
    { label: 'Each half arch, along the span', value: (sizeOf(sizes, 'span') - sizeOf(sizes, 'block')) / 2 },
  ],
  starts: 'Start points on the frame or the middle block, never on an arch.',
  notes: () => [
    'Draw it risen, as printed: each half is ½ rise × (1 − cos(180° × x ÷ half arch)), level at wall and block. An arch pushed up afterwards is under strain at rest and may not stay.',
    STIFF_FRAME,
    'TPU does not hold the second state; PLA whitens and breaks within a few presses.',
  ],
  eyes: SNAP_EYES,
};
