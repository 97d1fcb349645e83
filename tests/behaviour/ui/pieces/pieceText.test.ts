import { describe, expect, it } from 'vitest';
import { PIECE_IDS, type PieceId } from '../../../../src/core/coupons/piece.ts';
import { wholeRow } from '../../../../src/core/material/wholeRow.ts';
import { radians } from '../../../../src/core/units.ts';
import { LYINGS } from '../../../../src/core/print/profile.ts';
import { pieceFileName, pieceSaid, plateFileName, radiusSum } from '../../../../src/ui/text/pieceSaysText.ts';
import { cautionsText, gramsText, settingsText, stepsText } from '../../../../src/ui/text/pieceStepsText.ts';
import { PIECE_WORDS, pieceSpoken, sizesIn } from '../../../../src/ui/text/pieceText.ts';
import { plainly } from '../../../../src/ui/text/said.ts';
import { pictureText } from '../../../../src/ui/text/testPageText.ts';
import { ASKED, pieceFor } from './asked.ts';

const DENSITY = wholeRow(ASKED.filament).properties.density;
const plain = (text: string) => text.replaceAll('\u00a0', ' ');

describe('the paragraph under the plate', () => {
  it('writes out the sum of the strain over a corner, as the order has it', () => {
    expect(plain(radiusSum(0.84, 5))).toBe('0.84 ÷ (2 × 5 + 0.84) = 7.75 %');
  });

  it('says the strain of the corner in use, else of the smallest', () => {
    const piece = pieceFor('radii');
    const five = piece.corners.find(({ radius }) => radius === 5);
    const said = (corner = five) => plain(plainly(pieceSaid(piece, ASKED, DENSITY, 'mm', corner)));
    expect(said()).toContain('Over R 5 the skin strains 0.84 ÷ (2 × 5 + 0.84) = 7.75 %.');
    const smallest = Math.min(...piece.corners.map(({ radius }) => radius));
    expect(plain(plainly(pieceSaid(piece, ASKED, DENSITY, 'mm')))).toContain(`Over R ${smallest} `);
  });

  it('weighs a piece by its volume: 10 cm³ of 1.27 g/cm³ are 13 g, 1 cm³ is 1.3 g', () => {
    expect(plain(gramsText(10_000, 1270))).toBe('13 g');
    expect(plain(gramsText(1000, 1270))).toBe('1.3 g');
  });

  it('marks the weight with where the density comes from', () => {
    for (const id of PIECE_IDS) {
      const pieces = pieceSaid(pieceFor(id), ASKED, DENSITY, 'mm');
      const grams = pieces.find((piece) => typeof piece === 'object' && piece.figure.endsWith('g'));
      expect(grams).toMatchObject({ mark: DENSITY.provenance.kind });
    }
  });
});

const settings = (id: PieceId) => plain(settingsText(pieceFor(id), ASKED, 'mm').join(' '));

