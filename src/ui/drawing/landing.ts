import type { Assessment } from '../../core/design/assessment.ts';
import { thicknessOfLayers } from '../../core/print/wholeLayers.ts';
import { contourInsets, thicknessOfLines } from '../../core/print/wholeLines.ts';
import type { Mm } from '../../core/units.ts';

/** A strip along the leaf, between two heights across its thickness [mm], 0 at the middle. */
export interface Strip {
  readonly from: Mm;
  readonly to: Mm;
}

/** Where nothing is laid, or where two lines want the same place. */
interface Fault extends Strip {
  readonly kind: 'gap' | 'squeeze';
}

/** How lines or layers land in the thin section: what is laid, from below, and what goes wrong between. */
export interface Landing {
  readonly laid: readonly Strip[];
  readonly faults: readonly Fault[];
}

/** Less than this is not worth a mark [mm]. */
const CLOSE = 0.005;

/** The lines or layers that will lie in the thin section. */
export function landingOf(a: Assessment): Landing {
  const { fit, section } = a;
  const half = section.thickness / 2;
  if (fit.outcome === 'vanishes') return { laid: [], faults: [{ from: -half, to: half, kind: 'gap' }] };
  const laid = fit.countOf === 'lines' ? linesIn(a) : layersIn(a);
  if (fit.outcome === 'whole') return { laid, faults: [] };
  // A layer rests on the one below, and the lowest on the plate: only the top can miss. Lines hug both faces.
  const walls = fit.countOf === 'layers' || laid.length === 1;
  const edges = walls ? [{ from: -half, to: -half }, ...laid, { from: half, to: half }] : laid;
  const pitch = fit.countOf === 'lines' ? pitchOf(a) : 0;
  return { laid, faults: edges.flatMap((strip, i) => faultBetween(edges[i - 1], strip, pitch)) };
}

function pitchOf({ joint: { profile } }: Assessment): Mm {
  return thicknessOfLines(2, profile) - thicknessOfLines(1, profile);
}

/** Neighbouring lines may overlap by what the fit rule wants of them; more is a squeeze, less a gap. */
function faultBetween(below: Strip | undefined, above: Strip, pitch: Mm): Fault[] {
  if (!below) return [];
  const isWall = below.from === below.to || above.from === above.to;
  const wanted = isWall || pitch === 0 ? 0 : above.to - above.from - pitch;
  const apart = above.from - below.to + wanted;
  if (Math.abs(apart) < CLOSE) return [];
  const middle = (above.from + below.to) / 2;
  const span = isWall ? { from: Math.min(above.from, below.to), to: Math.max(above.from, below.to) } : undefined;
  const { from, to } = span ?? { from: middle - Math.abs(apart) / 2, to: middle + Math.abs(apart) / 2 };
  return [{ from, to, kind: apart > 0 ? 'gap' : 'squeeze' }];
}

function linesIn({ fit, section, joint: { profile } }: Assessment): Strip[] {
  const half = section.thickness / 2;
  const inner = contourInsets(fit.nearest, profile).map((inset) => half - inset);
  const centres = [...inner.map((y) => -y), ...(fit.middleLine ? [0] : []), ...inner];
  return centres
    .toSorted((p, q) => p - q)
    .map((y) => ({ from: y - profile.lineWidth / 2, to: y + profile.lineWidth / 2 }));
}

function layersIn({ fit, section, joint: { profile } }: Assessment): Strip[] {
  const plate = -section.thickness / 2;
  return Array.from({ length: fit.nearest }, (_, i) => ({
    from: plate + (i === 0 ? 0 : thicknessOfLayers(i, profile)),
    to: plate + thicknessOfLayers(i + 1, profile),
  }));
}
