/** Words, numbers, lines and what a printer does with them, one by one. */
import { describe, expect, it } from 'vitest';
import { JUMP, RAPID, TOOL } from '../../../src/core/inspect/toolpath/moves.ts';
import { GcodeReader } from '../../../src/files/gcode/gcodeReader.ts';
import { MOST_TOLD } from '../../../src/files/gcode/gcodeText.ts';
import { expectClose } from '../../support/close.ts';
import { withChecksum } from '../../support/gcodeDialects.ts';
import { bytesOfText, readGcode } from '../../support/readGcode.ts';

const places = (text: string) => readGcode(text).moves.map(({ x, y, z }) => [x, y, z]);
const lastPlace = (text: string) => places(text).at(-1);
const feeds = (text: string) => readGcode(text).moves.map(({ feed }) => feed);
const laid = (text: string) => readGcode(text).moves.map((move) => move.laid);
const why = (text: string) => readGcode(text).text.badLines.map((line) => line.why);

describe('numbers', () => {
  it.each([
    ['X1', 1],
    ['X01.50', 1.5],
    ['X.5', 0.5],
    ['X5.', 5],
    ['X-0.25', -0.25],
    ['X+12', 12],
    ['X -  3', -3],
    ['X\t7', 7],
    ['x8', 8],
    ['X1234567', undefined],
    ['X123456.789', 123_456.789],
    ['X123.4567', 123.4567],
    ['X1234.5678', 1234.5678],
    ['X0.1234567', 0.123_456_7],
    ['X0.12345678', 0.123_456_78],
    ['X12.123456789012', 12.123_456_789_012],
    ['X0.30000000000000004', 0.300_000_000_000_000_04],
    ['X000000000000000000001', 1],
    ['X1000000', 1e6],
    ['X-1000000', -1e6],
    ['X1000000.001', undefined],
    [`X${'9'.repeat(400)}`, undefined],
    [`X0.${'3'.repeat(400)}`, 1 / 3],
    ['X', undefined],
    ['X-', undefined],
    ['X.', undefined],
    ['X--1', undefined],
    ['X1.2.3', undefined],
    ['X1-2', undefined],
    ['Xnan', undefined],
  ])('%s is %s', (word, number) => {
    const { text, moves } = readGcode(`G1 Y1 ${word}\nG1 Y2\n`);
    const [first] = moves;
    if (number === undefined) {
      expect(text.badLines).toEqual([{ line: 1, text: `G1 Y1 ${word}`.slice(0, 80), why: 'bad-number' }]);
      expect(moves).toMatchObject([{ x: 0, y: 2 }]);
    } else {
      expect(text.bad).toBe(0);
      // Exact, as the language itself reads the number.
      expect(first!.x).toBe(number);
    }
  });

  it('E is a word and never an exponent', () => {
    expect(readGcode('M83\nG1 X1E5').moves).toMatchObject([{ x: 1, feed: 5 }]);
    expect(readGcode('M83\nG1X1.5E-2').moves).toMatchObject([{ x: 1.5, feed: -2 }]);
  });
});