describe('what the pages say', () => {
  it.each(PIECE_IDS)('%s: no figure is missing, whatever way it lies and in either unit', (id) => {
    for (const lying of LYINGS) {
      for (const unit of ['mm', 'inch'] as const) {
        const asked = { ...ASKED, profile: { ...ASKED.profile, lying } };
        const piece = pieceFor(id, asked);
        const all = [
          ...settingsText(piece, asked, unit),
          ...stepsText(piece, asked, unit),
          pictureText(piece, '1 : 1', unit),
          plainly(pieceSaid(piece, asked, DENSITY, unit)),
          pieceSpoken(piece, 1),
        ].join(' ');
        expect(all).not.toMatch(/NaN|Infinity|undefined|\[object/);
      }
    }
  });

  it('say inches where the sheet does, with what a printer is set to beside them in mm', () => {
    const said = plain(settingsText(pieceFor('comb'), ASKED, 'inch').join(' '));
    // 0.42 / 25.4 = 0.01654, 0.2 / 25.4 = 0.00787.
    expect(said).toContain(
      'lines 0.0165 in (0.42 mm) wide from a 0.0157 in (0.4 mm) nozzle, layers 0.0079 in (0.20 mm)',
    );
    const bar = pieceFor('bar');
    const steps = plain(stepsText(bar, ASKED, 'inch').join(' '));
    expect(steps).toContain(`${((bar.arm ?? 0) / 25.4).toFixed(2)} in stick out`);
    expect(steps).toMatch(/about \d+ g/);
    expect(steps).not.toContain(' mm');
    expect(plain(pictureText(pieceFor('comb'), '1 : 1', 'inch'))).toMatch(/3\.46 × [\d.]+ × [\d.]+ in overall/);
    // Lengths of millimetres are left only where radii are.
    for (const id of ['ladder', 'comb', 'bar', 'creases'] as const)
      expect(plainly(pieceSaid(pieceFor(id), ASKED, DENSITY, 'inch'))).not.toContain('\u00a0mm');
  });

  it('keep radii in mm as they are marked, in inches with what Tests shows beside them', () => {
    expect(plain(sizesIn('inch').radius(5))).toBe('R 5 mm, 0.1969 in');
    expect(plain(sizesIn('mm').radius(5))).toBe('R 5 mm');
    expect(pictureText(pieceFor('radii'), '1 : 2', 'inch')).toContain('Radii R in mm');
  });

  it('tell which way a crease cannot go: its pads meet, so that nobody is asked for both ways', () => {
    const asked = { ...ASKED, turn: radians(90) };
    const piece = pieceFor('creases', asked);
    const said = plain(stepsText(piece, asked, 'mm').join(' '));
    expect(said).toContain('plate side only');
    expect(said).not.toContain('Both ways:');
    const little = { ...ASKED, turn: radians(5) };
    expect(plain(stepsText(pieceFor('creases', little), little, 'mm').join(' '))).toContain('Both ways:');
  });

  it('say how many prints a page takes, and how they lie', () => {
    expect(settings('comb')).toContain('One print of six strips fills this page');
    expect(settings('hold')).toContain('this page takes three');
    expect(settings('comb')).toContain('lie flat');
    expect(settings('creases')).toContain('lie as creases');
  });

  it('names the settings of the profile, and the contours that lay whole lines', () => {
    expect(settings('comb')).toContain('lines 0.42 mm wide from a 0.4 mm nozzle, layers 0.20 mm, the first 0.24 mm');
    expect(settings('comb')).toContain('2 lines across: one contour;');
    expect(settings('ladder')).toContain('At least four contours, so that all 8 lines are laid');
    expect(settings('comb')).toContain('Let it cool on the plate');
    expect(settings('comb')).toContain('brim');
  });

  it('holds bending to two a second and lets the count stop, wherever bends are counted', () => {
    for (const id of ['comb', 'radii', 'creases'] as const) {
      const said = stepsText(pieceFor(id), ASKED, 'mm').join(' ');
      expect(said).toContain('at most twice a second');
      expect(said).toContain('still whole');
    }
  });

  it('asks for eye protection wherever something may part, and for feet clear of a weight', () => {
    for (const id of PIECE_IDS.filter((one) => one !== 'ladder'))
      expect(cautionsText(id).join(' ')).toMatch(/eye protection/i);
    expect(cautionsText('bar').join(' ')).toContain('feet');
    for (const id of PIECE_IDS) {
      expect(cautionsText(id).join(' ')).toContain('One spool, one printer');
      expect(cautionsText(id).join(' ')).toContain('not a safety case');
      expect(cautionsText(id).join(' ')).toMatch(/Hot bed.*fumes.*maker of the printer/);
    }
  });

  it('says of the mandrel test that it is from memory', () => {
    expect(stepsText(pieceFor('radii'), ASKED, 'mm').join(' ')).toContain('ISO 1519, from memory');
  });

  it('reads a piece out by number, name, size and how many strips it has', () => {
    expect(pieceSpoken(pieceFor('comb'), 2)).toMatch(/^2 Strip comb, 88 by 42 by 6\.8 mm, 6 strips$/);
    expect(new Set(PIECE_IDS.map((id) => PIECE_WORDS[id].name)).size).toBe(PIECE_IDS.length);
  });

  it('names files by piece and filament', () => {
    expect(pieceFileName('comb', 'PETG', '3mf')).toBe('strip-comb-petg.3mf');
    expect(pieceFileName('radii', 'PETG, spool 3', 'stl')).toBe('radius-block-petg-spool-3.stl');
    expect(plateFileName(1, 1, 'PETG')).toBe('test-plate-petg.3mf');
    expect(plateFileName(2, 2, 'PETG')).toBe('test-plate-2-petg.3mf');
  });
});
