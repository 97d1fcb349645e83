/** What the terminal tells of a part file: plain numbers in mm and degrees. */
import type { Damage } from '../core/geometry/mesh/damage.ts';
import type { Box3, Point3 } from '../core/geometry/mesh/triangleMesh.ts';
import type { CheckedPart } from '../core/inspect/checkedPart.ts';
import type { Flexure, FlexureRoot } from '../core/inspect/flexure.ts';
import { asLaid } from '../core/inspect/asLaid.ts';
import { landingOf } from '../core/inspect/landing.ts';
import { layersOf } from '../core/inspect/layerOf.ts';
import type { PrintedAs } from '../core/inspect/judged.ts';
import { byScale, stretchesOf, thinOf } from '../core/inspect/wholeSearch.ts';
import { SCALES } from '../core/inspect/cureWhole.ts';
import { degrees } from '../core/units.ts';

/** A micrometre is more than any printer, and than most files, can mean. */
const DECIMALS = 4;

const shown = (value: number) => Number(value.toFixed(DECIMALS));
const place = ({ x, y, z }: Point3) => [shown(x), shown(y), shown(z)];

function rootReport({ fillet, joins, shoulder }: FlexureRoot) {
  return {
    root: fillet > 0 ? 'fillet' : 'sharp',
    fillet_mm: shown(fillet),
    joins: joins.kind === 'pad' ? `pad ${joins.pad + 1}` : 'another flexure',
    shoulder_mm: shown(shoulder),
  };
}

function flexureReport(flexure: Flexure, box: Box3, as: PrintedAs) {
  const laid = asLaid(flexure, box, as);
  const landing = landingOf(laid.thickness, laid);
  const { layer, layers } = layersOf(flexure, box, as);
  return {
    number: flexure.number,
    kind: flexure.kind,
    form: flexure.isCurved ? 'curved' : 'straight',
    centre_mm: place(flexure.centre),
    direction: place(flexure.along),
    thickness_direction: place(flexure.across),
    axis: place(flexure.axis),
    thickness_least_mm: shown(flexure.thickness.least),
    thickness_mean_mm: shown(flexure.thickness.mean),
    length_mm: shown(flexure.length),
    bending_length_mm: shown(flexure.bendingLength),
    depth_mm: shown(flexure.depth),
    // What a straight one turns and rises is the unevenness of its outline.
    turns_deg: flexure.isCurved ? shown(degrees(flexure.centreLine.turn)) : 0,
    rises_mm: flexure.isCurved ? shown(flexure.centreLine.rise) : 0,
    roots: flexure.roots.map(rootReport),
    is_one_of_several_ways: flexure.isInLoop,
    lying: laid.lying,
    ...(landing.countOf === 'lines'
      ? { lines_across: shown(landing.exact) }
      : { layers_through: shown(landing.exact) }),
    lands: landing.state,
    layer_to_look_at: layer,
    layers,
  };
}

function damageReport({ kind, count, mended, at }: Damage) {
  return { kind, count, mended, at_mm: place(at) };
}

/** The scale, at or above that of the file and nearest to it, at which most sections are even and whole. */
function suggestedScale({ findings, facts }: CheckedPart, as: PrintedAs): number | null {
  const lines = byScale(thinOf(findings.flexures, facts.box, as), as.profile);
  const stretches = stretchesOf(lines, { min: 1, max: SCALES.max });
  const best = stretches.toSorted((a, b) => b.even - a.even || b.whole - a.whole || a.value - b.value)[0];
  return best === undefined || best.whole === 0 ? null : shown(best.value);
}

/**
 * One part file, as printed with these settings.
 *
 * @param part - as checked [mm]
 * @param as - scale and print profile [mm]
 * @returns what the document holds of it: the unit in every key
 */
export function inspectReport(part: CheckedPart, as: PrintedAs) {
  const { format, solids, unit, facts, damage, findings, thickest, notes } = part;
  return {
    format,
    solids,
    unit: { read_as: unit.unit, by: unit.by, or_else: unit.orElse },
    triangles: facts.triangles,
    bodies: facts.bodies,
    box_mm: { min: place(facts.box.min), max: place(facts.box.max) },
    area_mm2: shown(facts.area),
    volume_mm3: shown(facts.volume),
    damage: damage.map(damageReport),
    thickest_mm: shown(thickest),
    flexures: findings.flexures.map((flexure) => flexureReport(flexure, facts.box, as)),
    passed_over: findings.passedOver.map(({ why, thickness, at }) => ({
      why,
      thickness_mm: shown(thickness),
      at_mm: place(at),
    })),
    pads: findings.pads,
    is_cut_short: findings.isCut,
    suggested_scale: findings.flexures.length === 0 ? null : suggestedScale(part, as),
    notes,
  };
}
