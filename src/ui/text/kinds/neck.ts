import { briefs, LINES, USE, type KindText } from './kind.ts';

export const NECK: KindText = {
  name: 'notched neck',
  does: 'Turns a few degrees about a place that hardly moves.',
  chooseFor: 'small, exact movements; several in a row.',
  costs: 'strain: all bending sits in a short neck, 5° or so.',
  piece: 'neck',
  pieces: 'necks',
  thin: 'the neck',
  unitOfCount: 'line',
  sizes: {
    lines: 'Lines across',
    along: 'Half length of the notch',
    deep: 'Depth of the notch',
    straight: 'Straight part',
    depth: 'Neck depth',
    inRow: 'Necks in a row',
    sideBySide: 'Necks side by side',
  },
  room: { called: 'half length of the notch', thing: 'notch', is: 'long to either side', little: 'short', times: 2 },
  padName: 'Pad',
  fillets: 'none',
  deep: 'deep',
  drives: { turned: 'bends', centred: 'turns about a pin' },
  ...briefs(
    '{drive}{by} {amount} {ways}, {cycles} times, in {filament}, {depth} deep, printed {lying} with {lineWidth} lines',
    'between notches that reach {sizes.along} to either side and {sizes.deep} in',
  ),
  details: (drive) =>
    `${USE} The straight part in the middle is {sizes.straight} long; ${drive === 'turned' ? '{inRow} in a row{sharing}, ' : ''}{sideBySide} side by side. ${LINES}`,
  starts: 'Start points on the far face of a pad, never in the notches: the neck breaks first where a line begins.',
  notes: ({ sizes }) =>
    sizes['straight'] === 0
      ? ['All bending sits in the thinnest place: measure it there, a tenth of a millimetre shows.']
      : [],
};
