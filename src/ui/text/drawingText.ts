/** Words and figures on the drawing of a joint. */
import type { Assessment } from '../../core/design/assessment.ts';
import { nearestLayers } from '../../core/print/wholeLayers.ts';
import type { Mm, Rad } from '../../core/units.ts';
import { amountText, roughAmount, setAmount } from './amountText.ts';
import { angle, counted, length, lengthFigure, NO_BREAK, percent, type LengthUnit } from './numbers.ts';

/** “0.84 = 2 × 0.42”; “0.64 = 0.24 + 2 × 0.20” where the first layer differs; “0.63 measured”. */
export function thicknessFigure(a: Assessment, unit: LengthUnit): string {
  const { section, joint } = a;
  const { profile } = joint;
  const figure = (value: Mm) => lengthFigure(value, unit);
  const whole = figure(section.thickness);
  if (joint.measuredThickness !== undefined) return `${whole} measured`;
  const times = (count: number, of: Mm) => (count === 1 ? figure(of) : `${count} × ${figure(of)}`);
  if (section.countOf === 'lines') {
    const isSum = Math.abs(section.count * profile.lineWidth - section.thickness) < 1e-9;
    if (section.count === 1) return `${whole} = 1 line`;
    return isSum
      ? `${whole} = ${times(section.count, profile.lineWidth)}`
      : `${whole}, ${section.count} lines of ${figure(profile.lineWidth)}`;
  }
  if (section.count === 1) return `${whole} = 1 layer`;
  const { firstLayerHeight: first, layerHeight } = profile;
  if (Math.abs(first - layerHeight) < 1e-9) return `${whole} = ${times(section.count, layerHeight)}`;
  return `${whole} = ${figure(first)} + ${times(section.count - 1, layerHeight)}`;
}

/** “30 layers of 0.20”, under or beside the section of a leaf. */
export function layersFigure({ section, joint: { profile } }: Assessment, unit: LengthUnit): string {
  const { count } = nearestLayers(section.width, profile);
  return `${counted(count, 'layer')} of ${lengthFigure(profile.layerHeight, unit)}`;
}

/** What goes wrong in a section that is not a whole number of lines or layers, in figures. */
export function faultFigure({ fit, section }: Assessment, unit: LengthUnit): string {
  if (fit.outcome === 'vanishes') return `nothing laid: ${fit.exact.toFixed(2)} of one ${fit.countOf.slice(0, -1)}`;
  const off = section.thickness - fit.nearestThickness;
  const many = counted(fit.nearest, fit.countOf.slice(0, -1));
  const size = lengthFigure(Math.abs(off), unit);
  return off > 0 ? `${many}, ${size} left open` : `${many}, squeezed by ${size}`;
}

export function radiusFigure(radius: Mm, unit: LengthUnit): string {
  return `R${NO_BREAK}${lengthFigure(radius, unit, unit === 'mm' ? 1 : 2)} bent`;
}

export function filletFigure(fillet: Mm, unit: LengthUnit): string {
  return fillet > 0 ? `R${NO_BREAK}${lengthFigure(fillet, unit)}` : 'no fillet';
}

/** “one of 3 in a row, 35° each”, or nothing. */
export function rowFigure({ inRow, amountEach, drive }: Assessment, unit: LengthUnit): string {
  return inRow > 1 ? `one of ${inRow} in a row, ${amountText(amountEach, drive.measure, unit)} each` : '';
}

/** “the pads meet at 96°”, where the moving one runs into the other at a fraction of an angle; else nothing. */
export function meetFigure(fraction: number | undefined, { amountEach, drive }: Assessment, unit: LengthUnit): string {
  return fraction === undefined ? '' : `the pads meet at ${roughAmount(fraction * amountEach, drive.measure, unit)}`;
}

export const VIEWS = {
  along: 'Plan, as it lies on the plate',
  layers: 'Side view, as it lies on the plate',
  across: 'Side view, turned: it stands on the plate',
} as const;

const LAID = {
  along: 'lines run along the leaf',
  layers: 'layers lie along the web',
  across: 'layers lie across the leaf, so that bending pulls them apart',
} as const;

function rootsText({ padThickness, fillet }: Assessment, unit: LengthUnit): string {
  const fillets = length(fillet, unit);
  if (padThickness === undefined) return `Root fillets ${fillets}.`;
  return `Pads ${length(padThickness, unit)} thick at both ends, root fillets ${fillets}.`;
}

/** Where it goes: what an arc makes of it, else only how far. */
function movedText({ joint, travel, amountEach, drive }: Assessment, unit: LengthUnit): string {
  const both = joint.movement.ways === 'both ways' ? ', and as far the other way' : '';
  if (!travel) return `Moved ${setAmount(amountEach, drive.measure, unit)}${both}; it is drawn at rest.`;
  const bent = `Bent ${amountText(amountEach, drive.measure, unit)}${both} to a radius of ${length(travel.radius, unit, 1)}`;
  return `${bent}: the far pad goes ${length(travel.upward, unit)} up and ${length(travel.inward, unit)} in.`;
}

/** The whole figure in words, for those who cannot see it. */
export function describeFigure(a: Assessment, laid: keyof typeof VIEWS, scale: string, unit: LengthUnit): string {
  const { fit, section, strain } = a;
  const what = section.countOf === 'lines' ? 'leaf' : 'web';
  const many = fit.outcome === 'whole' ? counted(fit.nearest, fit.countOf.slice(0, -1)) : faultFigure(a, unit);
  return [
    `${VIEWS[laid]}, ${scale}.`,
    `A ${what} ${length(a.length, unit)} long and ${length(section.thickness, unit)} thick, ${many};`,
    `${LAID[laid]}. ${rootsText(a, unit)}`,
    movedText(a, unit),
    `The skin strains ${percent(strain.peak)}, most ${strain.where === 'root' ? 'at the roots' : 'all along'}.`,
    rowFigure(a, unit),
  ]
    .filter((part) => part !== '')
    .join(' ');
}

/** “18° of 35°: strain 1.10 %”: what the scrubber says of where it stands. */
export function bentText(bent: Rad, full: Rad, strain: number): string {
  return `${angle(bent)} of ${angle(full)}, strain ${percent(strain)}`;
}
