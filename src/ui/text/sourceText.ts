/** Where every number comes from: formula in words, figures with low and high, source, and how far to trust it. */
import type { AllowableName, Assessment } from '../../core/design/assessment.ts';
import { LIFE_HOLDS_FOR } from '../../core/life/assessLife.ts';
import { bendingModulus, strainFactorAcrossLayers } from '../../core/material/choose.ts';
import type { Provenance, ProvenanceKind, Quantity } from '../../core/material/types.ts';
import { SOURCES, type SourceKey } from '../../core/sources.ts';
import { NOTCH_SENSITIVITY } from '../../core/strength/rootFactor.ts';
import { grouped, NO_BREAK, percent } from './numbers.ts';
import { sentence } from './said.ts';

export interface SourceRow {
  readonly kind: ProvenanceKind;
  readonly name: string;
  readonly says: string;
}

const cited = (key: SourceKey) => `${SOURCES[key].cite} (${SOURCES[key].read})`;

/** Where a value comes from, in words. */
function origin(provenance: Provenance): string {
  switch (provenance.kind) {
    case 'published':
      return `${cited(provenance.source)}, ${provenance.place}`;
    case 'computed':
      return `computed: ${provenance.from}; inputs ${provenance.inputs === 'published' ? '' : 'from '}${provenance.inputs}`;
    case 'measured':
      return `measured: ${provenance.what}`;
    case 'memory':
      return provenance.because ?? 'recalled, not looked up';
  }
}

/** “1 850 MPa (1 450 to 2 150)”; a fraction in per cent. */
function amount({ typical, low, high, unit }: Quantity, asPercent: boolean): string {
  const say = (value: number) =>
    asPercent ? percent(value) : value >= 1000 ? grouped(value) : String(Number(value.toPrecision(3)));
  const after = asPercent || unit === '' ? '' : `${NO_BREAK}${unit}`;
  const range = low === undefined || high === undefined ? '' : ` (${say(low)} to ${say(high)})`;
  return `${say(typical)}${after}${range}`;
}

function quantityRow(name: string, quantity: Quantity, asPercent = false): SourceRow {
  const { provenance, range, note } = quantity;
  const rangeFrom = range !== undefined && range !== provenance.kind ? `low and high ${RANGE_FROM[range]}` : '';
  const parts = [origin(provenance), rangeFrom, note ?? ''].filter((part) => part !== '');
  return {
    kind: provenance.kind,
    name: `${name}, ${amount(quantity, asPercent)}`,
    says: parts.map(sentence).join(' '),
  };
}

const RANGE_FROM: Readonly<Record<ProvenanceKind, string>> = {
  published: 'published too',
  computed: 'computed',
  memory: 'from memory',
  measured: 'measured',
};

const LIMIT_NAMES: Readonly<Record<AllowableName, string>> = {
  repeated: 'Strain stood again and again',
  held: 'Strain held for long',
  single: 'Strain stood once in a while',
  yield: 'Strain at which it stays bent',
  break: 'Strain at which it breaks',
};

function limitRows({ filament: { properties: p }, joint }: Assessment): readonly SourceRow[] {
  const upright = joint.profile.lying === 'upright';
  const breaks = (upright ? p.strainAtBreakAcrossLayers : undefined) ?? p.strainAtBreak;
  const quantities: readonly (readonly [AllowableName, Quantity])[] = [
    ['repeated', p.permissibleStrainRepeated],
    ['single', p.permissibleStrainSingle],
    ['yield', p.yieldStrain],
    ['break', breaks],
    ...(joint.movement.held ? ([['held', p.sustainedStrainLimit]] as const) : []),
  ];
  return quantities.map(([name, quantity]) => quantityRow(LIMIT_NAMES[name], quantity, true));
}

function strainRow({ strain, section }: Assessment): SourceRow {
  const what = section.countOf === 'lines' ? 'leaf' : 'crease';
  return {
    kind: 'computed',
    name: `Strain, ${percent(strain.peak)}`,
    says: `Thickness × angle ÷ (2 × length) for a ${what} bent to an arc, ${percent(strain.nominal)}, × root factor ${strain.rootFactor.toFixed(2)}. ${sentence(cited('plane-bending'))}`,
  };
}

