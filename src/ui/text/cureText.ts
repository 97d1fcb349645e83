/** Words of cures for a whole part: what each sets, what it does to every thin section, and what it costs. */
import type { Box3 } from '../../core/geometry/mesh/triangleMesh.ts';
import type { Cure, CureChange } from '../../core/inspect/cure.ts';
import type { Judged, Landing } from '../../core/inspect/judged.ts';
import { isLasting, isWhole, tallyOf } from '../../core/inspect/verdicts.ts';
import { findFilament } from '../../core/material/shelf.ts';
import { asRad } from '../../core/units.ts';
import { sizeText } from './inspectText.ts';
import {
  angle,
  angleWithin,
  grouped,
  inHundred,
  inWords,
  NO_BREAK,
  percent,
  setLength,
  share,
  unitAfter,
} from './numbers.ts';
import type { LengthUnit } from './numbers.ts';
import { capital, listed } from './said.ts';

const SIDES = { '+z': 'as in the file', '-z': 'upside down' } as const;

/** “Scale the part 1.333 times”, “Set lines to 0.42 mm”, “Stop the bending at 7°”. */
export function cureHeading(cure: Cure, unit: LengthUnit): string {
  return `${changeText(cure.change, unit)}${alsoLines(cure, unit)}`;
}

function changeText(change: CureChange, unit: LengthUnit): string {
  switch (change.kind) {
    case 'scale':
      return change.scale === 1 ? 'Print the part as large as in the file' : `Scale the part ${times(change.scale)}`;
    case 'line-width':
      return `Set lines to ${setLength(change.lineWidth, unit)}${unitAfter(unit)}`;
    case 'filament':
      return `Print it in ${findFilament(change.filament)?.name ?? change.filament}`;
    case 'turn':
      return `Stop the bending at ${angleWithin(asRad(change.turn))}`;
    case 'lying': {
      const { up } = change;
      const side = up === '+z' || up === '-z' ? SIDES[up] : `with its ${up.replace('-', '\u2212')} side up`;
      return `Lay it on the plate ${side}`;
    }
  }
}

/** A scale that needs other lines as well says so. */
function alsoLines({ change, as, before }: Cure, unit: LengthUnit): string {
  const was = before[0]?.joint.profile.lineWidth;
  const { lineWidth } = as.profile;
  if (change.kind === 'line-width' || was === undefined || lineWidth === was) return '';
  return ` and set lines to ${setLength(lineWidth, unit)}${unitAfter(unit)}`;
}

/** “1.333 times”, with no idle decimals. */
function times(scale: number): string {
  return `${Number(scale.toFixed(3))} times`;
}

/** So many different sections are told one by one; of more the number that come out whole. */
const TOLD = 4;

/** What it does to the thin sections, in a sentence: “1, 2 and 3 lines across, 2 of 3 odd; strain as it is.” */
export function cureDoes(cure: Cure): string {
  const says = cure.change.kind === 'turn' ? strainsDo(cure) : [landingsDo(cure), lastingDo(cure)];
  return `${capital(says.filter((part) => part !== '').join('; '))}.`;
}

function landingsDo({ after, before, change }: Cure): string {
  if (change.kind === 'filament') return '';
  const counts = distinct(after.map(({ landing }) => countText(landing)));
  const { whole, even } = tallyOf(after);
  const across = after.every(({ landing }) => landing.countOf === 'lines') ? 'lines across' : 'lines or layers';
  const told = counts.length <= TOLD ? `${listed(counts)} ${across}, ` : '';
  const all = after.length;
  if (whole < all) return `${told}${whole} of ${all} whole, ${tallyOf(before).whole} before`;
  return `${told}${even === all ? (all === 1 ? 'even' : 'all even') : `whole, ${all - even} of ${all} odd`}`;
}

const countText = (landing: Landing) => (isWhole(landing) ? String(landing.nearest) : landing.exact.toFixed(2));
const distinct = (said: readonly string[]) => [...new Set(said)];

/** Whether they last, and that a scale or a line width leaves strain as it is. */
function lastingDo({ change, before, after }: Cure): string {
  const [was, is] = [tallyOf(before).lasting, tallyOf(after).lasting];
  const all = after.length;
  const strain = change.kind === 'scale' || change.kind === 'line-width' ? 'strain as it is' : '';
  if (was === is) return strain;
  const last = is === all ? 'all last as asked' : `${is} of ${all} last as asked, ${was} before`;
  return [strain, last].filter((part) => part !== '').join('; ');
}

function strainsDo({ after, asked }: Cure): readonly string[] {
  const strains = after.flatMap(({ assessed }) => (assessed.ok ? [assessed.value.strain.peak] : []));
  const told = distinct(strains.map((strain) => percent(strain)));
  const span = told.length <= TOLD ? listed(told) : `at most ${percent(Math.max(...strains))}`;
  const least = Math.min(
    ...after.filter(isLasting).flatMap(({ assessed }) => (assessed.ok ? [assessed.value.life.chance] : [])),
  );
  const each = after.length === 1 ? 'reach' : 'of each reach';
  const laid = after.every(({ landing }) => isWhole(landing)) ? '' : ', once lines are whole';
  return [`strain ${span}`, `${inHundred(least)} in 100 or more ${each} ${grouped(asked.cycles)}${laid}`];
}

/** A scaled part no longer fits what was made for it. */
const NO_FIT = 'screws, shafts and mating parts no longer fit';

/**
 * What it costs, in a sentence: “Costs room (84 × 13 × 8 mm) and effort 2.4 times; mating parts no longer fit.” `box` is that
 * of the file.
 */
export function cureCosts(cure: Cure, box: Box3, unit: LengthUnit): string {
  const { change, as, before, costs } = cure;
  const effort = Math.abs(costs.effort - 1) < 0.05 ? '' : `effort ${ratio(costs.effort)}`;
  switch (change.kind) {
    case 'scale': {
      const room = `room (${sizeText(box, unit, as.scale)})`;
      return costs.size >= 1
        ? `Costs ${listed([room, effort].filter((part) => part !== ''))}; ${NO_FIT}.`
        : `Makes it smaller (${sizeText(box, unit, as.scale)}); ${NO_FIT}.`;
    }
    case 'line-width': {
      const more = (before[0]?.joint.profile.lineWidth ?? as.profile.lineWidth) / as.profile.lineWidth - 1;
      return more > 0 ? `Costs about ${share(more)} more line to lay.` : `Lays about ${share(-more)} less line.`;
    }
    case 'filament':
      return `Costs another spool${effort === '' ? '' : `; ${effort}`}.`;
    case 'turn': {
      const was = turnBefore(before);
      return was === undefined ? '' : `Costs ${angle(asRad(was - change.turn))} of movement.`;
    }
    case 'lying':
      return `May need supports where it then hangs over${effort === '' ? '' : `; ${effort}`}.`;
  }
}

function turnBefore(before: readonly Judged[]): number | undefined {
  return before[0]?.joint.movement.amount;
}

/** “2.4 times”, “19 times”, “0.6 times”. */
function ratio(value: number): string {
  return `${Number(value.toPrecision(2))}${NO_BREAK}times`;
}

/** Over the list: “Cures for the whole part”, or that there is none. */
export function curesHeading(cures: readonly Cure[], judged: readonly Judged[]): string {
  if (cures.length > 0) return 'Cures for the whole part';
  const { passing } = tallyOf(judged);
  if (passing === judged.length) return 'Nothing to cure';
  return `No one change helps ${judged.length === 1 ? 'it' : `all ${inWords(judged.length)}`}`;
}
