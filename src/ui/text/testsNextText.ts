/** What to test next: each test by name, what it is likely to tell, and what it costs. */
import type { Candidate, LifeNow, NextTest } from '../../core/tallies/nextTest.ts';
import { cycles, grouped, inHundred, inWords, NO_BREAK, percent, share, type LengthUnit } from './numbers.ts';
import { capital } from './said.ts';
import { bendText } from './testsText.ts';

export const NEXT = {
  heading: 'What to test next',
  aside: (strain: string) => `life at ${strain}, now and expected`,
  setUp: 'Set it up',
  setUpOf: (name: string) => `Set it up: ${name}`,
  wanted: (count: number) => `wanted ${grouped(count)}`,
  working: 'Working out how sure the joint is, to see what would make it surer.',
  stopped: 'How sure the joint is was not worked out, so what would make it surer is not known.',
  more: (count: number) => `${capital(inWords(count))} more, that would tell less`,
  none: 'Nothing that can be tested would tell more of this joint.',
  noJoint: 'Choose a joint: what is worth testing next depends on it.',
} as const;

/** “Five more strips over R 12”. */
export function candidateName({ what, piece, bend, strips = 5 }: Candidate, unit: LengthUnit): string {
  const how = bend ? ` ${bendText(bend, unit)}` : '';
  switch (what) {
    case 'flexes':
      if (!bend) return `${capital(inWords(strips))} more ${piece === 'creases' ? 'creases' : 'strips of the comb'}`;
      return `${capital(inWords(strips))} more ${strips === 1 ? 'strip' : 'strips'}${how}`;
    case 'goOn':
      return strips === 1
        ? `Go on with the strip still whole${how}`
        : `Go on with the ${inWords(strips)} still whole${how}`;
    case 'thickness':
      return 'Measure the thickness ladder';
    case 'mark':
      return 'Bend a strip once round each corner';
    case 'sag':
      return 'Hang a weight on the bar';
    case 'hold':
      return 'Hold a strip bent for a day';
  }
}

const times = (factor: number) => `${factor.toFixed(factor < 3 ? 1 : 0)} times`;

/** What is likely to come of it, in words. */
export function gainText({ candidate, strain, doubt, effort, after }: NextTest, most: number): string {
  const at = strain === undefined ? '' : `${percent(strain)} strain. `;
  const end = (value: number) => (value > most ? `past ${grouped(most)}` : cycles(Math.max(1, value)));
  const factor = doubt.after > 0 ? doubt.now / doubt.after : 1;
  const chance = `${inHundred(after.chance[0])} to ${inHundred(after.chance[1])} in 100`;
  if (effort && effort.now > effort.after)
    return `${at}Effort is known to ${share(effort.now)}, then to ${share(effort.after)}.`;
  if (factor > 1.03)
    return `${at}Narrows what is not known ${times(factor)}: ${end(after.life[0])} to ${end(after.life[1])}, the chance then ${chance}.`;
  if (candidate.what === 'hold') return `${at}Says nothing of life; how much of a bend stays is only remembered now.`;
  if (candidate.what === 'mark') return `${at}Says little of life; where it whitens and cracks is only remembered now.`;
  return `${at}Hardly narrows it.`;
}

function hoursText(hours: number): string {
  if (hours < 0.15) return `${Math.max(1, Math.round(hours * 60))} minutes`;
  if (hours < 1.5) return `${Math.round((hours * 60) / 10) * 10}${NO_BREAK}min`;
  return `about ${hours < 10 ? Number(hours.toPrecision(2)) : grouped(Math.round(hours))}${NO_BREAK}h`;
}

/** By hand up to so many flexes; past them a motor. Chosen. */
const BY_HAND = 10_000;

/** “Costs 6 g; about 28 h of bending, a job for a motor.” */
export function costText({ hours, flexes, grams, candidate }: NextTest): string {
  const print = grams > 0 ? `${grams < 1 ? 'under 1' : Math.round(grams)}${NO_BREAK}g to print` : 'no printing';
  if (candidate.what === 'hold') return `Costs ${print} and a day.`;
  const bending =
    flexes > 0 ? ` of bending, ${cycles(flexes)} in all${flexes > BY_HAND ? ', a job for a motor' : ', by hand'}` : '';
  return `Costs ${print}; ${hoursText(hours)}${bending}.`;
}

const betweenText = ([low, high]: LifeNow['life']) => `${cycles(Math.max(1, low))} to ${cycles(high)}`;

/** The two bars in words. */
export function barSpoken(now: LifeNow, after: LifeNow): string {
  return `10 to 90 in 100 break between ${betweenText(now.life)} now, between ${betweenText(after.life)} expected`;
}
