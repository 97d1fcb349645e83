/** Where every number comes from: formula in words, figures with low and high, source, and how far to trust it. */
import type { AllowableName, Assessment } from '../../core/design/assessment.ts';
import { isExactByHand } from '../../core/design/response.ts';
import { familyOf } from '../../core/flexures/known.ts';
import { LIFE_HOLDS_FOR } from '../../core/life/assessLife.ts';
import { bendingModulus, soundness, strainFactorAcrossLayers } from '../../core/material/choose.ts';
import { wholeRow } from '../../core/material/wholeRow.ts';
import { NOTCH_SENSITIVITY } from '../../core/strength/rootFactor.ts';
import { radians } from '../../core/units.ts';
import { effortText } from './amountText.ts';
import { curveDoubt } from './curveDoubtText.ts';
import { cited } from './filamentValueText.ts';
import { kindText } from './kindText.ts';
import { grouped, percent } from './numbers.ts';
import { quantityRow, row, telling, type SourceRow } from './sourceRow.ts';
import { holdingRows, printerRow, wearRows } from './useSourceText.ts';

/** Whether the figures are those of the solver, and not of a form that is exact as well. */
function isSolved({ joint, drive, sizes, section, solved }: Assessment): boolean {
  if (solved === undefined) return false;
  const { thickness } = section;
  return !isExactByHand({
    family: familyOf(joint),
    drive: drive.id,
    sizes,
    thickness,
    amount: joint.movement.amount,
  });
}

const SOLVED =
  'everything that bends is followed as a true curve that may stretch, pads taken as rigid, step by step to the wanted amount';

/** How the strain along the flexure follows: the formula of an arc, or the form that stands in for one. */
function strainForm(a: Assessment): readonly [string, readonly string[]] {
  const { strain, travel, drive, joint } = a;
  const nominal = percent(strain.nominal);
  if (travel) {
    const what = kindText(joint.family).piece;
    return [
      `thickness × angle ÷ (2 × length), ${nominal},`,
      [`the ${what} is taken as bent to an arc`, cited('plane-bending')],
    ];
  }
  const form = familyOf(joint).handForms.find((one) => one.drive === drive.id && one.peakStrain !== undefined);
  // A form of its own, exact for the strain, stands beside the solver where the network cannot know it.
  const isExact =
    form !== undefined && form.rel <= 1e-6 && form.appliesTo(a.sizes, a.section.thickness, joint.movement.amount);
  if (isSolved(a) && !isExact) {
    return [`the largest on the way by exact curves, ${nominal},`, [SOLVED, cited('reissner-rod')]];
  }
  return [`by ${isExact ? 'an exact' : 'a'} hand form, ${nominal},`, form ? [form.because, cited(form.source)] : []];
}

/** The factor of the root raises what is strained there, which need not be the most. */
function rootsText({ where, rootFactor }: Assessment['strain']): string {
  const factor = rootFactor.toFixed(2);
  return where === 'root' || rootFactor === 1
    ? `× root factor ${factor}`
    : `away from the roots, whose factor is ${factor}`;
}

function strainRows(a: Assessment): readonly SourceRow[] {
  const { strain, provenance } = a;
  const [form, more] = strainForm(a);
  const { concentration, notchSensitivity } = strain;
  return [
    telling('strain', row(provenance.strain, `Strain, ${percent(strain.peak)}`, `${form} ${rootsText(strain)}`, more)),
    row('published', `The root fillet concentrates it ${concentration.toFixed(2)} times`, 'table of stepped bars', [
      cited('roark-17.1'),
    ]),
    row(NOTCH_SENSITIVITY.provenance.kind, `Share of that felt, ${notchSensitivity}`, 'assumed for plastics', [
      NOTCH_SENSITIVITY.provenance.because,
    ]),
  ];
}

function thicknessRow({ section, joint }: Assessment): SourceRow {
  if (joint.measuredThickness !== undefined) return row('measured', 'Thickness', 'as you measured it');
  if (section.countOf === 'layers') return row('computed', 'Thickness', 'first layer + the others × layer height');
  return joint.profile.fitRule === 'nominal'
    ? row('computed', 'Thickness', 'lines × line width', [cited('common-practice')])
    : row('computed', 'Thickness', 'overlapping beads that keep their area', [cited('bead-section')]);
}

