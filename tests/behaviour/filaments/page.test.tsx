/** The pages as markup: every figure is the core's, and beside every figure is the way to its source. */
import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, it } from 'vitest';
import { ORDERS, standingOf } from '../../../src/core/design/acrossFilaments.ts';
import { soundness } from '../../../src/core/material/choose.ts';
import { fromMemory, TRAITS, traitOf } from '../../../src/core/material/compare.ts';
import { FILAMENTS } from '../../../src/core/material/filaments.ts';
import type { Quantity } from '../../../src/core/material/types.ts';
import { wholeRow } from '../../../src/core/material/wholeRow.ts';
import { AllFilaments } from '../../../src/ui/filaments/AllFilaments.tsx';
import { CompareTable } from '../../../src/ui/filaments/CompareTable.tsx';
import { OneFilament } from '../../../src/ui/filaments/OneFilament.tsx';
import { figureIn, rangeText, valueText } from '../../../src/ui/text/figureText.ts';
import {
  isStrain,
  kindWords,
  originOfQuantity,
  PROPERTIES,
  spokenTrait,
  TRAIT_NAMES,
  type Property,
} from '../../../src/ui/text/filamentValueText.ts';
import { asTabbed } from '../../../src/ui/text/filamentText.ts';
import {
  chanceText,
  conflictText,
  lifeText,
  NOT_HERE,
  orderOptions,
  rowName,
  spokenStanding,
} from '../../../src/ui/text/filamentsText.ts';
import { plainly } from '../../../src/ui/text/said.ts';
import { assessed, changed, LEAF } from '../../support/joints.ts';
import { ownPetg } from '../../support/ownFilaments.ts';

const ROWS = FILAMENTS.map(wholeRow);
const A = assessed(LEAF);
const escaped = (text: string) => text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');
const all = ROWS.map((row) => ({ row, standing: standingOf(A, row) }));
const joint = { strain: A.strain.peak, movement: LEAF.movement, filament: 'petg' };

/** The markup of one row of the comparison. */
function rowMarkup(id: string, markup: string): string {
  const from = markup.indexOf(`data-row="${id}"`);
  return markup.slice(from, markup.indexOf('</tr>', from));
}

/** What is said by ear of every filament in a leaf of some size. */
function heard(sizes: Readonly<Record<string, number>>): readonly string[] {
  const a = assessed(changed(LEAF, { sizes }));
  return ROWS.map((row) => spokenStanding(standingOf(a, row), a.joint.movement.cycles));
}

describe('the comparison', () => {
  const markup = renderToStaticMarkup(<CompareTable rows={all} all={all} joint={joint} />);

  it.each(ROWS.map((row) => [row.id, row] as const))('%s shows the figures of its row', (id, row) => {
    const shown = rowMarkup(id, markup);
    for (const trait of TRAITS) {
      const quantity = traitOf(row, trait);
      if (!quantity) continue;
      const said = spokenTrait(TRAIT_NAMES[trait], quantity, isStrain(trait));
      expect(shown).toContain(escaped(said));
      if (trait !== 'repeated') expect(shown).toContain(`>${figureIn(quantity.typical, isStrain(trait))}</span>`);
    }
  });

  it.each(ROWS.map((row) => [row.id, row] as const))('%s has a mark beside every number', (id, row) => {
    const shown = rowMarkup(id, markup);
    // The ring of “again and again” has no number of its own; the life has.
    const numbers = TRAITS.filter((trait) => trait !== 'repeated' && traitOf(row, trait));
    expect(shown.match(/class="pv"/g)).toHaveLength(numbers.length + 1);
  });

  it.each(ROWS.map((row) => [row.id, row] as const))('%s tells the life that the core gives', (id, row) => {
    const standing = standingOf(A, row);
    const shown = rowMarkup(id, markup);
    expect(shown).toContain(`>${lifeText(standing)}<`);
    expect(shown).toContain(chanceText(standing));
    const { median, maxReportableCycles } = standing.life;
    if (median > maxReportableCycles) expect(lifeText(standing)).toMatch(/^over [12]/);
  });

  it('says by ear what the row shows', () => {
    // A leaf this short breaks at once in something, one this long lasts past the data in something.
    expect(heard({ length: 0.9 })).toContainEqual(expect.stringMatching(/^Fail: the first flex breaks it/));
    expect(heard({ length: 150 })).toContainEqual(
      expect.stringMatching(/^Pass: half last past 1.M, over 99 in 100 reach 5.000$/),
    );
    for (const said of [...heard({ length: 0.9 }), ...heard({}), ...heard({ length: 150 })]) {
      expect(said).not.toMatch(/by (over|first)|breaks reach/);
    }
  });

  it('draws nothing that is no number', () => {
    expect(markup).not.toMatch(/NaN|undefined|Infinity/);
  });

  it('needs no joint', () => {
    const without = ROWS.map((row) => ({ row, standing: undefined }));
    const bare = renderToStaticMarkup(<CompareTable rows={without} all={without} joint={undefined} />);
    expect(bare).not.toMatch(/NaN|undefined|Infinity/);
    // A column that had nothing in it for anyone would speak of a joint that is not there.
    expect(bare).not.toMatch(/your joint/i);
  });

  it('stands in any strain that a joint may have', () => {
    for (const length of [0.9, 3, 150]) {
      const a = assessed(changed(LEAF, { sizes: { length }, movement: { amount: length < 1 ? 2 : 0.6 } }));
      const rows = ROWS.map((row) => ({ row, standing: standingOf(a, row) }));
      const drawn = renderToStaticMarkup(
        <CompareTable rows={rows} all={rows} joint={{ ...joint, strain: a.strain.peak }} />,
      );
      expect(drawn).not.toMatch(/NaN|undefined|Infinity/);
    }
  });
});

