/** Archives that lie, burst or climb out: each is refused before it costs anything. */
import { deflateSync, zipSync, type Zippable } from 'fflate';
import { describe, expect, it } from 'vitest';
import { bytesOf, modelXml, objectXml, packaged, packagedModel, relsXml, threemf } from '../../support/meshWriters.ts';
import { boxMesh } from '../../support/meshes.ts';
import { readPart, refused } from '../../support/readPart.ts';

const BOX = boxMesh(1, 2, 3);
const MODEL = modelXml(objectXml(1, BOX), '<item objectid="1"/>');
const PART = '3D/3dmodel.model';

/** Where the list of an archive says what it says of a file. */
function listed(bytes: Uint8Array, name: string): number {
  const text = Buffer.from(bytes).toString('latin1');
  const at = text.lastIndexOf(name) - 46;
  expect(text.slice(at, at + 4)).toBe('PK\u0001\u0002');
  return at;
}

function changed(bytes: Uint8Array, change: (view: DataView, at: number) => void, name = PART): Uint8Array {
  change(new DataView(bytes.buffer, bytes.byteOffset), listed(bytes, name));
  return bytes;
}

const FIELD = { flags: 8, method: 10, crc: 16, packed: 20, size: 24, local: 42 };
const set = (field: keyof typeof FIELD, value: number) => (view: DataView, at: number) =>
  field === 'flags' || field === 'method'
    ? view.setUint16(at + FIELD[field], value, true)
    : view.setUint32(at + FIELD[field], value, true);

describe('an archive', () => {
  it.each([0, 1, 6, 9] as const)('packed at level %i is read', (level) => {
    const bytes = zipSync({ '_rels/.rels': bytesOf(relsXml()), [PART]: [bytesOf(MODEL), { level }] });
    expect(readPart(bytes, 'part.stl')).toMatchObject({ format: '3MF', unit: 'millimetre' });
  });

  it('with a comment at its end is read', () => {
    const bytes = Uint8Array.of(...threemf(BOX), ...bytesOf('PK and more of it'));
    new DataView(bytes.buffer).setUint16(bytes.length - 17 - 2, 17, true);
    expect(readPart(bytes).mesh.corners.length).toBe(36);
  });

  it('that writes its sizes in 64 bits is read', () => {
    expect(readPart(wideArchive()).mesh.corners.length).toBe(36);
  });

  it.each([
    ['that is locked', set('flags', 1), 'unreadable', /“3D\/3dmodel.model” in the archive is locked with a password/],
    ['packed in another way', set('method', 12), 'unreadable', /packed by method 12, and 0 and 8 are read/],
    ['with a wrong check sum', set('crc', 7), 'file-damaged', /check sum is wrong/],
    ['that is longer than it says', set('size', 99), 'file-damaged', /goes on past the 99 bytes that its list states/],
    ['that is shorter than it says', set('size', 99_999), 'file-damaged', /check sum is wrong/],
    ['packed bytes that end too early', set('packed', 99), 'file-damaged', /cannot be unpacked|check sum/],
    ['packed bytes beyond the end', set('packed', 99_999), 'file-damaged', /damaged or cut off at “3D\/3dmodel.model”/],
    ['that is elsewhere', set('local', 3), 'file-damaged', /damaged or cut off at “3D\/3dmodel.model”/],
    ['that is beyond the end', set('local', 999_999), 'file-damaged', /damaged or cut off/],
    ['with a wide size that is missing', set('size', 0xffffffff), 'file-damaged', /damaged or cut off/],
  ] as const)('with a file %s is refused', (_, change, code, said) => {
    const problem = refused(changed(threemf(BOX), change));
    expect(problem.code).toBe(code);
    expect(problem.message).toMatch(said);
  });

  it('whose packed bytes are damaged is refused', () => {
    const bytes = threemf(BOX);
    bytes.fill(0xff, 400, 440);
    expect(refused(bytes).message).toMatch(/cannot be unpacked|check sum is wrong/);
  });

  it('that is cut off is refused wherever it is cut', () => {
    const bytes = threemf(BOX);
    for (let length = 4; length < bytes.length; length += 1) {
      expect(refused(bytes.subarray(0, length)).message).toMatch(/cut off|no list at its end/);
    }
  });

  it.each(['/3D/3dmodel.model', '../3dmodel.model', '3D/../../x.model', 'C:/x.model', '3D\\..\\..\\x', '\\\\host\\x'])(
    'with a file called %s is refused',
    (name) => {
      expect(refused(packaged({ [PART]: bytesOf(MODEL), [name]: bytesOf('x') })).message).toMatch(
        /points out of the archive/,
      );
    },
  );

  it('that holds a file twice is refused', () => {
    const bytes = packaged({ [PART]: bytesOf(MODEL), '3D/3dmodex.model': bytesOf(MODEL) });
    const at = listed(bytes, '3D/3dmodex.model');
    bytes[at + 46 + 9] = 'l'.charCodeAt(0);
    expect(refused(bytes).message).toMatch(/holds “3D\/3dmodel.model” twice/);
  });

  it('that holds a part twice but for the size of its letters is refused', () => {
    const problem = refused(packaged({ [PART]: bytesOf(MODEL), '3D/3DModel.model': bytesOf(MODEL) }));
    expect(problem.message).toMatch(/holds “3D\/3DModel.model” twice/);
  });

  it('that is no 3MF says so', () => {
    expect(refused(zipSync({ 'part.stl': bytesOf('solid\n') }), 'part.3mf')).toMatchObject({ code: 'not-our-file' });
    expect(refused(zipSync({}), 'part.3mf').message).toMatch(/a zip archive but no 3MF part/);
  });

  it('of too many files is refused', () => {
    const files: Zippable = Object.fromEntries(Array.from({ length: 10_001 }, (_, i) => [`f${i}`, new Uint8Array()]));
    expect(refused(packaged(files))).toMatchObject({ code: 'too-large', value: 10_002, limit: 10_000 });
  });
});

