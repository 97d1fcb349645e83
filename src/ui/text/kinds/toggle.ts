import { roofHeight, springThickness } from '../../../core/flexures/toggleSizes.ts';
import { briefs, LINES, sizeOf, type KindText } from './kind.ts';
import { SNAP_EYES, STIFF_FRAME, USE_OF_SNAP } from './snapping.ts';

export const TOGGLE: KindText = {
  name: 'over-centre toggle',
  does: 'Stiff links between necks pass the middle and stay.',
  chooseFor: 'a second place with more hold and less strain than an arch.',
  costs: 'three necks and a spring leaf to size; it needs a stop past the middle.',
  piece: 'neck',
  pieces: 'necks',
  thin: 'each neck',
  unitOfCount: 'line',
  sizes: {
    lines: 'Lines across the necks',
    springLines: 'Lines across the spring leaf',
    hinge: 'Length of the outer necks',
    link: 'Length of the links',
    incline: 'Incline of the links',
    spring: 'Length of the spring leaf',
    depth: 'Depth',
    fillet: 'Root fillet',
    pad: 'Link thickness',
    sideBySide: 'Toggles side by side',
  },
  drawn: { lines: 'Necks, thick', hinge: 'Outer necks, between fillets', link: 'Links, between the necks' },
  room: { called: 'length of the necks', thing: 'necks', is: 'long', little: 'short', times: 4 },
  padName: 'Link',
  fillets: 'at every neck end and both ends of the spring leaf',
  deep: 'deep',
  drives: { pressed: 'is pressed down' },
  wish: { any: 'any strength', most: 'at most' },
  ...briefs(
    'Under a push of {wish} it {drive}{by} {amount} and {stays}, {cycles} times, in {filament}, {depth} deep, printed flat with {lineWidth} lines',
    'over necks {length} long between links of {sizes.link} at {sizes.incline}',
  ),
  details: () =>
    `${USE_OF_SNAP} The spring leaf is {sizes.springLines} line{s.springLines} across and {sizes.spring} long, roots filleted {fillet} into links {pad} thick, {sideBySide} side by side. ${LINES}`,
  follows: (sizes, thickness) => [
    { label: 'Middle neck, between fillets', value: 2 * sizeOf(sizes, 'hinge') },
    {
      label: 'Spring leaf, thick',
      value: springThickness({ lines: sizeOf(sizes, 'lines'), springLines: sizeOf(sizes, 'springLines') }, thickness),
    },
    {
      label: 'Middle neck above the outer ones',
      value: roofHeight({ link: sizeOf(sizes, 'link'), incline: sizeOf(sizes, 'incline') }),
    },
  ],
  starts: 'Start points on the links or the frame, never on a neck or the spring leaf.',
  notes: () => [
    STIFF_FRAME,
    'Put a stop a little past the second rest, so that the necks carry no more than the snap.',
    'Lines of the links must not run on into the necks as lines too many: check each neck on its own.',
  ],
  eyes: SNAP_EYES,
};
