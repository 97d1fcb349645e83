/** Kinds of flexure made of leaves and necks, each with its network. */
import { crease } from '../../src/core/flexures/crease.ts';
import { creaseNetwork } from '../../src/core/flexures/creaseNetwork.ts';
import { crossedLeaves } from '../../src/core/flexures/crossedLeaves.ts';
import { crossedLeavesNetwork } from '../../src/core/flexures/crossedLeavesNetwork.ts';
import { foldedLeaf } from '../../src/core/flexures/foldedLeaf.ts';
import { foldedLeafNetwork } from '../../src/core/flexures/foldedLeafNetwork.ts';
import { neck } from '../../src/core/flexures/neck.ts';
import { neckNetwork } from '../../src/core/flexures/neckNetwork.ts';
import { parallelLeaves } from '../../src/core/flexures/parallelLeaves.ts';
import { parallelLeavesNetwork } from '../../src/core/flexures/parallelLeavesNetwork.ts';
import { straightLeaf } from '../../src/core/flexures/straightLeaf.ts';
import { straightLeafNetwork } from '../../src/core/flexures/straightLeafNetwork.ts';
import type { Kind } from './networks.ts';

export const LEAF_KINDS: readonly Kind[] = [
  { family: straightLeaf, mechanics: straightLeafNetwork },
  { family: crease, mechanics: creaseNetwork },
  { family: neck, mechanics: neckNetwork },
  { family: crossedLeaves, mechanics: crossedLeavesNetwork },
  { family: parallelLeaves, mechanics: parallelLeavesNetwork },
  { family: foldedLeaf, mechanics: foldedLeafNetwork },
];
