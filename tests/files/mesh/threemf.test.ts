import { strToU8 } from 'fflate';
import { describe, expect, it } from 'vitest';
import { MM_IN } from '../../../src/core/inspect/lengthUnit.ts';
import { expectClose } from '../../support/close.ts';
import { meshSums } from '../../support/meshSums.ts';
import {
  bytesOf,
  CORE,
  meshXml,
  modelXml,
  objectXml,
  packaged,
  packagedModel,
  PRODUCTION,
  relsXml,
} from '../../support/meshWriters.ts';
import { boxMesh } from '../../support/meshes.ts';
import { readPart, refused } from '../../support/readPart.ts';

const BOX = boxMesh(1, 2, 3);
const OBJECT = objectXml(1, BOX, 'name="box"');
const ITEM = '<item objectid="1"/>';
const model = (resources = OBJECT, items = ITEM, attributes?: string) =>
  packagedModel(modelXml(resources, items, attributes));
const moved = (transform: string) => model(OBJECT, `<item objectid="1" transform="${transform}"/>`);
const group = (id: number, ...components: readonly string[]) =>
  `<object id="${id}" name="group ${id}"><components>${components.join('')}</components></object>`;
const part = (id: number | string, more = '') => `<component objectid="${id}" ${more}/>`;
const mesh = (vertices: string, triangles: string) =>
  `<object id="1"><mesh><vertices>${vertices}</vertices><triangles>${triangles}</triangles></mesh></object>`;
const VERTICES = '<vertex x="0" y="0" z="0"/><vertex x="1" y="0" z="0"/><vertex x="0" y="1" z="0"/>';
const TRIANGLE = '<triangle v1="0" v2="1" v3="2"/>';

const round = (numbers: readonly number[]) => numbers.map((value) => Number(value.toFixed(9)) + 0);
const boxOf = (file: Uint8Array) => {
  const { min, max } = meshSums(readPart(file).mesh);
  return [round(min), round(max)];
};

describe('the unit of a 3MF model', () => {
  it.each([
    ['micron', 'micron'],
    ['millimeter', 'millimetre'],
    ['centimeter', 'centimetre'],
    ['meter', 'metre'],
    ['inch', 'inch'],
    ['foot', 'foot'],
  ] as const)('%s is told, and the lengths are left in it', (said, unit) => {
    const read = readPart(model(OBJECT, ITEM, `unit="${said}"`));
    expect(read.unit).toBe(unit);
    expect(meshSums(read.mesh).max).toEqual([1, 2, 3]);
  });

  it('is the millimetre where none is said, and none but these', () => {
    expect(readPart(model(OBJECT, ITEM, '')).unit).toBe('millimetre');
    expect(refused(model(OBJECT, ITEM, 'unit="furlong"')).message).toMatch(/line 2, gives lengths in “furlong”/);
    expect(refused(model(OBJECT, ITEM, 'unit="constructor"')).message).toMatch(/“constructor”/);
  });
});

const boxWithin = (inner: string, outer: string) =>
  boxOf(model(OBJECT + group(2, part(1, inner)), `<item objectid="2" ${outer}/>`));

