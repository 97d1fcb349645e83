import { LINES, USE, type KindText } from './kind.ts';

/** Sizes that only one of its drives asks for. */
const DETAILS: Readonly<Record<string, string>> = {
  turned: ', {inRow} in a row{sharing}',
  pushed: ', the tip {sizes.taper} as thick as the root',
  centred: ', the pin {sizes.centre} of the way along the leaf',
};

export const STRAIGHT_LEAF: KindText = {
  name: 'straight leaf',
  does: 'Turns a pad through an angle, or lets it move a little sideways.',
  chooseFor: 'a lid, a flap, a clip; up to about 90° where there is room.',
  costs: 'length: twice the angle needs twice the leaf.',
  piece: 'leaf',
  pieces: 'leaves',
  thin: 'the leaf',
  unitOfCount: 'line',
  sizes: {
    lines: 'Lines across',
    length: 'Leaf length',
    depth: 'Leaf depth',
    fillet: 'Root fillet',
    pad: 'Pad thickness',
    inRow: 'Leaves in a row',
    sideBySide: 'Leaves side by side',
    taper: 'Thickness of the tip over the root',
    centre: 'Place of the pin along the leaf',
  },
  drawn: { length: 'Flexing length, between fillets' },
  room: { called: 'flexing length', thing: 'leaf', is: 'long', little: 'short' },
  padName: 'Pad',
  fillets: 'four',
  deep: 'deep',
  drives: { turned: 'bends', pushed: 'is pushed at the tip', centred: 'turns about a pin' },
  brief:
    '{drive}{by} {amount} {ways}, {cycles} times, in {filament}, {depth} deep, printed {lying} with {lineWidth} lines, {count} across, over a leaf {length} long.',
  measuredBrief:
    'Measured {thickness} thick and {length} long: {drive}{by} {amount} {ways}, {cycles} times, in {filament}, {depth} deep, printed {lying} with {lineWidth} lines.',
  details: (drive) =>
    `${USE} Roots filleted {fillet} into pads {pad} thick${DETAILS[drive] ?? ''}, {sideBySide} side by side. ${LINES}`,
  starts: 'Start points on the far face of a pad, never along the heavy chain line.',
  notes: () => [],
};