describe('words and lines', () => {
  it('may be tight, in small letters, apart, in any order', () => {
    expect(places('g1x1y2z3\n  G 1  X 4 Y5\nY6 G1 X7\n')).toEqual([
      [1, 2, 3],
      [4, 5, 3],
      [7, 6, 3],
    ]);
  });

  it('several G words hold, with one motion', () => {
    expect(places('G90 G1 X1\nG91 G0 X1\nG20 G1 X1\nG40 G49 G54 G1 X1\nG1 G94 X1')).toEqual([
      [1, 0, 0],
      [2, 0, 0],
      [27.4, 0, 0],
      [52.8, 0, 0],
      [78.199_999_999_999_99, 0, 0],
    ]);
  });

  it('G01, G1. and G1.0 are G1', () => {
    const { text } = readGcode('G01 X1\nG001 X2\nG1. X3\nG1.0 X4\nG00 X5');
    expect(text.moves).toEqual([1, 4, 0, 0]);
  });

  it('G words that are not known are passed over, with the words beside them', () => {
    const { text, moves } = readGcode('G1 X1\nG29 X9\nG5 X9 Y9\nG54 X3\nG4 P100 X5\nG38.2 Z-5\n');
    expect(moves.length).toBe(1);
    expect(text).toMatchObject({ commands: 6, bad: 0 });
  });

  it('after M words names and texts follow', () => {
    const { text, moves } = readGcode('M117 G1 X5 100% done!\nM23 part(1.g\nM118 E1 X2\nM104 S200\nM82 X5\n');
    expect(moves).toEqual([]);
    expect(text).toMatchObject({ commands: 5, bad: 0 });
  });

  it('comments, empty lines, marks at the head and lines to be left out are passed over', () => {
    const lines = [
      '%',
      '; G1 X1',
      '(G1 X1)',
      '',
      '  ',
      '/G1 X1',
      'G1 (X5) X1 (to (the) ; X6',
      'G1 X2;X9',
      '%',
      'G1 Y1 (open',
    ];
    const { text, moves } = readGcode(lines.join('\n'));
    expect(text).toMatchObject({ lines: 10, commands: 3, bad: 0 });
    expect(moves.at(-1)).toMatchObject({ x: 2, y: 1, line: 10 });
  });

  it('commands by a name are counted', () => {
    const { text, moves } = readGcode('SET_X FOO=1 X=5\nEXCLUDE_OBJECT_START NAME=a\nN5 PRINT_START\nT_on\n');
    expect(text).toMatchObject({ named: 4, commands: 4, bad: 0 });
    expect(moves).toEqual([]);
  });

  it('lines end in any way, the last in none; a mark at the head is none of it', () => {
    expect(lastPlace('\uFEFFG1 X1\r\nG1 X2\r\n\r\nG1 X3')).toEqual([3, 0, 0]);
    expect(readGcode('\uFEFFG1 X1\r\nG1 X2').text).toMatchObject({ lines: 2, commands: 2, bad: 0 });
    expect(readGcode('').text).toMatchObject({ lines: 0, bytes: 0 });
    expect(readGcode('\n\n').text.lines).toBe(2);
  });

  it('what is no word is counted and told, and the rest goes on', () => {
    const { text, moves } = readGcode('G1 X1\n?\nG1 X2 = 5\n5 G1\nG\nX\n$H\nG1 X3\n');
    expect(text.badLines.map(({ line, why: of }) => [line, of])).toEqual([
      [2, 'no-word'],
      [3, 'no-word'],
      [4, 'bad-number'],
      [5, 'bad-number'],
      [6, 'bad-number'],
      [7, 'no-word'],
    ]);
    expect(moves.map(({ x }) => x)).toEqual([1, 3]);
  });

  it('only the first bad lines are told, all are counted', () => {
    const { text } = readGcode('?\n'.repeat(1000));
    expect([text.bad, text.badLines.length, text.badLines.at(-1)!.line]).toEqual([1000, MOST_TOLD, MOST_TOLD]);
  });

  it('what is told of a bad line is its beginning', () => {
    const [line] = readGcode(`  ?${'é'.repeat(100)}\n`).text.badLines;
    expect(line!.text.length).toBeLessThanOrEqual(80);
    expect(line!.text.startsWith('?éé')).toBe(true);
  });

  it.each([
    ['65 536 bytes are a line', 65_536, 0],
    ['one more is too long', 65_537, 1],
    ['a million are', 1_000_000, 1],
  ])('%s, however it is cut', (_, length, bad) => {
    const text = `G1 X1\nG1 X2 ;${'x'.repeat(length - 7)}\nG1 Y3\n`;
    const bytes = bytesOfText(text);
    const whole = readGcode(bytes);
    expect(whole.text).toMatchObject({ bad, lines: 3 });
    expect(whole.moves.at(-1)).toMatchObject({ x: bad ? 1 : 2, y: 3, line: 3 });
    for (const pieces of [[1000], [65_536], [65_545, 3], [7, bytes.length]]) {
      expect(readGcode(bytes, { pieces })).toEqual(whole);
    }
  });
});

describe('ways to go without a word for how', () => {
  it('go on as before, in rapid moves too', () => {
    const { text, moves } = readGcode('G0 X1\nX2\nG1 Y1\nE2\nF600\nG92 E0\nX3 E1\nG28\nX4\n');
    expect(text).toMatchObject({ modal: 4, moves: [2, 4, 0, 0], bad: 0 });
    expect(moves.filter(({ flags }) => flags & RAPID).map(({ x }) => x)).toEqual([1, 2]);
    expect(moves.at(-1)).toMatchObject({ x: 4, y: 0 });
  });

  it('go nowhere before there has been one', () => {
    expect(why('X1\nG90\nX2')).toEqual(['no-word', 'no-word']);
  });
});

