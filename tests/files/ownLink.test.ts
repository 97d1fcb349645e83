import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ownFrom, withValue, withWords } from '../../src/core/material/ownFilament.ts';
import { PROPERTY_NAMES } from '../../src/core/material/ownLimits.ts';
import { withOnShelf } from '../../src/core/material/shelf.ts';
import type { OwnFilament, Provenance } from '../../src/core/material/types.ts';
import { readJointLink } from '../../src/files/jointLink.ts';
import { LONGEST_ADDRESS, writeOwnJointLink } from '../../src/files/ownLink.ts';
import { filament } from '../support/filament.ts';
import { changed, LEAF } from '../support/joints.ts';
import { measuredPetg, ownFilament, ownPetg } from '../support/ownFilaments.ts';
import { anyTally } from '../support/tallies.ts';
import { anyJson } from '../support/partGenerators.ts';

const jointOf = ({ id }: OwnFilament) => changed(LEAF, { profile: { filament: id } });
const linkOf = (own: OwnFilament) => withOnShelf([own], () => writeOwnJointLink(jointOf(own)));

/** A row every value of which somebody has measured and described at length. */
function measured(words: string): OwnFilament {
  const provenance: Provenance = { kind: 'measured', what: words };
  const all = PROPERTY_NAMES.reduce<OwnFilament>(
    (row, name) => {
      const quantity = row.properties[name];
      const next = quantity && withValue(row, name, quantity, provenance);
      return next?.ok ? next.value : row;
    },
    ownFrom(filament('tpu95a'), 'TPU of mine', 'own-tpu'),
  );
  const remarked = withWords(all, { remark: words });
  return remarked.ok ? remarked.value : all;
}

describe('a joint link with a filament of the user’s own', () => {
  it('brings both back exactly', () => {
    fc.assert(
      fc.property(ownFilament, (own) => {
        const link = linkOf(own);
        if (link.length > LONGEST_ADDRESS) return;
        const read = readJointLink(link);
        // Words may be left out where the link would be too long, and then the figures still stand.
        expect(read.ok ? read.value.filaments.map(figuresOf) : read.problems).toEqual([figuresOf(own)]);
        if (encodeURIComponent(JSON.stringify(own)).length < 7000)
          expect(read.ok && read.value).toEqual({ joint: jointOf(own), filaments: [untallied(own)] });
      }),
    );
  });

  it('says only what is different from the row of the table', () => {
    const plain = linkOf(ownPetg());
    const [row] = new URLSearchParams(plain).getAll('own');
    expect(JSON.parse(row ?? '')).toEqual({ id: 'own-petg', name: 'PETG blue', from: 'petg' });
    const next = withValue(ownPetg(), 'youngsModulus', { typical: 2000 }, { kind: 'memory' });
    if (!next.ok) throw new Error('2 000 MPa is possible');
    const [changedRow] = new URLSearchParams(linkOf(next.value)).getAll('own');
    expect(JSON.parse(changedRow ?? '')).toMatchObject({ values: { youngsModulus: [2000, null, null, 'm'] } });
  });

  it('carries what tests have taught and none of their tallies', () => {
    const own = measuredPetg();
    const read = readJointLink(linkOf(own));
    expect(read.ok ? read.value.filaments : read.problems).toEqual([own]);
    const [flexed] = fc.sample(anyTally, { seed: 5, numRuns: 1 });
    const tests = { printer: 'left one', spool: '3', like: 'petg', tallies: [flexed!] };
    const tallied: OwnFilament = { ...own, own: { ...own.own, tests } };
    expect(linkOf(tallied)).toBe(linkOf(own));
  });

  it('stays as short as programs pass on: without the words where it must, and never without a figure', () => {
    const short = measured('three bars');
    expect(linkOf(short).length).toBeLessThan(LONGEST_ADDRESS);
    const told = readJointLink(linkOf(short));
    expect(told.ok && told.value.filaments).toEqual([short]);
    const wordy = measured('ein längerer Bericht über jeden einzelnen Versuch. '.repeat(6).trim());
    expect(linkOf(wordy).length).toBeLessThan(LONGEST_ADDRESS);
    const read = readJointLink(linkOf(wordy));
    expect(read.ok ? read.value.filaments.map(figuresOf) : read.problems).toEqual([figuresOf(wordy)]);
  });

  it.each(['', 'x', '[]', '{}', '{"id":"own-petg","name":"x","from":"petg","values":{"youngsModulus":[1e999]}}'])(
    'is refused where that is %j',
    (own) => {
      const link = new URLSearchParams(linkOf(ownPetg()));
      link.set('own', own);
      expect(readJointLink(link.toString()).ok).toBe(false);
    },
  );

  it('is refused where it brings another one than the joint uses, and where it brings none', () => {
    const link = new URLSearchParams(linkOf(ownPetg()));
    link.set('filament', 'own-other');
    expect(readJointLink(link.toString())).toMatchObject({
      ok: false,
      problems: [{ code: 'unreadable', field: 'own' }],
    });
    link.delete('own');
    expect(readJointLink(link.toString())).toMatchObject({ ok: false, problems: [{ code: 'unknown-filament' }] });
  });

  it('with any JSON in its place is a joint or problems, never an exception', () => {
    const row = { id: 'own-petg', name: 'x', from: 'petg' };
    const carried = anyJson.chain((value) =>
      fc.constantFrom<unknown>(
        value,
        { ...row, values: value },
        { ...row, values: { youngsModulus: value } },
        { ...row, values: { youngsModulus: [1500, 1400, 1600, value, value, value] } },
        { ...row, life: value },
        { ...row, laid: value },
        { ...row, laid: { lines: value }, life: { surestLife: value } },
        { ...row, from: value, remark: value, printable: value },
      ),
    );
    fc.assert(
      fc.property(carried, (value) => {
        const link = new URLSearchParams(linkOf(ownPetg()));
        link.set('own', JSON.stringify(value) ?? '');
        const read = readJointLink(link.toString());
        expect(read.ok || read.problems.length > 0).toBe(true);
      }),
    );
  });
});

/** A row without the tallies that have taught it. */
function untallied({ own: { from, remark }, ...row }: OwnFilament): OwnFilament {
  return { ...row, own: { from, remark } };
}

/** The figures of a row without a word. */
function figuresOf({ properties, life, ...row }: OwnFilament) {
  const values = Object.entries(properties).map(([name, quantity]) => {
    const { typical, low, high, unit } = quantity;
    return [name, typical, low, high, unit];
  });
  const { certainty: _certainty, provenance: _provenance, note: _note, ...curve } = life;
  const { id, name, printable, crystalline, laid } = row;
  return { id, name, printable, crystalline, laid, values, curve };
}
