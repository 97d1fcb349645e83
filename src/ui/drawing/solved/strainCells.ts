import { sideOf } from '../../../core/geometry/band.ts';
import type { RampStops } from '../ramp.ts';
import { onSheet, pair, type Sheet } from '../sheet.ts';
import type { FineShape, StrainField } from './strainField.ts';

/** All cells of about the same strain, as one path. */
export interface Inked {
  readonly strain: number;
  readonly d: string;
}

/** Inks between no strain and the end of the ramp, a third of them for each stretch of it. */
export const INKS = 48;
/** A strip of cells is about so wide [px]. */
const STRIP = 2.6;

type Drawn = Pick<Sheet, 'rootX' | 'pxPerMm'>;

/** Which ink a strain is drawn in; what is over the end of the ramp is in the last. */
export function inkOf(strain: number, { repeated, yield: atYield, full }: RampStops): number {
  const stretch =
    strain < repeated
      ? strain / repeated
      : strain < atYield
        ? 1 + (strain - repeated) / (atYield - repeated)
        : 2 + (strain - atYield) / (full - atYield);
  return Math.min(INKS - 1, Math.max(0, Math.floor((stretch / 3) * INKS)));
}

/** The strain that an ink stands for: the middle of its stretch. */
export function strainOfInk(ink: number, { repeated, yield: atYield, full }: RampStops): number {
  const stretch = (3 * (ink + 0.5)) / INKS;
  if (stretch < 1) return stretch * repeated;
  if (stretch < 2) return repeated + (stretch - 1) * (atYield - repeated);
  return atYield + (stretch - 2) * (full - atYield);
}

/** Strain cells of some members: strips along each, cut where the ink changes, gathered by ink. */
export function strainCells(
  members: readonly { readonly shape: FineShape; readonly field: StrainField }[],
  sheet: Drawn,
  stops: RampStops,
): readonly Inked[] {
  const paths = new Map<number, string[]>();
  for (const { shape, field } of members) {
    const thickest = Math.max(...shape.thickness) * sheet.pxPerMm;
    const strips = Math.min(12, Math.max(2, 2 * Math.round(thickest / STRIP / 2)));
    for (let k = 0; k < strips; k++)
      addStrip(paths, shape, field, [k / strips - 0.5, (k + 1) / strips - 0.5], sheet, stops);
  }
  return [...paths].map(([ink, d]) => ({ strain: strainOfInk(ink, stops), d: d.join('') }));
}

function addStrip(
  paths: Map<number, string[]>,
  shape: FineShape,
  field: StrainField,
  [low, high]: readonly [number, number],
  sheet: Drawn,
  stops: RampStops,
): void {
  const at = (i: number, share: number) => pair(onSheet(sheet, sideOf(shape, i, share)));
  const inks = Array.from({ length: shape.x.length - 1 }, (_, i) => {
    const here = (field(i, (low + high) / 2) + field(i + 1, (low + high) / 2)) / 2;
    return inkOf(here, stops);
  });
  let from = 0;
  for (let i = 1; i <= inks.length; i++) {
    if (inks[i] === inks[from]) continue;
    const places = Array.from({ length: i - from + 1 }, (_, k) => from + k);
    const there = places.map((k) => at(k, high)).join('L');
    const back = places
      .toReversed()
      .map((k) => at(k, low))
      .join('L');
    const ink = inks[from] ?? 0;
    const known = paths.get(ink);
    if (known) known.push(`M${there}L${back}Z`);
    else paths.set(ink, [`M${there}L${back}Z`]);
    from = i;
  }
}

/** Both surfaces of a member as lines; those parts whose skin strains more than a limit apart, to be drawn heavier. */
export function surfaces(
  shape: FineShape,
  field: StrainField,
  limit: number,
  sheet: Drawn,
): { readonly plain: string; readonly heavy: string } {
  const count = shape.x.length;
  const at = (i: number, share: number) => pair(onSheet(sheet, sideOf(shape, i, share)));
  const side = (share: number) => {
    let [plain, heavy] = [`M${at(0, share)}`, ''];
    for (let i = 1; i < count; i++) {
      plain += `L${at(i, share)}`;
      if (Math.max(field(i - 1, share), field(i, share)) > limit) heavy += `M${at(i - 1, share)}L${at(i, share)}`;
    }
    return { plain, heavy };
  };
  const [left, right] = [side(0.5), side(-0.5)];
  return { plain: left.plain + right.plain, heavy: left.heavy + right.heavy };
}
