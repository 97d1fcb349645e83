import { slitPanelStiffness, slitPanelStrain } from '../closedForms/slitPanel.ts';
import { thicknessOfLayers } from '../print/wholeLayers.ts';
import { plain, type Problem } from '../problems.ts';
import { asRad, type Mm } from '../units.ts';
import { WRAPPED } from './cellPanel.ts';
import { DEPTH } from './commonSizes.ts';
import type { FlexureFamily } from './family.ts';
import { judgeRoom } from './roomChecks.ts';
import { slitPanelPlan } from './slitPanelPlan.ts';

export type SlitPanelSizes = {
  /** Layers through the sheet. */
  readonly layers: number;
  /** Rows of slits along the panel. */
  readonly rows: number;
  /** From one row of slits to the next, along the panel. */
  readonly pitch: Mm;
  /** Width of each slit. */
  readonly slitWidth: Mm;
  /** Length of each slit, across the panel. */
  readonly slit: Mm;
  /** What is left standing between the slits of a row. */
  readonly bridge: Mm;
  /** Width of the panel, along the slits. */
  readonly depth: Mm;
};

/**
 * A sheet with rows of slits, each row shifted by half against the next, so that the strips between them twist.
 *
 * Bridges of one row lie against the middles of the slits of the next. Between a bridge and the next one of the other
 * row, a strip as wide as the pitch less the slit twists over half of what a slit is longer than a bridge.
 */
export const slitPanel: FlexureFamily<SlitPanelSizes> = {
  id: 'slitPanel',
  lyings: ['crease'],
  countOf: 'layers',
  parameters: {
    layers: {
      kind: 'count',
      min: 1,
      max: 40,
      step: 1,
      typical: 6,
      because: 'at least one layer is laid; more than 40 make a block that the slits hardly loosen',
    },
    rows: {
      kind: 'count',
      min: 2,
      max: 60,
      step: 1,
      typical: 20,
      because: 'a strip needs a row of slits on either side; more than 60 rows do not fit a usual plate',
    },
    pitch: {
      kind: 'length',
      min: 0.8,
      max: 30,
      step: 0.2,
      typical: 3,
      because: 'closer rows leave no strip between them, rows further apart follow no curve',
    },
    slitWidth: {
      kind: 'length',
      min: 0.2,
      max: 5,
      step: 0.1,
      typical: 0.8,
      because: 'a narrower slit fuses in the print, a wider one is a window',
    },
    slit: {
      kind: 'length',
      min: 2,
      max: 150,
      step: 0.5,
      typical: 20,
      because: 'a shorter slit leaves nothing to twist, a longer one does not fit a usual plate',
    },
    bridge: {
      kind: 'length',
      min: 0.4,
      max: 30,
      step: 0.2,
      typical: 2,
      because: 'a thinner bridge is under one line, a wider one stiffens the panel for nothing',
    },
    depth: { ...DEPTH, typical: 66 },
  },
  roles: { count: 'layers', length: 'slit', depth: 'depth', inRow: 'rows' },
  drives: [WRAPPED],

  check: (sizes, _, { lineWidth }) => {
    const overlap = refuseShortSlits(sizes);
    if (overlap.length > 0) return overlap;
    return [
      ...refuseThinStrip(sizes, lineWidth),
      ...refuseNarrowPanel(sizes),
      ...judgeSlit(sizes, lineWidth),
      ...noteStubbyStrip(sizes),
    ];
  },

  section: ({ layers, depth }, profile) => ({
    thickness: thicknessOfLayers(layers, profile),
    width: depth,
    count: layers,
    countOf: 'layers',
  }),

  /** Strips run into their bridges without a step in thickness, round ends of half the slit's width beside them. */
  root: ({ slitWidth }, thickness) => ({ fillet: slitWidth / 2, shoulder: thickness }),

  plan: slitPanelPlan,

  handForms: [
    {
      drive: WRAPPED.id,
      source: 'saint-venant-torsion',
      appliesTo: () => true,
      peakStrain: (sizes, thickness, amount) => shearStrain(sizes, thickness, amount) / Math.sqrt(3),
      isStrainOutside: true,
      effort: (sizes, thickness, amount) =>
        (SHEAR_OVER_YOUNG * stripStiffness(sizes, thickness) * amount) / twistsInRow(sizes),
      rel: 0.08,
      because:
        'exact for the strain, which the network cannot know: it is shear within strips that twist out of its plane. The effort takes Poisson’s ratio as 0.4; filaments have 0.34 to 0.49, which is up to 7 % of the shear modulus',
    },
  ],
};

/** G/E = 1/(2·(1 + ν)) at ν = 0.4. */
const SHEAR_OVER_YOUNG = 1 / 2.8;

/** Strips one behind the other that share the wrap. */
export function twistsInRow({ rows }: Pick<SlitPanelSizes, 'rows'>): number {
  return rows - 1;
}

/**
 * The strip between two rows of slits.
 *
 * @param sizes - of the panel, checked [mm]
 * @returns its width, and over what it twists between a bridge and the next one of the other row [mm]
 */
