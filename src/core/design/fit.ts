import { contoursFor, explainCount, nearestLines } from '../print/wholeLines.ts';
import { explainLayers, nearestLayers } from '../print/wholeLayers.ts';
import type { Problem } from '../problems.ts';
import type { Fit } from './assessment.ts';
import type { Understood } from './understand.ts';

/**
 * How far from a whole count still prints as whole: a twentieth of a line is 0.02 mm, the resolution of calipers
 * and well inside what a nozzle's flow varies by (common practice, no source).
 */
export const WHOLE_WITHIN = 0.05;

/**
 * Below this share of one line most toolpath programs lay nothing (common practice, no source: a section narrower
 * than the lines wanted may vanish).
 */
export const VANISHES_BELOW = 0.9;

/**
 * How the thin section lands on whole lines, or layers, of this print profile.
 *
 * A joint sized in lines is whole by construction; a measured one seldom is.
 *
 * @param understood - a checked joint [-]
 * @returns exact and nearest counts and what will be laid
 */
export function fitOf({ joint, section }: Understood): Fit {
  const lines = section.countOf === 'lines';
  const { exact, count, thickness, tie } = lines
    ? nearestLines(section.thickness, joint.profile)
    : nearestLayers(section.thickness, joint.profile);
  const whole = Math.abs(exact - count) <= WHOLE_WITHIN;
  const contours = lines ? contoursFor(count) : { contours: 0, middleLine: false };
  return {
    countOf: section.countOf,
    exact,
    nearest: count,
    tie,
    nearestThickness: thickness,
    outcome: whole ? 'whole' : exact < VANISHES_BELOW ? 'vanishes' : 'uneven',
    ...contours,
  };
}

/**
 * What there is to say about a count of lines or layers: odd, single, not whole, a tie that went down.
 *
 * @param understood - a checked joint [-]
 * @param fit - how its section lands on lines or layers [-]
 * @returns notes, possibly none
 */
export function fitNotes({ joint, section }: Understood, fit: Fit): readonly Problem[] {
  if (fit.outcome === 'whole') {
    return section.countOf === 'lines' ? explainCount(fit.nearest) : explainLayers(fit.nearest);
  }
  const what = fit.countOf;
  const size = `${section.thickness.toFixed(2)} mm is ${fit.exact.toFixed(2)} ${what}`;
  const cure =
    fit.outcome === 'vanishes'
      ? 'it will be left out or laid as one broken bead; scale the part up or set a narrower line'
      : 'the gap is left open or filled by beads of changing width; make it a whole number';
  const field = joint.measuredThickness === undefined ? 'sizes' : 'measuredThickness';
  return [
    ...(fit.tie ? [tieNote(fit, field)] : []),
    {
      code: what === 'lines' ? 'not-whole-lines' : 'not-whole-layers',
      message: `${size}: ${cure}`,
      field,
      value: fit.exact,
      limit: fit.nearest,
    },
  ];
}

function tieNote(fit: Fit, field: string): Problem {
  const message = `${fit.exact.toFixed(2)} ${fit.countOf} lie half-way; the lower count is taken as nearest, because one more would stiffen the joint and raise its strain`;
  return { code: 'tie-rounded-down', message, field, value: fit.exact, limit: fit.nearest };
}
