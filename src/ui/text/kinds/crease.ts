import { USE, type KindText } from './kind.ts';

export const CREASE: KindText = {
  name: 'crease',
  does: 'Folds along a line, thin in the build direction.',
  chooseFor: 'a fold right round, opened seldom; a panel printed flat.',
  costs: 'life: it strains most of all, and layers may part.',
  piece: 'crease',
  pieces: 'creases',
  thin: 'the crease',
  unitOfCount: 'layer',
  sizes: {
    layers: 'Layers through',
    length: 'Crease length',
    depth: 'Hinge width',
    fillet: 'Root fillet',
    pad: 'Plate thickness',
    inRow: 'Creases in a row',
    sideBySide: 'Creases side by side',
  },
  drawn: { length: 'Flexing length, between fillets' },
  room: { called: 'flexing length', thing: 'crease', is: 'long', little: 'short' },
  padName: 'Plate',
  fillets: 'two, on top',
  deep: 'wide',
  drives: { turned: 'bends' },
  brief:
    '{drive}{by} {amount} {ways}, {cycles} times, in {filament}, printed as a crease of {count} {layers} of {layerHeight}, flexing over {length}, in a hinge {depth} wide.',
  measuredBrief:
    'Measured {thickness} thick: {drive}{by} {amount} {ways}, {cycles} times, in {filament}, printed as a crease in layers of {layerHeight}, flexing over {length}, in a hinge {depth} wide.',
  details: () =>
    `${USE} Roots filleted {fillet} into plates {pad} thick, {inRow} in a row{sharing}, {sideBySide} side by side. Nozzle {nozzle}, lines {lineWidth} wide, the first layer {firstLayerHeight}.`,
  starts: 'Start points on the plates, never in the crease or its fillets.',
  notes: () => [
    'Lay the lines of the crease from plate to plate, across the fold, so that bending does not pull them apart.',
    'Lay it with the crease on the plate, where it needs no support.',
  ],
};