export function stripOf({ pitch, slitWidth, slit, bridge }: SlitPanelSizes): {
  readonly width: Mm;
  readonly overlap: Mm;
} {
  return { width: pitch - slitWidth, overlap: (slit - bridge) / 2 };
}

/**
 * Largest shear strain within the strips.
 *
 * Told to the rest of the program as γ/√3, the plain strain that distorts as much at unchanged volume: what a filament
 * stands is known in tension only, and that equal distortion does equal harm (von Mises) is an assumption.
 *
 * @param sizes - of the panel, checked [mm]
 * @param thickness - of the sheet [mm], > 0
 * @param amount - angle of the whole wrap [rad]
 * @returns engineering shear strain as a fraction [-]
 *
 * Source: saint-venant-torsion.
 */
export function shearStrain(sizes: SlitPanelSizes, thickness: Mm, amount: number): number {
  const { width, overlap } = stripOf(sizes);
  return slitPanelStrain(width, thickness, overlap, twistsInRow(sizes), asRad(amount));
}

/**
 * How stiffly one row of bridges is held against the next, per MPa of the shear modulus. Two parts of strip lie side
 * by side for each slit with its bridge; a panel of no whole number of them counts its share, so that a dragged width
 * does not jump.
 *
 *     K/G = (2·b/(s + w))·c1·B·t³/((s − w)/2)
 *
 * @param sizes - of the panel, checked [mm]
 * @param thickness - of the sheet [mm], > 0
 * @returns stiffness of one strip [mm³/rad]
 *
 * Source: saint-venant-torsion.
 */
export function stripStiffness(sizes: SlitPanelSizes, thickness: Mm): number {
  const { width, overlap } = stripOf(sizes);
  const sideBySide = (2 * sizes.depth) / (sizes.slit + sizes.bridge);
  return slitPanelStiffness(1, width, thickness, overlap, sideBySide, 1);
}

function refuseShortSlits({ slit, bridge }: SlitPanelSizes): readonly Problem[] {
  const limit = 2 * bridge;
  if (slit >= limit * (1 - 1e-9)) return [];
  return [
    {
      code: 'slits-must-overlap',
      message: `Slits of ${plain(slit)} mm with bridges of ${plain(bridge)} mm between them hardly overlap those of the next row, so nothing can twist; make them at least ${plain(limit)} mm long`,
      field: 'sizes.slit',
      value: slit,
      limit,
    },
  ];
}

/** Strips and bridges are laid as lines: one contour, two lines, is the least. */
function refuseThinStrip({ pitch, slitWidth, bridge }: SlitPanelSizes, line: Mm): readonly Problem[] {
  const least = 2 * line;
  const short = (value: Mm) => value < least * (1 - 1e-9);
  const refuse = (what: string, field: string, value: Mm, limit: Mm): Problem => ({
    code: 'no-room',
    message: `${what} of ${plain(value)} mm has no room for two lines of ${plain(line)} mm; make it at least ${plain(limit)} mm`,
    field,
    value,
    limit,
  });
  return [
    ...(short(pitch - slitWidth) ? [refuse('A pitch less the slit', 'sizes.pitch', pitch, least + slitWidth)] : []),
    ...(short(bridge) ? [refuse('A bridge', 'sizes.bridge', bridge, least)] : []),
  ];
}

function refuseNarrowPanel({ depth, slit, bridge }: SlitPanelSizes): readonly Problem[] {
  const limit = slit + bridge;
  if (depth >= limit * (1 - 1e-9)) return [];
  return [
    {
      code: 'no-room',
      message: `A panel ${plain(depth)} mm wide has no room for one slit and its bridge; make it at least ${plain(limit)} mm wide, or the slits shorter`,
      field: 'sizes.depth',
      value: depth,
      limit,
    },
  ];
}

function judgeSlit({ slitWidth }: SlitPanelSizes, line: Mm): readonly Problem[] {
  const cure = `make the slits at least ${plain(line)} mm wide`;
  const between = 'the edges of a slit';
  return judgeRoom({ room: slitWidth, between, field: 'sizes.slitWidth', value: slitWidth, limit: line, cure }, line);
}

/** Bridges keep the ends of a strip from warping, which stiffens it over about one width at either end. */
const STUBBY = 3;

function noteStubbyStrip({ pitch, slitWidth, slit, bridge }: SlitPanelSizes): readonly Problem[] {
  const limit = 2 * STUBBY * (pitch - slitWidth) + bridge;
  if (slit >= limit * (1 - 1e-9)) return [];
  return [
    {
      code: 'strip-too-short',
      message: `Strips ${plain(pitch - slitWidth)} mm wide twist over ${plain((slit - bridge) / 2)} mm, under ${STUBBY} times their width, so they are stiffer than said; make the slits at least ${plain(limit)} mm long, or the pitch less (common practice, no source)`,
      field: 'sizes.slit',
      value: slit,
      limit,
    },
  ];
}
