import { briefs, LINES, USE, type KindText } from './kind.ts';

export const FOLDED_LEAF: KindText = {
  name: 'folded leaf',
  does: 'A straight leaf wound to and fro: soft, in little room.',
  chooseFor: 'long travel, low effort.',
  costs: 'it gives in every other direction too.',
  piece: 'run',
  pieces: 'runs',
  thin: 'the whole fold',
  unitOfCount: 'line',
  sizes: {
    lines: 'Lines across',
    runs: 'Runs',
    length: 'Length of each run',
    spacing: 'From run to run',
    depth: 'Depth of the fold',
    fillet: 'Root fillet',
    pad: 'Pad thickness',
    sideBySide: 'Folds side by side',
  },
  room: { called: 'length of the runs', thing: 'runs', is: 'long', little: 'short' },
  padName: 'Pad',
  fillets: 'four',
  deep: 'deep',
  drives: { pulled: 'is pulled open', shifted: 'is moved along its runs', turned: 'bends' },
  ...briefs(
    '{drive}{by} {amount} {ways}, {cycles} times, in {filament}, {depth} deep, printed {lying} with {lineWidth} lines',
    'over {sizes.runs} run{s.runs} {length} long, {sizes.spacing} apart',
  ),
  details: () => `${USE} Roots filleted {fillet} into pads {pad} thick, {sideBySide} side by side. ${LINES}`,
  follows: ({ spacing }) => [{ label: 'Radius of the turns, to the middle line', value: (spacing ?? Number.NaN) / 2 }],
  starts: 'Start points on the pads, never on a run or in a turn.',
  notes: () => [
    'Lines run round every turn without a break: slow down in the turns rather than cut the corner.',
    'It gives sideways and out of its plane as well: guide what it carries.',
  ],
};
