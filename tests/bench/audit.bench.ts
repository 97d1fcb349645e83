/** What the page does whenever another filament diameter is set: a section of 300 layers of some 300 pieces is told anew. */
import { bench, describe } from 'vitest';
import { auditPlace } from '../../src/core/inspect/toolpath/auditPlace.ts';
import { judgePlace, wantedOfFile } from '../../src/core/inspect/toolpath/judgePlace.ts';
import { DIAMETER, leafPart } from '../support/laidParts.ts';
import { nearOf, split } from '../support/toolpaths.ts';

const layers = Array.from({ length: 300 }, () => ({ contours: [0.42, 0.42] }));
const { toolpath, place } = leafPart({ length: 12, thickness: 1.68, height: 0.2, layers });
const near = nearOf(split(toolpath, 0.5));
const audit = auditPlace(place, near, DIAMETER);

describe('a section of 300 layers of some 300 pieces', () => {
  bench('audited', () => {
    auditPlace(place, near, DIAMETER);
  });
  bench('judged', () => {
    judgePlace(place, audit, wantedOfFile(audit, place));
  });
});
