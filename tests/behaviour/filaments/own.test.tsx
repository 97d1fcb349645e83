/** The page of a filament of the user's own: the table is where it is edited, and its curve stands on what still holds. */
import type { ReactElement } from 'react';
import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, it } from 'vitest';
import { strainAtLife } from '../../../src/core/life/strainLife.ts';
import { EVIDENCE } from '../../../src/core/material/evidence.ts';
import { FILAMENTS } from '../../../src/core/material/filaments.ts';
import { evidenceFrom, isAsJudged, plasticOf } from '../../../src/core/material/ownEvidence.ts';
import { ownFrom, withAnchors, withCurve, withCurveOf } from '../../../src/core/material/ownFilament.ts';
import { PROPERTY_LIMITS } from '../../../src/core/material/ownLimits.ts';
import type { OwnFilament, Provenance, RowId } from '../../../src/core/material/types.ts';
import { wholeRow } from '../../../src/core/material/wholeRow.ts';
import type { Result } from '../../../src/core/result.ts';
import { anchorsOf, evidenceOf, READ_AT } from '../../../src/ui/filaments/anchors.ts';
import { OwnNumbers } from '../../../src/ui/filaments/own/OwnNumbers.tsx';
import { OwnStandsOn } from '../../../src/ui/filaments/own/OwnStandsOn.tsx';
import { standsOn } from '../../../src/ui/text/filamentCurveText.ts';
import { asInText, evidenceText, heldText } from '../../../src/ui/text/filamentText.ts';
import { PROPERTIES, READ_PROPERTIES } from '../../../src/ui/text/filamentValueText.ts';
import { OWN_SAID } from '../../../src/ui/text/ownText.ts';
import { filament } from '../../support/filament.ts';
import { ownPetg } from '../../support/ownFilaments.ts';

const TEST: Provenance = { kind: 'measured', what: 'twelve bars bent by hand' };

function made(result: Result<OwnFilament>): OwnFilament {
  if (!result.ok) throw new Error(result.problems.map(({ message }) => message).join('; '));
  return result.value;
}

/** PETG whose curve the user has set through another strain at a thousand cycles. */
const bent = made(
  withAnchors(
    ownPetg(),
    [
      { cycles: 1000, strain: 0.06 },
      { cycles: 1_000_000, strain: strainAtLife(1_000_000, ownPetg().life) },
    ],
    TEST,
  ),
);
const doubted = made(withCurve(ownPetg(), { doubtFactor: 4 }, TEST));