/** As a program writes it that does not know its sizes beforehand: all numbers of the list in 64 bits. */
function wideArchive(): Uint8Array {
  const files = Object.entries({ '_rels/.rels': relsXml(), [PART]: MODEL });
  const plain = packaged({ [PART]: bytesOf(MODEL) });
  const parts: Uint8Array[] = [];
  const lists: Uint8Array[] = [];
  let at = 0;
  for (const [name, text] of files) {
    const [packed, size] = [deflateSync(bytesOf(text)), bytesOf(text).length];
    const crc = new DataView(plain.buffer, plain.byteOffset).getUint32(listed(plain, name) + FIELD.crc, true);
    const local = numbers(
      [4, 0x04034b50],
      [2, 45],
      [2, 0],
      [2, 8],
      [4, 0],
      [4, crc],
      [4, packed.length],
      [4, size],
      [2, name.length],
      [2, 0],
    );
    const wide = numbers([2, 1], [2, 24], [8, size], [8, packed.length], [8, at]);
    const all = 0xffffffff;
    lists.push(
      numbers(
        [4, 0x02014b50],
        [2, 45],
        [2, 45],
        [2, 0],
        [2, 8],
        [4, 0],
        [4, crc],
        [4, all],
        [4, all],
        [2, name.length],
        [2, wide.length + 6],
        [2, 0],
        [2, 0],
        [2, 0],
        [4, 0],
        [4, all],
      ),
      bytesOf(name),
      numbers([2, 99], [2, 2], [2, 7]),
      wide,
    );
    parts.push(local, bytesOf(name), packed);
    at += local.length + name.length + packed.length;
  }
  const list = joined(lists);
  const end64 = numbers(
    [4, 0x06064b50],
    [8, 44],
    [2, 45],
    [2, 45],
    [4, 0],
    [4, 0],
    [8, 2],
    [8, 2],
    [8, list.length],
    [8, at],
  );
  const locator = numbers([4, 0x07064b50], [4, 0], [8, at + list.length], [4, 1]);
  const end = numbers(
    [4, 0x06054b50],
    [2, 0],
    [2, 0],
    [2, 0xffff],
    [2, 0xffff],
    [4, 0xffffffff],
    [4, 0xffffffff],
    [2, 0],
  );
  return joined([...parts, list, end64, locator, end]);
}

const joined = (parts: readonly Uint8Array[]): Uint8Array => new Uint8Array(Buffer.concat(parts));

function numbers(...fields: readonly (readonly [number, number])[]): Uint8Array {
  return joined(
    fields.map(([width, value]) => Uint8Array.from({ length: width }, (_, i) => Math.floor(value / 256 ** i) % 256)),
  );
}

const zeros = (megabytes: number) => new Uint8Array(megabytes * 1_000_000);

describe('an archive made to burst', () => {
  it('is refused by the sizes that it states, before anything is unpacked', () => {
    const problem = refused(packagedModel(zeros(50)));
    expect(problem).toMatchObject({ code: 'too-large', value: 50_000_000 });
    expect(problem.message).toMatch(/would grow from \d\d \d{3} to 50 000 000 bytes, more than 200 times/);
  });

  it('by many files is refused by their sum', () => {
    const bytes = packaged({ [PART]: bytesOf(MODEL), a: bytesOf('x'), b: bytesOf('x') });
    for (const name of ['a', 'b']) changed(bytes, set('size', 300_000_000), `\0${name}`.slice(1));
    expect(refused(bytes)).toMatchObject({ code: 'too-large', limit: 600_000_000 });
  });

  it('by a size that is a lie is stopped where the lie ends', () => {
    const bytes = changed(packagedModel(zeros(50)), set('size', 400_000));
    expect(refused(bytes).message).toMatch(/goes on past the 400 000 bytes that its list states/);
  });

  it('by text without an end in the XML is stopped', () => {
    // Random letters shrink too little for the ratio to stop them.
    let state = 1;
    const noise = Array.from({ length: 1_000_000 }, () => {
      state = Math.imul(state, 48_271) % 2_147_483_647;
      return String.fromCharCode(97 + ((state >>> 7) % 26));
    }).join('');
    const problem = refused(packagedModel(MODEL.replace('<build>', `<build a="${noise.repeat(18)}">`)));
    expect(problem).toMatchObject({ code: 'too-large' });
    expect(problem.message).toMatch(/characters without a tag/);
  });
});
