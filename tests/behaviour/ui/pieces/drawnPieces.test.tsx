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
import { guideAside, ownGuide } from '../../../../src/ui/tests/pages/guides.ts';
import { padsMeet } from '../../../../src/ui/tests/pages/padsMeet.ts';
import { guideStrip, onwards } from '../../../../src/ui/tests/pages/rounds.ts';
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

const ROUNDING = { abs: 2e-4, because: 'places on paper are rounded to 1e-4 mm' } as const;

describe('the angle guide', () => {
  it.each([5, 35, 90, 180, 270])('turns a strip to %d° along a round of its own length', (angle) => {
    const turn = radians(angle);
    const root = { x: 30, y: -10 };
    const { end, reach } = guideStrip(6, 20, root, turn);
    // A chord of a round: 2·r·sin(θ/2), at half the angle; turned to the left.
    const chord = ((2 * 20) / turn) * Math.sin(turn / 2);
    expectClose(root.x - end.x, chord * Math.sin(turn / 2), ROUNDING);
    expectClose(root.y - end.y, chord * Math.cos(turn / 2), ROUNDING);
    const tip = onwards(end, turn, 12);
    expectClose(end.x - tip.x, 12 * Math.sin(turn), ROUNDING);
    expectClose(end.y - tip.y, 12 * Math.cos(turn), ROUNDING);
    // No point of the arc lies outside of what is kept free for it.
    for (let share = 0; share <= 1; share += 0.01) {
      const at = guideStrip(6, 20 * share || 1e-9, root, radians(Math.max(angle * share, 1e-9))).end;
      expect(root.x - at.x).toBeLessThanOrEqual(reach.left + 1e-3);
      expect(root.y - at.y).toBeLessThanOrEqual(reach.up + 1e-3);
      expect(at.y - root.y).toBeLessThanOrEqual(reach.down + 1e-3);
    }
  });

  it('is drawn for what is flexed to an angle, and for nothing else', () => {
    for (const lying of LYINGS) {
      const asked = askedLying(lying);
      const guided = PIECE_IDS.filter((id) => guideAside(pieceFor(id, asked), asked, 'mm') !== undefined);
      expect(guided).toEqual(lying === 'flat' ? ['creases'] : ['comb', 'creases']);
      expect(ownGuide(pieceFor('comb', asked), asked) !== undefined).toBe(lying === 'flat');
    }
  });

  it.each(['crease', 'upright'] as const)('of a comb that lies %s has every strip at its own length', (lying) => {
    const asked = askedLying(lying);
    const piece = pieceFor('comb', asked);
    const found = guideAside(piece, asked, 'mm');
    expect(found?.guide.strips.map(({ number, free }) => ({ number, free }))).toEqual(
      piece.strips.map(({ number, length }) => ({ number, free: length })),
    );
    for (const { radius, free } of found?.guide.strips ?? []) expectClose(radius * asked.turn, free, ROUNDING);
  });

  it.each([20, 90, 150])('of a crease sets the next pad %d° to the one that lies still', (angle) => {
    const asked = { ...ASKED, turn: radians(angle) };
    const piece = pieceFor('creases', asked);
    const { outlines = [], targets = [] } = guideAside(piece, asked, 'mm')?.guide ?? {};
    expect(targets).toHaveLength(piece.strips.length);
    targets.forEach(([near, far, , inner], at) => {
      if (!near || !far || !inner) throw new Error('no pad');
      // From the plate side of one pad to that of the next; up on paper is straight on.
      expectClose(Math.atan2(near.x - far.x, near.y - far.y), radians(angle), {
        abs: 1e-4,
        because: 'places on paper are rounded to 1e-4 mm, over a pad of 12 mm',
      });
      const pad = outlines[at] ?? [];
      const high = (pad[1]?.x ?? 0) - (pad[0]?.x ?? 0);
      expectClose(Math.hypot(inner.x - near.x, inner.y - near.y), high, ROUNDING);
    });
  });

  it('keeps numbers apart, however near to each other strips end', () => {
    for (const angle of [10, 35, 90, 180, 300]) {
      const asked = { ...askedLying('crease'), turn: radians(angle) };
      const numbers = guideAside(pieceFor('comb', asked), asked, 'mm')?.guide.numbers ?? [];
      for (const [at, one] of numbers.entries())
        for (const other of numbers.slice(at + 1))
          expect(Math.hypot(one.x - other.x, one.y - other.y)).toBeGreaterThan(3.3);
    }
  });
});

describe('pads that stand up from a strip', () => {
  it('meet where both faces point at the middle of the round: at L ÷ (H − t/2)', () => {
    // 1.9 ÷ (4 − 0.2) = 0.5.
    const pads = {
      bodies: [
        [
          { from: 0, to: 4, region: [] },
          { from: 4, to: 4.8, region: [] },
        ],
      ],
    };
    const strip = { countOf: 'layers', length: 1.9, thickness: 0.4 } as const;
    expectClose(padsMeet(pads, strip) ?? 0, 0.5, { abs: 1e-12, because: 'round-off of one quotient' });
    expect(padsMeet(pads, { ...strip, countOf: 'lines' })).toBeUndefined();
  });

  it('are as high as bars stand on in the ladder, whatever its layers', () => {
    const piece = pieceFor('creases');
    const [strip] = piece.strips;
    if (!strip) throw new Error('no crease');
    // Bars rise 0.8 mm in layers of 0.2.
    const high = piece.size.z - 0.8;
    expectClose(padsMeet(piece, strip) ?? 0, strip.length / (high - strip.thickness / 2), {
      abs: 1e-9,
      because: 'heights lie on a grid of whole layers, added up in floating point',
    });
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
    expect(shown).toContain('Measure these lines: 100 mm and 4 in');
    for (const word of ['Date', 'Printer', 'Spool', 'Filament', 'spool 3']) expect(shown).toContain(word);
    expect(shown.includes('degrees')).toBe(id === 'hold');
    expect(shown.includes('its own guide')).toBe(id === 'comb');
    expect(shown.includes('Angle guide')).toBe(id === 'creases');
  });

  it('has an address that only pieces have', () => {
    for (const id of PIECE_IDS) expect(pieceOfAddress(pageAddress(id))).toBe(id);
    for (const hash of ['', '#tests', '#tests/page/', '#tests/page/valve', '#joints']) {
      expect(pieceOfAddress(hash)).toBeUndefined();
    }
  });
});
