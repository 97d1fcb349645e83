import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, it } from 'vitest';
import { layOut } from '../../../../src/core/coupons/layOut.ts';
import { PIECE_IDS, type Plate } from '../../../../src/core/coupons/piece.ts';
import { LYINGS, type Lying } from '../../../../src/core/print/profile.ts';
import { radians } from '../../../../src/core/units.ts';
import { overlap, type Box } from '../../../../src/ui/drawing/lettering.ts';
import { NOMINAL_PX_PER_MM } from '../../../../src/ui/drawing/sheet.ts';
import { pictureScale } from '../../../../src/ui/tests/pages/PiecePicture.tsx';
import { pageAddress, pieceOfAddress } from '../../../../src/ui/tests/pages/route.ts';
import { GRIP, guideStrip } from '../../../../src/ui/tests/pages/rounds.ts';
import { TestPage } from '../../../../src/ui/tests/pages/TestPage.tsx';
import { pieceLetters } from '../../../../src/ui/tests/plate/pieceLetters.ts';
import { PlateFigure } from '../../../../src/ui/tests/plate/PlateFigure.tsx';
import { platePlan } from '../../../../src/ui/tests/plate/platePlan.ts';
import { expectClose } from '../../../support/close.ts';
import { ASKED, pieceFor } from './asked.ts';

const SIZE = { x: 220, y: 220 };
const askedLying = (lying: Lying) => ({ ...ASKED, profile: { ...ASKED.profile, lying } });
const piecesLying = (lying: Lying) => PIECE_IDS.map((id) => pieceFor(id, askedLying(lying)));

function laid(lying: Lying, size = SIZE): readonly Plate[] {
  const plates = layOut(piecesLying(lying), size);
  if (!plates.ok) throw new Error(plates.problems[0].message);
  return plates.value;
}

const isWithin = (box: Box, width: number, height: number) =>
  box.x >= 0 && box.y >= 0 && box.x + box.width <= width && box.y + box.height <= height;

describe.each(LYINGS)('the plate of pieces that lie %s', (lying) => {
  it.each([SIZE, { x: 180, y: 180 }])('names every piece in the clear, on a plate of $x mm', (size) => {
    for (const plate of laid(lying, size)) {
      const { width, height, pieces } = platePlan(plate, size, NOMINAL_PX_PER_MM);
      for (const { label, box } of pieces) {
        expect(isWithin(label, width, height)).toBe(true);
        expect(isWithin(box, width, height)).toBe(true);
        for (const other of pieces) {
          if (other.label !== label) expect(overlap(label, other.label)).toBe(false);
          if (other.box !== box) expect(overlap(label, other.box)).toBe(false);
        }
      }
    }
  });

  it('letters every radius that is told apart by it, at life size', () => {
    const piece = pieceFor('radii', askedLying(lying));
    const letters = pieceLetters(piece, { pxPerMm: NOMINAL_PX_PER_MM, at: { x: 0, y: 0 } });
    expect(letters.filter(({ text }) => text.startsWith('R'))).toHaveLength(piece.corners.length);
  });
});

describe('the plate', () => {
  it('is life size: a piece of 88 mm is drawn 88 × 96 ÷ 25.4 px wide', () => {
    const { pieces } = platePlan([{ piece: pieceFor('comb'), at: { x: 10, y: 10 } }], SIZE, NOMINAL_PX_PER_MM);
    expectClose(pieces[0]?.box.width ?? 0, (88 * 96) / 25.4, { abs: 1e-9, because: 'round-off of a product' });
  });

  it('is one group of radio buttons over all plates, each read out with its size', () => {
    const small = { x: 150, y: 150 };
    expect(laid('flat', small).length).toBeGreaterThan(1);
    const shown = renderToStaticMarkup(
      <PlateFigure pieces={piecesLying('flat')} plate={small} chosen="comb" onChoose={() => {}} />,
    );
    const radios = [...shown.matchAll(/<input[^>]*type="radio"[^>]*>/g)].map(([tag]) => tag);
    expect(radios).toHaveLength(PIECE_IDS.length);
    expect(new Set(radios.map((tag) => /name="([^"]*)"/.exec(tag)?.[1])).size).toBe(1);
    expect(radios.filter((tag) => tag.includes('checked'))).toHaveLength(1);
    expect(shown).toContain('Plate 1 of');
    for (const number of [1, 2, 3, 4, 5, 6]) expect(shown).toMatch(new RegExp(`aria-label="${number} [A-Z]`));
  });

  it('says what does not fit instead of drawing it', () => {
    const shown = renderToStaticMarkup(
      <PlateFigure pieces={piecesLying('flat')} plate={{ x: 60, y: 60 }} chosen="comb" onChoose={() => {}} />,
    );
    expect(shown).toContain('role="alert"');
    expect(shown).not.toContain('type="radio"');
  });
});

describe('the angle guide', () => {
  it.each([5, 35, 90, 180, 270])('turns a strip to %d° along a round of its own length', (angle) => {
    const strip = { ...pieceFor('comb').strips.at(-1)!, length: 20, from: { x: 30, y: 10 } };
    const turn = radians(angle);
    const { root, end, tip } = guideStrip(strip, turn);
    const rounding = { abs: 2e-4, because: 'places on paper are rounded to 1e-4 mm' } as const;
    // A chord of a round: 2·r·sin(θ/2), at half the angle.
    const chord = ((2 * 20) / turn) * Math.sin(turn / 2);
    expectClose(end.x - root.x, chord * Math.sin(turn / 2), rounding);
    expectClose(root.y - end.y, chord * Math.cos(turn / 2), rounding);
    expectClose(tip.x - end.x, GRIP * Math.sin(turn), rounding);
    expectClose(end.y - tip.y, GRIP * Math.cos(turn), rounding);
  });
});

describe('a page to print', () => {
  it.each(PIECE_IDS)('%s: states the scale of its drawing, the true line, and where to write', (id) => {
    const piece = pieceFor(id);
    const shown = renderToStaticMarkup(
      <TestPage
        piece={piece}
        asked={ASKED}
        filament="PETG"
        printer=""
        spool="spool 3"
        unit="mm"
        notes={[]}
        onBack={() => {}}
      />,
    );
    const scale = pictureScale(piece);
    expect(shown).toContain(scale === 1 ? '1 : 1' : '1 : 2');
    expect(shown).toContain('Measure this line: 100 mm');
    for (const word of ['Date', 'Printer', 'Spool', 'Filament', 'spool 3']) expect(shown).toContain(word);
    expect(shown.includes('degrees')).toBe(id === 'hold');
    expect(shown.includes('its own guide')).toBe(id === 'comb');
  });

  it('has an address that only pieces have', () => {
    for (const id of PIECE_IDS) expect(pieceOfAddress(pageAddress(id))).toBe(id);
    for (const hash of ['', '#tests', '#tests/page/', '#tests/page/valve', '#joints']) {
      expect(pieceOfAddress(hash)).toBeUndefined();
    }
  });
});