describe('the evidence of a copied curve', () => {
  it.each(FILAMENTS.map(({ id }) => id as RowId))('of %s is that of the row until its course is changed', (id) => {
    const own = ownFrom(filament(id), 'Mine', 'own-mine');
    expect(plasticOf(own)).toBe(id);
    expect(evidenceFrom(own)).toBe(id);
    expect(anchorsOf(own, READ_AT)).toBe(EVIDENCE[id]);
    expect(evidenceText(own).slice(evidenceText(own).indexOf(': ') + 2)).toContain(
      evidenceText(wholeRow(filament(id))).slice(1),
    );
    expect(asInText(own)).toBe(`as in ${filament(id).name}`);
    expect(asInText(wholeRow(filament(id)))).toBe('');
    expect(heldText(own)).toEqual(heldText(wholeRow(filament(id))));
    expect(evidenceFrom(made(withCurve(own, { A: own.life.A * 1.01 }, TEST)))).toBeUndefined();
  });

  it('survives another doubt, of which only what the user says holds', () => {
    expect(evidenceOf(doubted)).toBe(EVIDENCE.petg);
    expect(isAsJudged(doubted, 'gamma')).toBe(true);
    expect(isAsJudged(doubted, 'gamma', 'doubtFactor')).toBe(false);
    const rows = new Map(standsOn(doubted, []).map((row) => [row.key, row]));
    expect(rows.get('doubtFactor')).toMatchObject({ kind: 'measured', more: 'Nine times in ten.' });
    expect(rows.get('gamma')).toMatchObject({ kind: 'memory' });
    expect(rows.get('gamma')?.more).toContain('By judgement.');
  });

  it('gives no more folds than the user has counted', () => {
    const few = made(withCurve(ownPetg(), { maxReportableCycles: 100 }, TEST));
    expect(evidenceText(ownPetg())).toMatch(/Our curve gives 2\d\d at 14\.7/);
    expect(evidenceText(few)).toContain('Our curve gives over 100 at 14.7');
  });

  it('is gone with another course: no test of the plastic is claimed, and the two points are the user’s', () => {
    expect(evidenceOf(bent)).toEqual([]);
    expect(evidenceText(bent)).not.toMatch(/fold/);
    expect(asInText(bent)).toBe('');
    const points = anchorsOf(bent, READ_AT);
    expect(points.map(({ kind, seen, what, more }) => ({ kind, seen, what, more }))).toEqual(
      points.map(() => ({ kind: 'measured', seen: true, what: 'Your test', more: 'twelve bars bent by hand' })),
    );
    expect(points[0]?.strain?.toPrecision(6)).toBe('0.0600000');
    expect(standsOn(bent, []).at(-1)?.more).toBe('Set through 6 % at 1 000 and 0.784 % at 1 000 000 cycles.');
  });

  it('comes back with the curve', () => {
    expect(anchorsOf(made(withCurveOf(bent, filament('petg'))), READ_AT)).toBe(EVIDENCE.petg);
  });

  it('of a row that goes back to none of the table is none', () => {
    const stray = { ...ownPetg(), own: { from: 'unobtainium', remark: '' } };
    expect(evidenceFrom(stray)).toBeUndefined();
    expect(asInText(stray)).toBe('');
  });
});

/** What a reader by ear is told of fields and figures. */
function labels(element: ReactElement): readonly string[] {
  return [...renderToStaticMarkup(element).matchAll(/aria-label="([^"]*)"/g)].map(([, label = '']) => label);
}

describe('the page of an own row', () => {
  it.each([...FILAMENTS])('of $name has fields for every value in the table, by the names of the table', (row) => {
    const own = ownFrom(row, 'Mine', 'own-mine');
    const said = labels(<OwnNumbers row={own} rows={[own]} />);
    for (const property of READ_PROPERTIES.filter((one) => own.properties[one] !== undefined)) {
      const { name } = PROPERTIES[property];
      expect(said).toEqual(expect.arrayContaining([name, `${name}, low`, `${name}, high`]));
      expect(said).toContain(`${name}, where it comes from`);
    }
  });

  it('says each figure of the curve once, in a field', () => {
    const said = labels(<OwnStandsOn row={bent} at={READ_AT} onRead={() => undefined} />);
    const figures = said.filter((label) => /flex|cycles|doubt|scatter|weight/i.test(label));
    expect(figures).toEqual([
      'Few cycles',
      'Strain at few cycles',
      'Many cycles',
      'Strain at many cycles',
      'Strain that breaks it on the first flex',
      'Scatter between prints',
      'Doubt about the curve',
      'Weight of bending back',
      'Flexes counted at most',
    ]);
  });
});

describe('the names of values', () => {
  it('are different, and those that problems use', () => {
    const names = READ_PROPERTIES.map((property) => PROPERTIES[property].name);
    expect(new Set(names).size).toBe(names.length);
    expect(READ_PROPERTIES.toSorted()).toEqual(Object.keys(PROPERTY_LIMITS).toSorted());
    for (const property of READ_PROPERTIES) {
      expect(PROPERTIES[property].name.toLowerCase()).toBe(PROPERTY_LIMITS[property].what.toLowerCase());
    }
  });
});

describe('what is said of many', () => {
  it('names three, and counts the rest of more', () => {
    expect(OWN_SAID.taken(['a', 'b', 'c'])).toBe('“a”, “b” and “c” put with your filaments');
    expect(OWN_SAID.taken(Array.from({ length: 200 }, (_, at) => `Spool ${at + 1}`))).toBe(
      '“Spool 1”, “Spool 2” and 198 more put with your filaments',
    );
  });
});