describe('transforms of 3MF', () => {
  it('take points as rows: the last three numbers move, the rows are where the axes go', () => {
    expect(boxOf(moved('1 0 0 0 1 0 0 0 1 10 20 30'))).toEqual([[10, 20, 30], [11, 22, 33]]); // prettier-ignore
    // x goes along y, y against x: a quarter turn about z.
    expect(boxOf(moved('0 1 0 -1 0 0 0 0 1 0 0 0'))).toEqual([[-2, 0, 0], [0, 1, 3]]); // prettier-ignore
    expect(boxOf(moved('2 0 0 0 1 0 0 0 1 0 0 0'))).toEqual([[0, 0, 0], [2, 2, 3]]); // prettier-ignore
  });

  it('of components come before those of what they are in', () => {
    const turned = 'transform="0 1 0 -1 0 0 0 0 1 0 0 0"';
    const shifted = 'transform="1 0 0 0 1 0 0 0 1 10 0 0"';
    expect(boxWithin(shifted, turned)).toEqual([[-2, 10, 0], [0, 11, 3]]); // prettier-ignore
    expect(boxWithin(turned, shifted)).toEqual([[8, 0, 0], [10, 1, 3]]); // prettier-ignore
  });

  it.each([
    ['in one axis', '-1 0 0 0 1 0 0 0 1 0 0 0'],
    ['in three', '-1 0 0 0 -1 0 0 0 -1 5 5 5'],
    ['by two axes that change places', '0 1 0 1 0 0 0 0 1 0 0 0'],
  ])('that mirror %s leave the outside outside', (_, transform) => {
    expectClose(meshSums(readPart(moved(transform)).mesh).volume, 6, { rel: 1e-12, because: 'round-off' });
  });

  it('that mirror twice wind as before', () => {
    const mirror = 'transform="1 0 0 0 1 0 0 0 -1 0 0 0"';
    const read = readPart(model(OBJECT + group(2, part(1, mirror)), `<item objectid="2" ${mirror}/>`));
    expect(read.mesh).toEqual(readPart(model()).mesh);
  });

  it.each([
    ['0 0 0 0 1 0 0 0 1 0 0 0', /line 21, presses object “1” flat.*singular/],
    ['1 2 3 2 4 6 0 0 1 0 0 0', /singular/],
    ['1 0 0 0 1 0 0 0 1 0 0', /moves object “1” by “1 0 0.*”, where twelve numbers belong/],
    ['1 0 0 0 1 0 0 0 1 0 0 0 0', /twelve numbers/],
    ['1 0 0 0 1 0 0 0 1 0 0 x', /twelve numbers/],
    ['1 0 0 0 1 0 0 0 1 0 0 1e999', /twelve numbers/],
    ['1 0 0 0 1 0 0 0 1 0 0 0x1', /twelve numbers/],
    ['', /twelve numbers/],
    ['1 0 0 0 1 0 0 0 1 2e9 0 0', /Vertex 0 of object “1”, where it is placed, has the coordinate “2000000000”/],
  ])('like %j are refused', (transform, said) => expect(refused(moved(transform)).message).toMatch(said));
});

/** Groups in groups round the box, the last of them as deep as is said. */
const chain = (length: number) => OBJECT + Array.from({ length }, (_, i) => group(i + 2, part(i + 1))).join('');
const item = (id: number) => `<item objectid="${id}"/>`;