function effortForm(a: Assessment): string {
  if (a.travel) return 'modulus × width × thickness³ ÷ 12 × angle ÷ length';
  return isSolved(a) ? 'modulus × the largest on the way by exact curves' : 'modulus × a hand form of its sizes';
}

function effortRows(a: Assessment): readonly SourceRow[] {
  const { effort, filament, joint, travel } = a;
  const isTurn = effort.measure === 'turn';
  const first = effortText(effort.stiffness * (isTurn ? radians(1) : 1), effort.measure);
  return [
    telling(
      'effort',
      row(
        soundness(effort.provenance) === 'memory' ? 'memory' : 'computed',
        `Effort, ${effortText(effort.effort, effort.measure)}; ${travel || isSolved(a) ? 'at first' : 'on the way there'} ${first} a ${isTurn ? 'degree' : 'millimetre'}`,
        `${effortForm(a)}, × ${effort.widthRatio.toFixed(2)} for its width`,
        [
          'a wide leaf cannot narrow as it bends, which makes it stiffer; past the onset of set it pushes less; plastics also relax, which this does not know',
          cited('wide-strip'),
        ],
      ),
    ),
    quantityRow(`Modulus of ${filament.name}`, bendingModulus(filament, joint.profile.lying === 'upright')),
    quantityRow('Stress at which it stays bent', filament.properties.yieldStress),
  ];
}

function lifeRow({ filament, life }: Assessment): SourceRow {
  const { certainty, provenance, maxReportableCycles, note } = filament.life;
  const scatter = life.median > 0 ? (life.scatter.p90 / life.scatter.p50).toFixed(1) : undefined;
  return row(
    soundness(provenance),
    `Life curve of ${filament.name}, ${certainty}`,
    `the true curve lies within a factor of ${curveDoubt(filament.life)}: the same doubt for every print`,
    [
      note,
      scatter && `specimens of one print run scatter by a factor of ${scatter} either way, eight times in ten`,
      'both together are what is judged',
      `nobody has counted past ${grouped(maxReportableCycles)} cycles, so no life is given beyond`,
      `holds at ${LIFE_HOLDS_FOR.roomTemperatureC} °C, up to ${LIFE_HOLDS_FOR.flexesPerSecond} flexes a second, ${LIFE_HOLDS_FOR.surface}`,
      cited('strain-life'),
    ],
  );
}

const LIMIT_NAMES: Readonly<Record<AllowableName, string>> = {
  repeated: 'Strain stood again and again',
  held: 'Strain held for long',
  single: 'Strain stood once in a while',
  yield: 'Strain at which it stays bent',
  break: 'Strain at which it breaks',
};

function limitRows({ filament, joint }: Assessment): readonly SourceRow[] {
  const p = filament.properties;
  const upright = joint.profile.lying === 'upright';
  const breaks = (upright ? p.strainAtBreakAcrossLayers : undefined) ?? p.strainAtBreak;
  return [
    ...(upright
      ? [quantityRow('Share of strain left when layers are pulled', strainFactorAcrossLayers(filament))]
      : []),
    quantityRow(LIMIT_NAMES.repeated, p.permissibleStrainRepeated, true),
    ...(joint.movement.held ? [quantityRow(LIMIT_NAMES.held, p.sustainedStrainLimit, true)] : []),
    quantityRow(LIMIT_NAMES.single, p.permissibleStrainSingle, true),
    quantityRow(LIMIT_NAMES.yield, p.yieldStrain, true),
    quantityRow(LIMIT_NAMES.break, breaks, true),
  ];
}

function setRows({ set, provenance }: Assessment): readonly SourceRow[] {
  if (!(set.high > 0)) return [];
  const says = 'flows at its yield stress, springs back by its modulus; most keep less';
  return [telling('set', row(provenance.effort, 'Left in it after one bend', says, [cited('elastic-plastic')]))];
}

/** Every number behind this joint, with what kind of number it is. */
export function sourceRows(assessment: Assessment): readonly SourceRow[] {
  const a = { ...assessment, filament: wholeRow(assessment.filament) };
  return [
    ...strainRows(a),
    telling('thickness', thicknessRow(a)),
    ...effortRows(a),
    telling('life', lifeRow(a)),
    ...wearRows(a),
    ...limitRows(a),
    ...setRows(a),
    ...holdingRows(a),
    printerRow(),
    row('measured', 'Your tests', 'none yet; a counted test print is worth more than the curve'),
  ];
}
