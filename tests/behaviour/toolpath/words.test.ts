import { describe, expect, it } from 'vitest';
import type { LayerLaid } from '../../../src/core/inspect/toolpath/audit.ts';
import type { JudgedPlace, LaidFinding, LaidRow } from '../../../src/core/inspect/toolpath/judgedPlace.ts';
import { plainLetter } from '../../../src/ui/text/letterText.ts';
import { plainly } from '../../../src/ui/text/said.ts';
import { changeSaid, laidText, rowName, wantedText } from '../../../src/ui/text/toolpathChangeText.ts';
import { figureRows, textRows } from '../../../src/ui/text/toolpathFactsText.ts';
import { findingSaid, layersText, placeSaid, runsText } from '../../../src/ui/text/toolpathFindingText.ts';
import { toolpathReport } from '../../../src/ui/text/toolpathReportText.ts';
import { cautionsOf, laidHeading, laidShort, nothingText, tallyText } from '../../../src/ui/text/toolpathText.ts';
import { TEXT, TOOLPATH } from '../../support/toldToolpath.ts';

/** Blanks that only the screen tells apart. */
const plain = (text: string) => text.replaceAll(/[\u00a0\u2009]/g, ' ');

function layer(number: number, lines = 2): LayerLaid {
  return {
    layer: number,
    z: 0.2 * number,
    height: 0.2,
    lines: { least: lines, most: lines, usual: lines },
    widths: { least: 0.42, most: 0.42, mean: 0.42 },
    thickness: 0.42 * lines,
    tracks: [],
    open: [],
    pressed: { most: 0, share: 0 },
    starts: [],
    stops: [],
    along: 1,
    crossings: 0,
    lifted: 0,
  };
}

function judgedWith(findings: readonly LaidFinding[], changes: Partial<JudgedPlace> = {}): JudgedPlace {
  return {
    place: {
      number: 1,
      from: 'drawn',
      lying: 'flat',
      run: [
        { x: 0, y: 0 },
        { x: 12, y: 0 },
      ],
      thickness: 1,
      reach: 1,
      bottom: 0,
      top: 8.2,
    },
    audit: { length: 12, layers: Array.from({ length: 41 }, (_, i) => layer(i + 1)) },
    wanted: { from: 'file', count: 2, countOf: 'lines', each: 0.42, thickness: 0.84, depth: 6 },
    grade: 'fail',
    findings,
    rows: [],
    changes: [],
    ...changes,
  };
}

function said(finding: LaidFinding, unit: 'mm' | 'inch' = 'mm'): string {
  return plain(plainly(findingSaid(finding, judgedWith([finding]), unit).said));
}

const found = (kind: LaidFinding['kind'], more: Partial<LaidFinding> = {}): LaidFinding => ({
  kind,
  grade: 'caution',
  layers: [],
  count: 0,
  ...more,
});

describe('layers', () => {
  it('are said as runs', () => {
    expect(runsText([[9, 14]])).toBe('9 to 14');
    expect(runsText([[1, 2]])).toBe('1 and 2');
    expect(
      runsText([
        [3, 3],
        [6, 6],
        [9, 12],
      ]),
    ).toBe('3, 6 and 9 to 12');
  });

  it('are all of them where they are, and counted where they are scattered', () => {
    expect(layersText([[1, 30]], 30)).toBe('all 30 layers');
    expect(layersText([[5, 5]], 30)).toBe('layer 5');
    const scattered = Array.from({ length: 20 }, (_, i) => [2 * i + 1, 2 * i + 1] as const);
    expect(layersText(scattered, 60)).toBe('20 layers');
  });
});

