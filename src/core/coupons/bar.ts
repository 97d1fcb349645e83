/** The deflection bar: a pad to clamp, an arm, and an eye for a weight. */
import { endLoadedLeaf } from '../closedForms/leafUnderForce.ts';
import { bendingModulus, strainFactorAcrossLayers } from '../material/choose.ts';
import { plain, type Problem } from '../problems.ts';
import { ok, type Result } from '../result.ts';
import { radians, type Mm } from '../units.ts';
import { draftOf, pieceFrom, type Draft } from './draft.ts';
import { MOST_FILLET } from './lyingStrips.ts';
import { lyingSizes, makingOf, type Making } from './making.ts';
import { numberCuts, widestNumber } from './marks.ts';
import { PIECE_IDS, type Piece, type PiecesAsked, type Strip } from './piece.ts';
import { about, circle, filletLoop, rectangle, type Part } from './slabs.ts';

/** What kitchens have [g]. */
const GRAMS = [5, 10, 20, 50, 100, 200] as const;
/** Newtons of a gram at the usual fall of 9.80665 m/s². */
const NEWTONS = 9.80665e-3;
/** Sag as a share of the arm: enough to read to 1 % with a ruler, and little enough that the thread stays beside the ruler. Ours. */
const SAG = { least: 0.1, wanted: 0.15, most: 0.2 } as const;
/** Of the yield strain; above it a bar does not come back. */
const YIELD_SHARE = 0.5;
const ARM = { least: 30, liked: 80, most: 100, mostUpright: 60 } as const;
/** Shorter on a small plate by so much at each cut [mm]. */
const SHORTER: Mm = 12;
const PAD = { along: 20, across: 14 } as const;
/** Radii of the eye and of the round pad about it [mm]. */
const EYE: Mm = 2.2;
const EYE_PAD: Mm = 4.6;

interface Load {
  readonly arm: Mm;
  readonly grams: number;
  /** Share of the arm. */
  readonly sag: number;
  readonly strain: number;
}

/**
 * The arm and weight of the bar: of the weights that kitchens have the one whose arm comes nearest to what is handy.
 *
 * @param making - sizes [mm]
 * @param cut - how often it was made smaller to fit a plate [-]
 * @returns arm [mm], mass [g], sag as a share of the arm and greatest strain [-], and what kept them from being as wanted
 */
export function loadOf(making: Making, cut = 0): { readonly load: Load; readonly notes: readonly Problem[] } {
  const { asked, lying, thickness } = making;
  const isUpright = lying === 'upright';
  const factor = isUpright ? strainFactorAcrossLayers(asked.filament).typical : 1;
  const most = YIELD_SHARE * factor * asked.filament.properties.yieldStrain.typical;
  const longest = isUpright ? ARM.mostUpright : Math.max(ARM.least, ARM.most - SHORTER * cut);
  const all = GRAMS.map((grams) => loadBy(making, grams, longest));
  const whole = all.filter(({ strain }) => strain <= most);
  const good = whole.filter(({ sag }) => sag >= SAG.least && sag <= SAG.most);
  const handy = good.toSorted((a, b) => Math.abs(a.arm - ARM.liked) - Math.abs(b.arm - ARM.liked))[0];
  if (handy) return { load: handy, notes: [] };
  const off = ({ sag }: Load) => Math.abs(Math.log(sag / SAG.wanted));
  const load = (whole.length > 0 ? whole : all.slice(0, 1)).toSorted((a, b) => off(a) - off(b))[0]!;
  return { load, notes: [sagNote(load, thickness)] };
}

function loadBy({ asked, lying, thickness, depth }: Making, grams: number, longest: Mm): Load {
  const stiffness = (bendingModulus(asked.filament, lying === 'upright').typical * depth * thickness ** 3) / 12;
  const force = grams * NEWTONS;
  const atArm = (arm: Mm) => endLoadedLeaf((force * arm ** 2) / stiffness, radians(90));
  // Sag is a third of P·L²/(E·I) while it is small, which is near enough to choose by.
  const wished = Math.sqrt((3 * SAG.wanted * stiffness) / force);
  const arm = Math.round(Math.min(Math.max(wished, ARM.least), longest));
  const { travel, rootMoment } = atArm(arm);
  return { arm, grams, sag: travel, strain: (rootMoment * thickness) / 2 / arm };
}