describe('the page of all', () => {
  const markup = renderToStaticMarkup(<AllFilaments rows={ROWS} yours={{ joint: LEAF, assessment: A }} />);

  it('says how many values are from memory, as counted', () => {
    const { memory, all: values } = fromMemory(ROWS);
    expect(markup).toContain(`Of the ${values} values in Fig. 1, ${memory} are from memory`);
  });

  it('says that the evidence disagrees before any figure of ours', () => {
    expect(plainly(conflictText())).toContain('a million folds and nylon fewer than 1\u2009000');
    expect(markup.indexOf('disagrees')).toBeLessThan(markup.indexOf('<table'));
  });

  it('has no broken figure', () => expect(markup).not.toMatch(/NaN|undefined|Infinity/));

  it('has no broken figure where less has been counted of a row of the user’s own', () => {
    const own = wholeRow({ ...ownPetg(), life: { ...ownPetg().life, maxReportableCycles: 5000 } });
    const markupOfBoth = renderToStaticMarkup(
      <AllFilaments rows={[...ROWS, own]} yours={{ joint: LEAF, assessment: A }} />,
    );
    expect(markupOfBoth).toContain('<td>not counted</td>');
    expect(markupOfBoth).not.toMatch(/NaN|undefined|Infinity/);
  });

  it('speaks of no joint where there is none, and puts in no order by it', () => {
    const none = renderToStaticMarkup(<AllFilaments rows={ROWS} yours={{ joint: undefined, assessment: undefined }} />);
    expect(none).not.toMatch(/your joint|undefined|NaN/i);
    expect(orderOptions(false).map(({ value }) => value)).toEqual(ORDERS.filter((order) => order !== 'life'));
    expect(none).not.toContain(escaped(NOT_HERE));
  });

  it('says so where the address names a filament that is not here', () => {
    const lost = renderToStaticMarkup(<AllFilaments rows={ROWS} yours={{ joint: LEAF, assessment: A }} isLost />);
    expect(lost).toContain(escaped(NOT_HERE));
  });
});

describe.each(ROWS.map((row) => [row.id, row] as const))('the page of %s', (_, row) => {
  const markup = renderToStaticMarkup(<OneFilament row={row} rows={ROWS} yours={{ joint: LEAF, assessment: A }} />);
  const properties = Object.entries(row.properties) as [Property, Quantity][];

  it('tells every number of the row, with its range, kind and source', () => {
    for (const [name, quantity] of properties) {
      const from = markup.indexOf(`id="number-${name}"`);
      const line = markup.slice(from, markup.indexOf('</tr>', from));
      expect(from, name).toBeGreaterThan(0);
      expect(line).toContain(escaped(valueText(quantity, PROPERTIES[name].strain)));
      expect(line).toContain(escaped(rangeText(quantity, PROPERTIES[name].strain)));
      expect(line).toContain(kindWords(soundness(quantity.provenance)));
      expect(line).toContain(escaped(originOfQuantity(quantity).says));
      for (const document of originOfQuantity(quantity).full) expect(line).toContain(escaped(document));
    }
  });

  it('gives the document of every published number', () => {
    for (const [, quantity] of properties) {
      if (quantity.provenance.kind === 'published') expect(originOfQuantity(quantity).full).not.toEqual([]);
    }
  });

  it('leads from every number of its sentence to that number’s row', () => {
    const sentence = markup.slice(markup.indexOf('class="four'), markup.indexOf('<section'));
    expect(sentence.match(/class="num"/g)).toHaveLength(4);
    expect(sentence.match(/class="pv"/g)).toHaveLength(4);
  });

  it('leads from what it says of holding, warmth, water and your joint to where that comes from', () => {
    for (const [section, figures] of [
      ['around', 5],
      ['sure verdict', 1],
    ] as const) {
      const from = markup.indexOf(`class="${section}`);
      const said = markup.slice(from, markup.indexOf('</section>', from));
      const isFirst = /the first flex breaks it/.test(said);
      expect(said.match(/class="pv"/g)?.length ?? 0).toBeGreaterThanOrEqual(isFirst ? 0 : figures);
      expect(said.match(/class="pv"/g)).toHaveLength(said.match(/class="num"/g)?.length ?? 0);
    }
    expect(markup).toContain('id="number-life"');
  });

  it('has no broken figure', () => expect(markup).not.toMatch(/NaN|undefined|Infinity/));

  it('copies a line for each number', () => {
    const [head, ...lines] = asTabbed(row).split('\n');
    expect(head).toBe(row.fullName);
    expect(lines).toHaveLength(properties.length);
    expect(rowName(row)).not.toBe('');
    for (const line of lines) expect(line.split('\t')).toHaveLength(4);
  });
});