describe('findings', () => {
  it('say what is laid', () => {
    expect(said(found('whole', { grade: 'pass', layers: [[3, 41]], count: 39 }))).toBe(
      'Layers 3 to 41: 2 lines of 0.42 mm.',
    );
    expect(said(found('wider-first', { layers: [[1, 2]], count: 2, share: 0.12 }))).toBe(
      'Layers 1 and 2 are wider by 12 %.',
    );
    expect(said(found('wider-first', { layers: [[1, 1]], count: 1, share: -0.08 }))).toBe(
      'Layer 1 is narrower by 8 %.',
    );
  });

  it('say what to move', () => {
    const starts = found('starts-on-it', { layers: [[9, 14]], count: 6, places: 6, at: { least: 4.5, most: 6 } });
    expect(said(starts)).toBe(
      '6 contours start on the section on layers 9 to 14, 4.50 to 6.00 mm from its first root: move them to the pad.',
    );
    expect(said({ ...starts, layers: [[9, 9]], count: 1, places: 1 })).toContain('1 contour starts on the section');
    expect(said({ ...starts, layers: [[9, 9]], count: 1, places: 1 })).toContain('move it to the pad.');
  });

  it('name the third line thin and say where it is broken', () => {
    const thin = found('thin-line', {
      layers: [[3, 6]],
      count: 4,
      widths: { least: 0.1, most: 0.27 },
      broken: [
        [3, 3],
        [5, 6],
      ],
    });
    expect(said(thin)).toBe(
      'A thin third line of 0.10 to 0.27 mm lies among the others on layers 3 to 6; it is broken on 3: 3, 5 and 6.',
    );
    expect(said(thin, 'inch')).toContain('0.0039 to 0.0106 in');
  });

  it('have a sentence for every kind, with no figure that is none', () => {
    const kinds: readonly LaidFinding['kind'][] = [
      'nothing-laid',
      'starts-on-it',
      'stops-on-it',
      'too-few',
      'too-many',
      'thin-line',
      'open-all-along',
      'open-places',
      'pressed',
      'uneven',
      'wider-first',
      'thickness',
      'depth',
      'runs-across',
      'crossed',
      'no-direction',
      'whole',
      'free-of-starts',
      'as-thick',
      'as-deep',
    ];
    for (const kind of kinds) {
      const bare = said(found(kind, { layers: [[1, 2]], count: 2 }));
      expect(bare).toMatch(/^[A-Z0-9–].*\.$/);
      expect(bare).not.toMatch(/undefined|NaN|expected|actual/);
    }
  });
});

describe('the verdict', () => {
  it('tells the worst of it', () => {
    const judged = judgedWith([
      found('starts-on-it', { grade: 'fail', layers: [[9, 14]], count: 6 }),
      found('thickness', { widths: { least: 1, most: 1 } }),
    ]);
    expect(plain(plainly(placeSaid(judged, 'mm')))).toBe(
      'Contours start on it on 6 of 41 layers and it is 1.00 mm thick where 0.84 mm was wanted.',
    );
    expect(laidHeading(judged)).toBe('Fail: not laid whole and equal');
    expect(laidHeading({ ...judged, wanted: { ...judged.wanted, from: 'joint' } })).toBe(
      'Fail: not laid as the joint wants',
    );
  });

  it('praises what is whole, and counts several', () => {
    const good = judgedWith([], { grade: 'pass' });
    expect(plain(plainly(placeSaid(good, 'mm')))).toContain('2 lines of 0.42 mm');
    expect(tallyText([good, judgedWith([]), judgedWith([])])).toBe('Of three sections two fail and one passes.');
    expect(laidShort(good, 'mm')).toBe('0.84, 2 lines');
  });
});

function row(what: LaidRow['what'], wanted: LaidRow['wanted'], laid: LaidRow['laid'], layers?: number): LaidRow {
  return {
    what,
    grade: 'caution',
    laid,
    ...(wanted !== undefined && { wanted }),
    ...(layers !== undefined && { layers }),
  };
}