function sagNote({ sag, grams, arm }: Load, thickness: Mm): Problem {
  const isLittle = sag < SAG.least;
  const said = `The bar sags ${plain(100 * sag)} % of its ${plain(arm)} mm arm under ${grams} g`;
  return {
    code: isLittle ? 'below-minimum' : 'above-maximum',
    message: isLittle
      ? `${said}, which a ruler reads poorly; take fewer lines or layers, or a narrower strip`
      : `${said} and may not come back; take more lines or layers, or a wider strip`,
    field: 'count',
    value: thickness,
    limit: isLittle ? SAG.least : SAG.most,
  };
}

export function bar(asked: PiecesAsked, cut: number): Result<Piece> {
  const making = makingOf(asked);
  const { load, notes } = loadOf(making, cut);
  const draft = making.lying === 'upright' ? uprightBar(making, load) : lyingBar(making, load);
  return ok(pieceFrom('bar', draft, { arm: load.arm, grams: load.grams }), notes);
}

function stripOf({ count, countOf, thickness, depth }: Making, { strain }: Load, length: Mm, end: Mm): Strip {
  const [from, to] = [
    { x: 0, y: 0 },
    { x: end, y: 0 },
  ];
  return { number: 1, count, countOf, thickness, length, depth, from, to, strain };
}

/** The pad is clamped between its faces: notches, since raised bars would hold it askew. */
function kindCuts(edge: Mm, making: Making): Part[] {
  return numberCuts(PIECE_IDS.indexOf('bar') + 1, { x: edge, y: 0 }, { x: 1, y: 0 }, making);
}

function lyingBar(making: Making, load: Load): Draft {
  const { wide, high, padHigh } = lyingSizes(making);
  const across = Math.max(PAD.across, wide + 8, widestNumber(making) + 4);
  const eye = { x: load.arm, y: 0 };
  const round = Math.max(EYE_PAD, wide / 2);
  const parts: Part[] = [
    { loop: rectangle(-PAD.along, -across / 2, PAD.along, across), from: 0, to: padHigh },
    { loop: rectangle(-1, -wide / 2, load.arm + 1, wide), from: 0, to: high },
    { loop: circle(eye, round), from: 0, to: padHigh },
  ];
  if (making.lying !== 'crease') {
    for (const y of [1, -1] as const) {
      const loop = filletLoop({ x: 0, y: (y * wide) / 2 }, 1, y, Math.min(making.thickness, MOST_FILLET));
      parts.push({ loop, from: 0, to: high });
    }
  }
  const cuts = [{ loop: circle(eye, EYE), from: 0, to: Infinity }, ...kindCuts(-PAD.along, making)];
  const free = load.arm - round;
  return draftOf({ parts, cuts }, [stripOf(making, load, free, free)]);
}

/** The arm stands on its pad; the pad of the eye widens at 45°, so that it carries itself, and the eye runs through along y. */
function uprightBar(making: Making, load: Load): Draft {
  const { thickness, depth, padHeight, asked } = making;
  const across = Math.max(PAD.across, depth + 8, widestNumber(making) + 4);
  const round = Math.max(EYE_PAD, 1.5 * thickness);
  const centre = padHeight + load.arm;
  // Sides at 45° touch the round pad when they start √2 of its radius under the middle of the eye.
  const start = centre - Math.SQRT2 * round + thickness / 2;
  const parts: Part[] = [
    { loop: about({ x: 0, y: 0 }, PAD.along, across), from: 0, to: padHeight },
    { loop: about({ x: 0, y: 0 }, thickness, depth), from: 0, to: start },
  ];
  const cuts: Part[] = kindCuts(-PAD.along / 2, making);
  const layer = asked.profile.layerHeight;
  const step = layer * Math.max(1, Math.round(0.4 / layer));
  for (let low = start; low < centre + round; low += step) {
    const [high, off] = [low + step, low + step / 2 - centre];
    const half = Math.min(round, off + Math.SQRT2 * round);
    parts.push({ loop: about({ x: 0, y: 0 }, 2 * Math.max(half, thickness / 2), depth), from: low, to: high });
    const hole = EYE ** 2 - off ** 2;
    if (hole > 0) cuts.push({ loop: about({ x: 0, y: 0 }, 2 * Math.sqrt(hole), depth + 2), from: low, to: high });
  }
  const free = start - padHeight;
  return draftOf({ parts, cuts }, [stripOf(making, load, free, 0)]);
}
