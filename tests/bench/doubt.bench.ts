import { bench, describe } from 'vitest';
import { doubtOf } from '../../src/core/design/doubt.ts';
import { rememberSolved } from '../../src/core/design/rememberSolved.ts';
import { latticeSteps } from '../../src/core/numeric/quasiRandom.ts';
import { sampleCube } from '../../src/core/numeric/sampling.ts';
import { USUAL_SPREAD } from '../../src/core/print/spread.ts';
import '../../src/core/flexures/index.ts';
import { demoPart } from '../../src/store/demoPart.ts';

const ASKED = { spread: USUAL_SPREAD, samples: 4096, how: 'quasi-random', seed: 1 } as const;
const ONCE = { iterations: 3, time: 0, warmupIterations: 1, warmupTime: 0 };

describe('how sure a joint of each kind is, 4096 prints with their shares and their check', () => {
  for (const joint of demoPart().joints) {
    bench(joint.family, () => void doubtOf(joint, ASKED, { solve: rememberSolved() }), ONCE);
  }
});

describe('points', () => {
  bench('steps of a lattice of 256 points in 12 dimensions', () => void latticeSteps(256, 12));
  bench('4096 quasi-random points in 8 dimensions', () => void sampleCube('quasi-random', 4096, 8, 1));
  bench('4096 plain points in 8 dimensions', () => void sampleCube('plain', 4096, 8, 1));
});