describe('objects of 3MF', () => {
  it('are placed as often as they are asked for, and named once', () => {
    const twice = model(OBJECT, `${ITEM}<item objectid="1" transform="1 0 0 0 1 0 0 0 1 9 0 0"/>`);
    const read = readPart(twice);
    expect(read.mesh.corners.length).toBe(72);
    expect(read.solids).toEqual(['box']);
  });

  it('that nobody asks for are not read', () => {
    expect(readPart(model(OBJECT + objectXml(2, boxMesh(9, 9, 9)))).mesh.corners.length).toBe(36);
  });

  it('without a name are called like what they are in', () => {
    expect(readPart(model(objectXml(1, BOX) + group(2, part(1)), '<item objectid="2"/>')).solids).toEqual(['group 2']);
  });

  it.each(['support', 'solidsupport', 'other'])('of the type “%s” are left out and named', (type) => {
    const read = readPart(
      model(OBJECT + objectXml(2, BOX, `type="${type}" name="prop"`), `${ITEM}<item objectid="2"/>`),
    );
    expect(read.mesh.corners.length).toBe(36);
    expect(read.solids).toEqual(['box']);
    expect(read.notes).toMatchObject([{ code: 'left-out' }]);
    expect(read.notes[0]!.message).toMatch(`“prop” is of the type “${type}”`);
  });

  it('of the type “surface” are read and named', () => {
    expect(readPart(model(objectXml(1, BOX, 'type="surface"'))).notes[0]!.message).toMatch(
      /“surface”, which need not be closed/,
    );
  });

  it('are refused where nothing to print is left', () => {
    expect(refused(model(objectXml(1, BOX, 'type="support"'))).message).toMatch(
      /asks for 1 item, which come to 0 triangles/,
    );
    expect(refused(model(OBJECT, '')).message).toMatch(/0 triangles/);
  });

  it.each([
    [
      'an unknown object',
      OBJECT,
      '<item objectid="7"/>',
      /line 21, names object “7”, which is not in “3D\/3dmodel.model”/,
    ],
    ['an unknown component', OBJECT + group(2, part(8)), '<item objectid="2"/>', /names object “8”/],
    ['an item without an object', OBJECT, '<item/>', /item that names no object/],
    ['two objects of one id', OBJECT + OBJECT, ITEM, /second object with the id “1”/],
    ['an object without an id', OBJECT.replace('id="1"', ''), ITEM, /object without an id/],
    ['an object in itself', group(1, part(1)), ITEM, /puts object “1” into itself/],
    ['objects in each other', group(1, part(2)) + group(2, part(1)), ITEM, /into itself/],
    [
      'a vertex out of range',
      mesh(VERTICES, TRIANGLE + TRIANGLE.replace('"2"', '"3"')),
      ITEM,
      /Triangle 2 of object “1”, which ends in .* names vertex 3, and the object has 3, counted from 0/,
    ],
    [
      'a vertex below range',
      mesh(VERTICES, TRIANGLE.replace('"2"', '"-1"')),
      ITEM,
      /has “-1” as v3 of triangle 1 of object “1”/,
    ],
    ['a vertex that is no number', mesh(VERTICES, TRIANGLE.replace('"2"', '"0x2"')), ITEM, /has “0x2” as v3/],
    ['a triangle of two', mesh(VERTICES, TRIANGLE.replace('v3="2"', '')), ITEM, /has “nothing” as v3/],
    [
      'a coordinate that is no number',
      mesh(VERTICES.replace('x="1"', 'x="one"'), TRIANGLE),
      ITEM,
      /line 2, vertex 1 of object “1”, has the coordinate “one”/,
    ],
    [
      'a coordinate that is missing',
      mesh(VERTICES.replace('x="1"', ''), TRIANGLE),
      ITEM,
      /“none”, which is not a number/,
    ],
    ['an empty coordinate', mesh(VERTICES.replace('x="1"', 'x=" "'), TRIANGLE), ITEM, /which is not a number/],
    ['a coordinate far out', mesh(VERTICES.replace('x="1"', 'x="1e30"'), TRIANGLE), ITEM, /“1e30”, farther out/],
  ])('with %s are refused', (_, resources, items, said) => {
    const problem = refused(model(resources, items));
    expect(problem.message).toMatch(said);
  });

  it('go no deeper than a limit, however they are reached', () => {
    expect(readPart(model(chain(31), item(32))).mesh.corners.length).toBe(36);
    expect(refused(model(chain(32), item(33)))).toMatchObject({ code: 'too-large', limit: 32 });
    // Inner ones first, so that each is measured before what holds it.
    const all = Array.from({ length: 20_001 }, (_, i) => item(i + 1)).join('');
    expect(refused(model(chain(20_000), all))).toMatchObject({ code: 'too-large', limit: 32 });
  });

  it('in objects that double are counted before they are placed', () => {
    const doubled = Array.from({ length: 30 }, (_, i) => group(i + 2, part(i + 1), part(i + 1))).join('');
    expect(refused(model(OBJECT + doubled, '<item objectid="31"/>'))).toMatchObject({
      code: 'too-large',
      value: 12 * 2 ** 30,
    });
    const empty = '<object id="1"/>';
    expect(refused(model(empty + doubled, '<item objectid="31"/>')).message).toMatch(/places 2 147 483 647 objects/);
  });
});

const otherPart = (inside: string, unit = 'millimeter') => bytesOf(modelXml(inside, '', `unit="${unit}"`));

describe('the production extension', () => {
  const P = `xmlns:p="${PRODUCTION}" requiredextensions="p"`;
  const files = (root: string, items: string, other: Uint8Array) =>
    packaged({ '3D/3dmodel.model': bytesOf(modelXml(root, items, P)), '3D/Objects/a b.model': other });

  it('places objects of another model part, by items and by components', () => {
    const path = 'p:path="/3D/Objects/a b.model"';
    const file = files(
      group(1, part(1, path)),
      `<item objectid="1"/><item objectid="1" ${path} transform="1 0 0 0 1 0 0 0 1 9 0 0"/>`,
      otherPart(OBJECT),
    );
    const read = readPart(file);
    expect(read.mesh.corners.length).toBe(72);
    expect(read.solids).toEqual(['box']);
    expect(boxOf(file)).toEqual([[0, 0, 0], [10, 2, 3]]); // prettier-ignore
  });

  it.each(['/3D/Objects/a%20b.model', '/3d/objects/A B.MODEL', '3D/Objects/a b.model'])('finds %s', (path) => {
    expect(readPart(files('', `<item objectid="1" p:path="${path}"/>`, otherPart(OBJECT))).mesh.corners.length).toBe(
      36,
    );
  });

  it('takes each part in its own unit, with what is moved in it', () => {
    const inner = otherPart(OBJECT + group(2, part(1, 'transform="1 0 0 0 1 0 0 0 1 1 0 0"')), 'inch');
    const file = files(
      '',
      '<item objectid="2" p:path="/3D/Objects/a b.model" transform="1 0 0 0 1 0 0 0 1 1 0 0"/>',
      inner,
    );
    expect(boxOf(file)).toEqual([[26.4, 0, 0], [51.8, 50.8, 76.2]]); // prettier-ignore
    expect(MM_IN.inch).toBe(25.4);
  });

  it.each([
    ['/3D/none.model', /line 3, names “\/3D\/none.model”, which is not in the package/],
    ['/3D/../../etc/passwd', /which is not inside the package/],
    ['/3D/%2e%2e/%2e%2e/x', /which is not inside the package/],
    ['//host/x.model', /which is not inside the package/],
    ['file:///x.model', /which is not inside the package/],
    ['C:\\\\x.model', /which is not inside the package/],
  ])('refuses the path %s', (path, said) => {
    expect(refused(files('', `<item objectid="1" p:path="${path}"/>`, otherPart(OBJECT))).message).toMatch(said);
  });

  it('refuses a path in a part that is not the first', () => {
    const other = bytesOf(
      modelXml(OBJECT + group(2, part(1, 'p:path="/3D/3dmodel.model"')), '', `xmlns:p="${PRODUCTION}"`),
    );
    expect(refused(files('', '<item objectid="2" p:path="/3D/Objects/a b.model"/>', other)).message).toMatch(
      /a b.model”, line 20, names an object of another model part, which only the first part may/,
    );
  });
});

