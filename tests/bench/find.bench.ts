/** How many candidates a second are screened, and how long the briefs of the demonstration part take in all. */
import { bench, describe } from 'vitest';
import { find } from '../../src/core/find/find.ts';
import { Field } from '../../src/core/find/field.ts';
import { lotsFor } from '../../src/core/find/lots.ts';
import { wantedOf } from '../../src/core/find/wantedOf.ts';
import { demoPart } from '../../src/store/demoPart.ts';

const quiet = () => undefined;
const { joints } = demoPart();
const flap = joints[0];
if (!flap) throw new Error('the demonstration part has joints');
const wanted = wantedOf(flap);
const leaf = lotsFor(wanted).find(({ family }) => family.id === 'straightLeaf');
if (!leaf) throw new Error('a leaf turns');
const field = new Field(leaf, wanted);
field.reckon(quiet);
const made = (field.total - field.impossible).toLocaleString('en');

describe('candidates of a leaf', () => {
  bench(`screen ${made} candidates in nine filaments`, () => field.screen(quiet));
  bench(`work out the ${(field.total / field.toShape).toLocaleString('en')} shapes of them by hand form`, () => {
    new Field(leaf, wanted).reckon(quiet);
  });
});

/** Says on its way when ten have been found, which a bench cannot. */
function timed(id: string): { readonly ten: number; readonly all: number; readonly count: number } {
  const joint = joints.find((one) => one.id === id);
  if (!joint) throw new Error(`${id} is no joint of the demonstration part`);
  const from = performance.now();
  let ten = Number.NaN;
  const found = find(wantedOf(joint), {
    now: () => performance.now(),
    tell: ({ designs }) => {
      if (Number.isNaN(ten) && designs.length >= 10) ten = performance.now() - from;
    },
  });
  const count = found.ok ? found.value.designs.length : 0;
  return { ten, all: performance.now() - from, count };
}

describe('briefs of the demonstration part', () => {
  for (const { id } of joints) {
    // The first to be warm, as a worker is that has been asked before; what it says on its way is printed beside.
    timed(id);
    const { ten, all, count } = timed(id);
    const said = `ten after ${ten.toFixed(0)} ms, ${count} in all after ${all.toFixed(0)} ms`;
    bench(`find ${id} (${said})`, () => void timed(id), { iterations: 1, warmupIterations: 0, time: 0, warmupTime: 0 });
  }
});
