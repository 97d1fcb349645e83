import { briefs, LINES, USE, type KindText } from './kind.ts';

export const PARALLEL_LEAVES: KindText = {
  name: 'parallel leaves',
  does: 'Carries a pad sideways without turning it.',
  chooseFor: 'a shuttle, a button, a slide of a few millimetres.',
  costs: 'the pad also sinks a little; leaves must be alike.',
  piece: 'leaf',
  pieces: 'leaves',
  thin: 'each leaf',
  unitOfCount: 'line',
  sizes: {
    lines: 'Lines across',
    length: 'Leaf length',
    depth: 'Leaf depth',
    leaves: 'Leaves that carry the pad',
    spacing: 'From leaf to leaf',
    fillet: 'Root fillet',
    pad: 'Pad thickness',
    sideBySide: 'Stages side by side',
  },
  drawn: { length: 'Leaf length, between fillets' },
  room: { called: 'leaf length', thing: 'leaves', is: 'long', little: 'short' },
  padName: 'Pad',
  fillets: 'at every leaf end',
  deep: 'deep',
  drives: {
    shifted: 'carries a pad across',
    guided: 'carries a pad across kept level',
    held: 'carries a pad across in a slide',
  },
  ...briefs(
    '{drive}{by} {amount} {ways}, {cycles} times, in {filament}, {depth} deep, printed {lying} with {lineWidth} lines',
    'on {sizes.leaves} leaves {length} long, {sizes.spacing} apart',
  ),
  details: () => `${USE} Roots filleted {fillet} into pads {pad} thick, {sideBySide} side by side. ${LINES}`,
  starts: 'Start points on the far faces of the pads, never on a leaf.',
  notes: () => [
    'Check that all leaves come out alike: one that is stiffer than the rest turns the pad.',
    'The pad sinks as it goes across: leave it room below.',
  ],
};
