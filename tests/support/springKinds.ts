/** Kinds of flexure that spring, snap or wrap, each with its network, and what their networks must keep to. */
import { checkModel } from '../../src/core/beam/checkModel.ts';
import { cellPanel } from '../../src/core/flexures/cellPanel.ts';
import { cellPanelNetwork } from '../../src/core/flexures/cellPanelNetwork.ts';
import type { Sizes } from '../../src/core/flexures/family.ts';
import type { Body, FlexureNetwork } from '../../src/core/flexures/network.ts';
import { slitPanel } from '../../src/core/flexures/slitPanel.ts';
import { slitPanelNetwork } from '../../src/core/flexures/slitPanelNetwork.ts';
import { snapArch } from '../../src/core/flexures/snapArch.ts';
import { snapArchNetwork } from '../../src/core/flexures/snapArchNetwork.ts';
import { spiral } from '../../src/core/flexures/spiral.ts';
import { spiralNetwork } from '../../src/core/flexures/spiralNetwork.ts';
import { toggle } from '../../src/core/flexures/toggle.ts';
import { toggleNetwork } from '../../src/core/flexures/toggleNetwork.ts';
import { pathArea } from '../../src/core/geometry/flatten.ts';
import { dimensionFaults, drivenFaults, isClosed, type Kind } from './networks.ts';

export const SPRING_KINDS: readonly Kind[] = [
  { family: spiral, mechanics: spiralNetwork },
  { family: snapArch, mechanics: snapArchNetwork },
  { family: toggle, mechanics: toggleNetwork },
  { family: cellPanel, mechanics: cellPanelNetwork },
  { family: slitPanel, mechanics: slitPanelNetwork },
];

/** The kind with an id; one that is not there is a mistake of the test. */
export function springKind(id: string): Kind {
  const kind = SPRING_KINDS.find(({ family }) => family.id === id);
  if (!kind) throw new Error(`no kind ${id}`);
  return kind;
}

/**
 * What is wrong with a network; empty when nothing is. Bodies may have holes, and need not touch the nodes they carry:
 * a hub is a disc.
 */
export function springFaults({ family }: Kind, sizes: Sizes, network: FlexureNetwork): readonly string[] {
  const checked = checkModel({ ...network.model, modulus: 1000, poisson: 0.38 });
  if (!checked.ok) return checked.problems.map(({ message }) => message);
  const pads = network.model.pads.map(({ id }) => id).toSorted();
  const bodies = network.bodies.map(({ pad }) => pad).toSorted();
  return [
    ...drivenFaults(network),
    ...(pads.join() === bodies.join() ? [] : [`pads ${pads.join()} have bodies ${bodies.join()}`]),
    ...network.bodies.flatMap(bodyFaults),
    ...network.dimensions.flatMap((dimension) => dimensionFaults(family, sizes, network, dimension)),
  ];
}

function bodyFaults({ pad, outlines }: Body): readonly string[] {
  const area = outlines.map(pathArea).reduce((sum, each) => sum + each, 0);
  return [
    ...outlines.filter((path) => !isClosed(path)).map(() => `an outline of ${pad} is not closed`),
    ...(area > 0 ? [] : [`the body of ${pad} encloses ${area} mm²`]),
  ];
}