describe('places', () => {
  it('by how far they go, and back to where they are', () => {
    expect(places('G91\nG1 X1\nG1 X1 Y2\nG90\nG1 X1\n').slice(1)).toEqual([
      [2, 2, 0],
      [1, 2, 0],
    ]);
  });

  it('in inches and in mm again', () => {
    expect(places('G20\nG1 X1\nG21\nG1 X1\n')).toEqual([
      [25.4, 0, 0],
      [1, 0, 0],
    ]);
  });

  it('called anew stay where they are', () => {
    const text = 'G1 X10 Y20 Z5\nG92 X0\nG1 X5 Y21\nG92 Z1\nG1 Z2\nG92\nG1 X1 Y1 Z1\nG92.1\nG1 X1 Y1 Z1';
    expect(places(text)).toEqual([
      [10, 20, 5],
      [15, 21, 5],
      [15, 21, 6],
      [16, 22, 7],
      [1, 1, 1],
    ]);
    expect(readGcode(text).text).toMatchObject({ resets: 3, feedResets: 1 });
  });

  it('called anew in inches', () => {
    const [x] = lastPlace('G20\nG1 X1\nG92 X2\nG1 X3')!;
    expectClose(x!, 50.8, { rel: 1e-15, because: 'round-off' });
  });

  it('called what nothing can be called are told', () => {
    expect(why(`G92 X${'9'.repeat(400)}\nG92 E9999999`)).toEqual(['bad-number', 'bad-number']);
  });

  it('homing jumps to 0, of the named axes or all, whatever they were called', () => {
    const { moves } = readGcode('G1 X10 Y20 Z5\nG92 X50 Y50\nG28 X\nG1 X1\nG28\nG1 Y1');
    expect(moves.map(({ x, y, z, flags, length }) => [x, y, z, flags & JUMP, length])).toEqual([
      [10, 20, 5, 0, Math.hypot(10, 20, 5)],
      [0, 20, 5, JUMP, 0],
      [1, 20, 5, 0, 1],
      [0, 0, 0, JUMP, 0],
      [0, 1, 0, 0, 1],
    ]);
  });
});