describe('what is wanted beside what is laid', () => {
  const judged = judgedWith([]);

  it('is said in counts, lengths and shares', () => {
    expect(wantedText(row('lines', 2, 3), judged, 'mm')).toBe('2');
    expect(laidText(row('lines', 2, { least: 2, most: 3 }), judged, 'mm')).toBe('2 to 3');
    expect(laidText(row('thickness', 0.84, 1), judged, 'inch')).toBe('0.0394');
    expect(laidText(row('spread', 0.1, { least: 0.1, most: 0.42 }), judged, 'mm')).toBe('0.10 to 0.42');
    expect(plain(laidText(row('starts', 'none', 6, 6), judged, 'mm'))).toBe('6 on 6 layers');
    expect(wantedText(row('starts', 'none', 6), judged, 'mm')).toBe('none');
    expect(wantedText(row('depth', undefined, 6), judged, 'mm')).toBe('–');
  });

  it('is of layers where a crease is', () => {
    const crease = judgedWith([], { wanted: { ...judged.wanted, countOf: 'layers' } });
    expect(rowName(row('lines', 2, 2), crease, 'mm')).toBe('Layers through');
    expect(rowName(row('line-width', 0.2, 0.2), crease, 'mm')).toBe('Layer height');
  });

  it('is mended by changes that name their cost', () => {
    const { head, does, costs } = changeSaid(
      { kind: 'lay', lineWidth: 0.5, count: 2, strain: 0.0255, effort: 1.69 },
      judged,
      'mm',
    );
    expect(plain(`${head}. ${does} ${costs}`)).toBe(
      'Or lay 0.50 mm lines. 2 lines fill the 1.00 mm that is there. Costs strain 2.55 %, 1.69 times the effort.',
    );
  });
});

describe('the facts of a file', () => {
  const rows = new Map([...figureRows(TOOLPATH, 'mm'), ...textRows(TOOLPATH)].map(([of, value]) => [of, plain(value)]));

  it('are those of its moves', () => {
    expect(rows.get('Layers')).toBe('1 of 0.24, 29 of 0.20 mm');
    expect(rows.get('Line laid in all')).toBe('2.10 m, 6 000 moves');
    expect(rows.get('Filament')).toContain('1.75 mm thick, by how wide the lines come out');
    expect(rows.get('Filament feed')).toBe('relative (M83)');
    expect(rows.get('Moves')).toBe('6 900 straight, no arcs');
  });

  it('leave out what is not in it', () => {
    expect(rows.has('Checksums')).toBe(false);
    expect(rows.has('Filament by tool')).toBe(false);
  });

  it('say when a file breaks off, and when nothing is laid', () => {
    const cut = {
      ...TOOLPATH,
      text: { ...TEXT, bad: 1, badLines: [{ line: 7102, text: 'G1 X', why: 'bad-number' }] },
    } as const;
    expect(cautionsOf(cut, 'a.gcode', false).map(plain)).toEqual([
      '“a.gcode” breaks off inside its last line, 7 102: what should follow is missing.',
    ]);
    const { box: _, ...milled } = TOOLPATH.figures;
    const says = nothingText({ ...TOOLPATH, figures: milled }, 'a.nc', 'mm');
    expect(says.head).toBe('Nothing is laid');
    expect(says.says).toContain('this looks like a milling file');
  });
});

describe('the report', () => {
  it('holds the file, each section, what is wanted and what to change, as plain text', () => {
    const judged = judgedWith([found('wider-first', { layers: [[1, 2]], count: 2, share: 0.12 })], {
      rows: [{ what: 'lines', grade: 'pass', wanted: 2, laid: 2 }],
      changes: [{ kind: 'start-elsewhere', layers: 6 }],
    });
    const text = plain(
      plainLetter(toolpathReport({ toolpath: TOOLPATH, name: 'a.gcode', bytes: 7, judged: [judged], unit: 'mm' })),
    );
    expect(text).toContain('What a.gcode lays\n\nOne thin section is looked at; the file holds 7 bytes.');
    expect(text).toContain('1, your box, at x 6.0, y 0.0, z 0.0 to 8.2 mm: Fail: not laid whole and equal');
    expect(text).toContain('  Layers 1 and 2 are wider by 12 %.');
    expect(text).toContain('  Lines across: wanted 2, laid 2.');
    expect(text).toContain('  Start contours on the far face of the pad. Clears 6 layers.');
    expect(text).not.toMatch(/undefined|NaN/);
  });
});
