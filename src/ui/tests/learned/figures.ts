/** What the readings of one kind have taught a spool: each figure before and after. */
import { bendingModulus, soundness } from '../../../core/material/choose.ts';
import type { ThicknessTally, TallyKind } from '../../../core/material/tally.ts';
import type { Filament, LaidThickness, Quantity } from '../../../core/material/types.ts';
import { wholeRow } from '../../../core/material/wholeRow.ts';
import type { Learned, LearnedFigure } from '../../../core/tallies/learned.ts';
import { isTaught } from '../../../core/tallies/taught.ts';
import { rangeText, valueText } from '../../text/figureText.ts';
import { LEARNED, type FigureWords } from '../../text/testsLearnedText.ts';
import { learned } from '../spools.ts';
import type { Spool, Trial } from '../trial.ts';

export interface Known {
  readonly typical: number;
  readonly low: number;
  readonly high: number;
  readonly words: FigureWords;
}

export interface TaughtFigure {
  readonly name: string;
  readonly before: Known;
  readonly after: Known;
  readonly by: number;
  readonly odd: number;
  /** False where somebody has set the figure by hand. */
  readonly isInForce: boolean;
}

type Name = Exclude<keyof Learned, 'life' | 'refused' | 'lines' | 'layers'>;

/** What each kind of reading tells. */
const TOLD_BY: Readonly<Record<Exclude<TallyKind, 'flexes' | 'thickness'>, readonly Name[]>> = {
  sag: ['modulus', 'modulusAcrossLayers'],
  pull: ['strength', 'strengthAcrossLayers', 'modulus', 'modulusAcrossLayers'],
  mark: ['allowable', 'firstFlexBreak'],
  hold: ['setAfterDay'],
};

/** The figure of a row that a reading of this name moves. */
function ofRow(name: Name, row: Filament): Quantity {
  const whole = wholeRow(row);
  const p = whole.properties;
  switch (name) {
    case 'modulus':
    case 'modulusAcrossLayers':
      return bendingModulus(whole, name === 'modulusAcrossLayers');
    case 'strength':
      return p.tensileStrength;
    case 'strengthAcrossLayers':
      return p.tensileStrengthAcrossLayers ?? p.tensileStrength;
    case 'allowable':
      return p.permissibleStrainSingle;
    case 'setAfterDay':
      return p.setAfterDayHeld;
    case 'firstFlexBreak':
      return asQuantity(whole.life.firstFlexBreakStrain, whole);
  }
}

/** Of a strain that is a bare number on the curve. */
function asQuantity(typical: number, { life }: Pick<Filament, 'life'>): Quantity {
  return { typical, unit: '', direction: 'along lines', provenance: life.provenance };
}

const STRAINS: readonly Name[] = ['allowable', 'firstFlexBreak'];

function known(name: Name, quantity: Quantity): Known {
  const { typical, low = typical, high = typical } = quantity;
  const asShare = STRAINS.includes(name);
  const words = {
    text: valueText(quantity, asShare),
    range: rangeText(quantity, asShare),
    kind: soundness(quantity.provenance),
  };
  return { typical, low, high, words };
}

function figureOf(name: Name, told: LearnedFigure<Quantity | number>, prior: Filament, spool: Spool): TaughtFigure {
  const inForce = ofRow(name, spool);
  const value =
    typeof told.value === 'number'
      ? { ...asQuantity(told.value, spool), provenance: { kind: 'measured', what: '' } as const }
      : told.value;
  return {
    name: LEARNED[name],
    before: known(name, ofRow(name, prior)),
    after: known(name, value),
    by: told.by.length,
    odd: told.odd.length,
    isInForce: name === 'firstFlexBreak' ? inForce.typical === value.typical : isTaught(inForce.provenance),
  };
}

/** Figures that readings of the kind in hand have taught; none for counted lives, which the curve shows. */
export function taughtFigures({ spool, prior, values: { doing } }: Trial): readonly TaughtFigure[] {
  if (!spool || doing === 'flexes' || doing === 'thickness') return [];
  const all = learned(spool);
  return TOLD_BY[doing].flatMap((name) => {
    const told = all[name];
    return told && told.by.some(({ kind }) => kind === doing) ? [figureOf(name, told, prior, spool)] : [];
  });
}

export interface TaughtThickness {
  readonly countOf: 'lines' | 'layers';
  readonly line: LaidThickness;
  readonly rungs: readonly ThicknessTally[];
  readonly odd: readonly string[];
}

function thicknessOf(
  countOf: 'lines' | 'layers',
  told: LearnedFigure<LaidThickness> | undefined,
): readonly TaughtThickness[] {
  if (!told) return [];
  const rungs = told.by.filter((tally): tally is ThicknessTally => tally.kind === 'thickness');
  return [{ countOf, line: told.value, rungs, odd: told.odd.map(({ id }) => id) }];
}

/** How thick lines and layers come out, where rungs were measured. */
export function taughtThickness({ spool, values: { doing } }: Trial): readonly TaughtThickness[] {
  if (!spool || doing !== 'thickness') return [];
  const { lines, layers } = learned(spool);
  return [...thicknessOf('lines', lines), ...thicknessOf('layers', layers)];
}

/** What is missing before marks say where a strip whitens. */
export function lacksOfMarks({ spool, values: { doing } }: Trial): 'mark' | 'unmarked' | undefined {
  if (!spool || doing !== 'mark') return undefined;
  const looks = spool.own.tests.tallies.flatMap((tally) =>
    tally.kind === 'mark' && !tally.leftOut ? [tally.looks] : [],
  );
  if (looks.length === 0) return undefined;
  if (looks.every((one) => one === 'unmarked')) return 'mark';
  return looks.includes('unmarked') ? undefined : 'unmarked';
}