const BASE = 'http://schemas.microsoft.com/3dmanufacturing';
/** A model that requires an extension and has this of it. */
const using = (space: string, inside = '') =>
  model(OBJECT.replace('</mesh>', `${inside}</mesh>`), ITEM, `xmlns:e="${space}" requiredextensions="e"`);

describe('extensions of 3MF', () => {
  it.each([`${BASE}/material/2015/02`, `${BASE}/trianglesets/2021/07`, PRODUCTION])('%s may be required', (space) => {
    expect(readPart(using(space)).notes).toEqual([]);
  });

  it.each([
    [`${BASE}/beamlattice/2017/02`, 'beamlattice', /lattice of beams is not read/],
    [`${BASE}/slice/2015/07`, 'slicestack', /Slices are not read/],
  ])('%s is noted once, required or not', (space, element, said) => {
    for (const file of [
      using(space, `<e:${element}/><e:${element}/>`),
      using(space),
      model(OBJECT.replace('</mesh>', `<e:${element}/></mesh>`), ITEM, `xmlns:e="${space}"`),
    ]) {
      const { notes } = readPart(file);
      expect(notes).toMatchObject([{ code: 'left-out' }]);
      expect(notes[0]!.message).toMatch(said);
    }
  });

  it.each([`${BASE}/implicit/2023/12`, `${BASE}/securecontent/2019/04`, 'urn:mine'])(
    '%s is refused by its name where it is required',
    (space) => {
      const problem = refused(using(space));
      expect(problem.code).toBe('unreadable');
      expect(problem.message).toContain(space.slice(0, 40));
      expect(readPart(model(OBJECT.replace('</mesh>', '<e:x/></mesh>'), ITEM, `xmlns:e="${space}"`)).notes).toEqual([]);
    },
  );

  it('that is required and not declared is refused', () => {
    expect(refused(model(OBJECT, ITEM, 'requiredextensions="q"')).message).toMatch(/requires the extension “q”/);
  });
});

