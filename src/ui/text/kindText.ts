/** Words of each kind of flexure: its name, its sizes, and the sentence of its brief. `{name}` stands for a value field. */
import type { Lying } from '../../core/print/profile.ts';

export interface KindText {
  readonly name: string;
  /** What bends, one and several. */
  readonly piece: string;
  readonly pieces: string;
  /** One line or layer of the count. */
  readonly unitOfCount: 'line' | 'layer';
  /** Names of the sizes, as labels. */
  readonly sizes: Readonly<Record<string, string>>;
  /** What the thick body on either side is called. */
  readonly padName: string;
  /** How many root fillets there are and where. */
  readonly fillets: string;
  /** What the size across the bending plane is called in a past-tense sentence: “made 6 mm deep”. */
  readonly deep: string;
  /** What it does in each of its drives, as it stands after “it”. */
  readonly drives: Readonly<Record<string, string>>;
  readonly brief: string;
  readonly measuredBrief: string;
  /** The rest of the sizes, as far as a drive asks for them. */
  readonly details: (drive: string) => string;
}

/** Sizes of a leaf that only one of its drives asks for. */
const LEAF_DETAILS: Readonly<Record<string, string>> = {
  turned: ', {inRow} in a row{sharing}',
  pushed: ', the tip {sizes.taper} times as thick as the root',
  centred: ', the pin {sizes.centre} of the way along the leaf',
};

const LEAF: KindText = {
  name: 'straight leaf',
  piece: 'leaf',
  pieces: 'leaves',
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
  padName: 'Pad',
  fillets: 'four',
  deep: 'deep',
  drives: { turned: 'bends', pushed: 'is pushed at the tip', centred: 'turns about a pin' },
  brief:
    '{drive}{by} {amount} {ways}, {cycles} times, in {filament}, {depth} deep, printed {lying} with {lineWidth} lines, {count} across, over a leaf {length} long.',
  measuredBrief:
    'Measured {thickness} thick and {length} long: {drive}{by} {amount} {ways}, {cycles} times, in {filament}, {depth} deep, printed {lying} with {lineWidth} lines.',
  details: (drive) =>
    `It is {held}, and {chance} should get there. Roots filleted {fillet} into pads {pad} thick${LEAF_DETAILS[drive] ?? ''}, {sideBySide} side by side. Nozzle {nozzle}, layers {layerHeight}, the first {firstLayerHeight}; lines counted as {fitRule}.`,
};

const CREASE: KindText = {
  name: 'crease',
  piece: 'crease',
  pieces: 'creases',
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
  padName: 'Plate',
  fillets: 'two, on top',
  deep: 'wide',
  drives: { turned: 'bends' },
  brief:
    '{drive}{by} {amount} {ways}, {cycles} times, in {filament}, printed as a crease of {count} {layers} of {layerHeight}, flexing over {length}, in a hinge {depth} wide.',
  measuredBrief:
    'Measured {thickness} thick: {drive}{by} {amount} {ways}, {cycles} times, in {filament}, printed as a crease in layers of {layerHeight}, flexing over {length}, in a hinge {depth} wide.',
  details: () =>
    'It is {held}, and {chance} should get there. Roots filleted {fillet} into plates {pad} thick, {inRow} in a row{sharing}, {sideBySide} side by side. Nozzle {nozzle}, lines {lineWidth} wide, the first layer {firstLayerHeight}.',
};

const KINDS: Readonly<Record<string, KindText>> = { straightLeaf: LEAF, crease: CREASE };

/** Words of a kind; every family of the core has some, and a test holds them together. */
export function kindText(family: string): KindText {
  const text = KINDS[family];
  if (!text) throw new RangeError(`no words for the family ${family}`);
  return text;
}

/** As it stands after “printed”. */
export const LYING_TEXT: Readonly<Record<Lying, string>> = { flat: 'flat', crease: 'as a crease', upright: 'upright' };