describe('filament', () => {
  it('is told in all, unless G91 or M83 holds', () => {
    expect(feeds('G1 E1\nG1 E3\nM83\nG1 E1\nG1 E1\nM82\nG1 E6\nG91\nG1 E2\nG90\nG1 E9')).toEqual([1, 2, 1, 1, 1, 2, 1]);
  });

  it('is told anew by G92', () => {
    expect(feeds('G1 E5\nG92 E0\nG1 E1\nG92 E10\nG1 E11')).toEqual([5, 1, 1]);
  });

  it('in inches', () => {
    expect(feeds('G20\nG1 E1\nG92 E0\nG1 E2')).toEqual([25.4, 50.8]);
  });

  it('that had been drawn back is pushed on first: nothing comes out by it', () => {
    const text = 'M83\nG1 X1 E2\nG1 E-1.5\nG1 X2 E-0.5\nG1 X3 E0.75\nG1 E0.75\nG1 X4 E1\nG1 X5 E1';
    expect(laid(text)).toEqual([2, 0, 0, 0, 0, 0.5, 1]);
    expect(readGcode(text).figures).toMatchObject({
      filament: 3.5,
      feedForward: 5.5,
      feedNet: 3.5,
      filamentOnMoves: 4.75,
      printingMoves: 4,
      travelMoves: 1,
      feedOnlyMoves: 2,
      retractions: 1,
    });
  });

  it('is owed over a G92, and by each tool for itself', () => {
    expect(laid('G1 X1 E1\nG1 E0\nG92 E0\nG1 X2 E2')).toEqual([1, 0, 1]);
    expect(laid('M83\nT0\nG1 E-1\nT1\nG1 X1 E1\nT0\nG1 X2 E1\nG1 X3 E1')).toEqual([0, 1, 0, 1]);
  });

  it('in volumes is as long as the asked diameter makes it', () => {
    const mm3 = Math.PI * 0.875 ** 2;
    const text = `M200 D1.75\nG1 E${mm3.toFixed(12)}\nM200 D0\nG1 E${(mm3 + 1).toFixed(12)}\n`;
    const because = 'twelve decimals in the file';
    for (const [i, feed] of feeds(text).entries()) expectClose(feed, [1, 1][i]!, { abs: 1e-11, because });
    expect(readGcode(text).text.isEver.volumetric).toBe(true);
    // A file may tell any diameter: what it asks for is a volume.
    expectClose(readGcode(`M200 D3\nG1 E10`, { diameter: 2 }).moves[0]!.feed, 10 / Math.PI, {
      rel: 1e-12,
      because: 'round-off',
    });
    expectClose(readGcode('G20\nM200 S1\nG1 E10', { diameter: 2 }).moves[0]!.feed, 10 / Math.PI, {
      rel: 1e-12,
      because: 'round-off',
    });
    expect(feeds('M200 D1.75\nM200 S0\nG1 E1')).toEqual([1]);
  });

  it('comes out more or less by a flow, which changes nothing else', () => {
    const { text, moves, figures } = readGcode(
      'M83\nM221 S50\nG1 X1 E2\nM221 S100\nG1 X2 E2\nM221\nM221 S-5\nG1 X3 E1',
    );
    expect(moves.map(({ feed, laid: out }) => [feed, out])).toEqual([
      [2, 1],
      [2, 2],
      [1, 1],
    ]);
    expect([text.isEver.flow, figures.filament, figures.layers[0]!.laid]).toEqual([true, 5, 4]);
    expect(readGcode('M221 S100\nG1 X1').text.isEver.flow).toBe(false);
  });

  it('drawn back by the firmware is counted; G10 and G11 with words of their own are something else', () => {
    const { text } = readGcode('G10\nG1 X1\nG11\nG10 P1 S200\nG10 L2 P1 X5\nG10 S1\n');
    expect(text).toMatchObject({ firmwareRetractions: 2, firmwareRestores: 1, bad: 0 });
  });
});

describe('tools', () => {
  it('are named, and changed from the second on', () => {
    const { text, moves, figures } = readGcode('T1\nM83\nG1 X1 E1\nT1\nG1 X2 E1\nT0\nG1 X3 E2\nT-1\nT99\nT1.5\n');
    expect(text).toMatchObject({ tools: [0, 1], toolChanges: 1 });
    expect(moves.map(({ flags }) => flags / TOOL)).toEqual([1, 1, 0]);
    expect(figures.byTool).toEqual([
      { tool: 0, filament: 2 },
      { tool: 1, filament: 2 },
    ]);
  });
});

describe('checksums', () => {
  it('are compared, and the line is used whatever they say', () => {
    const lines = [withChecksum('N1 G1 X1'), 'N2 G1 X2*1', 'N3 G1 X3*', 'G1 X4*7', withChecksum('N4 M117 3*4=12')];
    const { text, moves } = readGcode(lines.join('\n'));
    expect(moves.map(({ x }) => x)).toEqual([1, 2, 3, 4]);
    expect(text).toMatchObject({ numbered: 4, checksums: 5, badChecksums: 3, bad: 0 });
  });

  it('count the bytes of the line, not the mark before it', () => {
    expect(readGcode(`\uFEFF${withChecksum('N1 G1 X1')}\r\n`).text).toMatchObject({ checksums: 1, badChecksums: 0 });
  });

  it('by hand: N1 and a blank are 0x5F, G1 0x76, and so on', () => {
    // 4E ^ 31 ^ 20 = 5F; ^ 47 ^ 31 = 29; ^ 20 ^ 58 ^ 31 = 60.
    expect(readGcode('N1 G1 X1*96').text.badChecksums).toBe(0);
  });
});

describe('a reader', () => {
  it('tells lines and bytes as they are, and hands on moves in batches', () => {
    const counts: number[] = [];
    const reader = new GcodeReader({ filamentDiameter: 1.75 }, { take: (_, count) => counts.push(count) });
    const bytes = bytesOfText('G91\nG1 X1\n'.repeat(3000));
    reader.feed(bytes);
    expect(reader.end()).toMatchObject({ lines: 6000, commands: 6000, bytes: bytes.length, moves: [0, 3000, 0, 0] });
    expect(counts).toEqual([1024, 1024, 952]);
  });
});