describe('the XML of 3MF', () => {
  const TEXT = modelXml(OBJECT, ITEM);

  it.each([
    ['a mark at its head', strToU8(`\uFEFF${TEXT}`)],
    ['UTF-16', new Uint8Array(Buffer.from(`\uFEFF${TEXT.replace('UTF-8', 'UTF-16')}`, 'utf16le'))],
    [
      'UTF-16 the other way round',
      new Uint8Array(Buffer.from(`\uFEFF${TEXT.replace('UTF-8', 'UTF-16')}`, 'utf16le').swap16()),
    ],
    ['UTF-16 without a mark', new Uint8Array(Buffer.from(TEXT.replace('UTF-8', 'UTF-16'), 'utf16le'))],
    ['no declaration', strToU8(TEXT.slice(TEXT.indexOf('\n') + 1))],
    ['its own prefix', strToU8(TEXT.replaceAll(/<(\/?)(?=[a-z])/g, '<$1m:').replace('xmlns=', 'xmlns:m='))],
    ['comments', strToU8(TEXT.replaceAll('<vertex', '<!-- <vertex x="x"/> --><vertex'))],
  ])('with %s is the same', (_, bytes) => {
    expect(readPart(packagedModel(bytes)).mesh).toEqual(readPart(model()).mesh);
  });

  const declared = (doctype: string) => TEXT.replace('\n', `\n${doctype}\n`);

  it.each([
    ['a document type', declared('<!DOCTYPE model>'), 'unreadable', /line 2, has a document type, which 3MF forbids/],
    [
      'entities that grow',
      declared('<!DOCTYPE model [<!ENTITY a "aaaaaaaa"><!ENTITY b "&a;&a;&a;&a;">]>').replace(
        'name="box"',
        'name="&b;"',
      ),
      'unreadable',
      /document type/,
    ],
    [
      'an entity from elsewhere',
      declared('<!DOCTYPE model [<!ENTITY a SYSTEM "file:///etc/passwd">]>'),
      'unreadable',
      /document type/,
    ],
    [
      'an entity of nobody',
      TEXT.replace('name="box"', 'name="&b;"'),
      'file-damaged',
      /line 2, is no well-formed XML: undefined entity/,
    ],
    [
      'an element that is not ended',
      TEXT.replace('</mesh>', ''),
      'file-damaged',
      /“3D\/3dmodel.model”, line \d+, is no well-formed XML/,
    ],
    ['an end that is missing', TEXT.slice(0, -20), 'file-damaged', /is no well-formed XML/],
    ['a second root', `${TEXT}<model/>`, 'file-damaged', /is no well-formed XML/],
    ['nothing in it', '', 'file-damaged', /is no well-formed XML/],
    ['a prefix of nobody', TEXT.replace('<build>', '<build q:a="1">'), 'file-damaged', /is no well-formed XML/],
    ['another encoding', TEXT.replace('UTF-8', 'windows-1252'), 'unreadable', /line 1, is encoded as “windows-1252”/],
    ['another root', '<mesh/>', 'unreadable', /has “mesh” of no namespace where a 3MF model has to begin/],
    ['another namespace', TEXT.replace(CORE, 'urn:x'), 'unreadable', /“model” of the namespace “urn:x”/],
    [
      'elements a thousand deep',
      TEXT.replace('<build>', '<build>'.repeat(1000)),
      'too-large',
      /nests elements more than 100 deep/,
    ],
  ] as const)('with %s is refused', (_, text, code, said) => {
    const problem = refused(packagedModel(text));
    expect(problem.code).toBe(code);
    expect(problem.message).toMatch(said);
  });

  it('that is no Unicode is refused', () => {
    const bytes = strToU8(TEXT);
    bytes[TEXT.indexOf('box')] = 0xff;
    expect(refused(packagedModel(bytes)).message).toMatch(/is not the Unicode text that it must be/);
  });

  it('keeps what is longer than a screen out of its messages', () => {
    const long = model(OBJECT, `<item objectid="${'7'.repeat(100_000)}"/>`);
    expect(refused(long).message.length).toBeLessThan(300);
  });

  it('ignores meshes outside of objects', () => {
    expect(readPart(model(meshXml(boxMesh(9, 9, 9)) + OBJECT)).mesh.corners.length).toBe(36);
  });
});

describe('the list of relationships', () => {
  const TEXT = bytesOf(modelXml(OBJECT, ITEM));
  const listed = (rels: string) => packaged({ '_rels/.rels': bytesOf(rels), '3D/other.model': TEXT });

  it.each(['/3D/other.model', '3D/other.model', '/3d/OTHER.model'])('leads to the model by %s', (target) => {
    expect(readPart(listed(relsXml(target))).mesh.corners.length).toBe(36);
  });

  it.each([
    [relsXml('/3D/none.model'), /list of relationships names “\/3D\/none.model”, which is not in the package/],
    [relsXml('../3D/other.model'), /not inside the package/],
    [relsXml('http://example.org/a.model'), /not inside the package/],
    [relsXml('/3D/other.model', 'TargetMode="External"'), /outside of the package.*nothing is fetched/],
    [relsXml().replace('2013/01/3dmodel', 'x'), /names no 3D model/],
    [relsXml('/3D/other.model').slice(0, -5), /“_rels\/.rels”, line 1, is no well-formed XML/],
    [`<!DOCTYPE x>${relsXml('/3D/other.model')}`, /document type/],
    [`<!--${'x'.repeat(1_000_001)}-->${relsXml('/3D/other.model')}`, /read up to 1 000 000/],
  ])('is refused where it misleads (%#)', (rels, said) => expect(refused(listed(rels)).message).toMatch(said));
});