function rootRows({ strain }: Assessment): readonly SourceRow[] {
  return [
    {
      kind: 'published',
      name: `Root fillet concentrates ${strain.concentration.toFixed(2)} times`,
      says: sentence(cited('roark-17.1')),
    },
    {
      kind: NOTCH_SENSITIVITY.provenance.kind,
      name: `Share of that felt, ${strain.notchSensitivity}`,
      says: sentence(NOTCH_SENSITIVITY.provenance.because),
    },
  ];
}

function effortRows(a: Assessment): readonly SourceRow[] {
  const modulus = bendingModulus(a.filament, a.joint.profile.lying === 'upright');
  const { effort } = a;
  return [
    {
      kind: 'computed',
      name: 'Effort',
      says: `Modulus × width × thickness³ ÷ 12 × angle ÷ length, × ${effort.widthRatio.toFixed(2)} because a wide leaf cannot narrow as it bends; less past the onset of set. Plastics also relax, which this does not know. ${sentence(cited('wide-strip'))}`,
    },
    quantityRow(`Modulus of ${a.filament.name}`, modulus),
    quantityRow('Stress at which it stays bent', a.filament.properties.yieldStress),
  ];
}

function lifeRow({ filament, life }: Assessment): SourceRow {
  const curve = filament.life;
  const scatter = life.median > 0 ? (life.scatter.p90 / life.scatter.p50).toFixed(1) : undefined;
  const parts = [
    `Strain against life, certainty: ${curve.certainty}`,
    curve.note ?? '',
    scatter === undefined
      ? ''
      : `Specimens of one print run scatter by a factor of ${scatter} either way, eight times in ten`,
    `The doubt of the curve itself, the same for every specimen: the true one lies within a factor of ${curve.doubtFactor} nine times in ten. Both together are what is judged`,
    `Nobody has counted past ${grouped(curve.maxReportableCycles)} cycles, so no life is given beyond`,
    `Holds at ${LIFE_HOLDS_FOR.roomTemperatureC} °C, up to ${LIFE_HOLDS_FOR.flexesPerSecond} flexes a second, ${LIFE_HOLDS_FOR.surface}`,
  ];
  const text = parts.filter((part) => part !== '').map(sentence);
  // A curve fitted to recalled points is no better than they are.
  const recalled = curve.provenance.kind === 'computed' && curve.provenance.inputs !== 'published';
  return {
    kind: recalled ? 'memory' : curve.provenance.kind,
    name: `Life curve of ${filament.name}`,
    says: [...text, sentence(origin(curve.provenance))].join(' '),
  };
}

function layerRow({ filament, joint }: Assessment): readonly SourceRow[] {
  if (joint.profile.lying !== 'upright') return [];
  return [quantityRow('Share of strain left when layers are pulled apart', strainFactorAcrossLayers(filament))];
}

function setRow({ set }: Assessment): readonly SourceRow[] {
  if (!(set.fraction > 0)) return [];
  const says = `What stays after one bend, if the filament flows at its yield stress and springs back by its modulus; most plastics keep less. ${sentence(cited('elastic-plastic'))}`;
  return [{ kind: 'computed', name: 'Left after one bend', says }];
}

function linesRow({ section, joint }: Assessment): SourceRow {
  if (section.countOf === 'layers') {
    const says = 'First layer + the rest × layer height.';
    return { kind: 'computed', name: 'Thickness of layers', says };
  }
  const says =
    joint.profile.fitRule === 'nominal'
      ? `Lines × line width, as is common practice. ${sentence(cited('common-practice'))}`
      : `Beads that overlap so that their area is kept. ${sentence(cited('bead-section'))}`;
  return { kind: 'computed', name: 'Thickness of lines', says };
}

const OWN_TESTS: SourceRow = {
  kind: 'measured',
  name: 'Your tests',
  says: 'None yet: print one, flex it and count. What you count is worth more than the curve.',
};

/** Every number behind this joint, with what kind of number it is. */
export function sourceRows(a: Assessment): readonly SourceRow[] {
  return [
    strainRow(a),
    ...rootRows(a),
    linesRow(a),
    ...effortRows(a),
    lifeRow(a),
    ...layerRow(a),
    ...limitRows(a),
    ...setRow(a),
    OWN_TESTS,
  ];
}
