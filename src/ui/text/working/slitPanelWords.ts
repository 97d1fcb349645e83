import type { WorkingWords } from './words.ts';

/** Words that only a panel of slits has. */
export const SLIT_PANEL_WORDS: WorkingWords = {
  steps: {
    'twist-each': {
      name: 'What each row of strips twists',
      holds: 'Strips one behind the other share the wrap evenly; the bridges count as rigid.',
    },
    'strip-width': { name: 'Width of a strip between two rows of slits' },
    'strip-length': {
      name: 'Length over which a strip twists',
      holds: 'From a bridge to the next one of the other row.',
    },
    'strip-ratio': { name: 'Longer side of the strip’s section over its shorter one' },
    'twist-corners': {
      name: 'What the corners take from the peak',
      holds: 'Odd terms up to 21: the next is under the round-off.',
    },
    'twist-peak': { name: 'Peak shear over that of an endlessly wide strip' },
    'twist-lacking': {
      name: 'What the series of a square falls short by',
      holds: 'Odd terms up to 21: the next is under the round-off.',
    },
    'twist-section': {
      name: 'Share of the section that resists the twist',
      holds: 'Saint-Venant: the ends of the strip are free to warp.',
    },
    'twist-shear': {
      name: 'Largest shear strain, at the middle of the longer sides',
      holds: 'Strips of three widths and more; bridges stiffen shorter ones.',
    },
    'twist-strain': {
      name: 'The plain strain that distorts as much',
      holds:
        'That equal distortion does equal harm (von Mises) is an assumption: filaments were tested in tension only.',
    },
    'twist-j': { name: 'Torsion constant of one strip' },
    'shear-modulus': {
      name: 'Shear modulus',
      holds: 'Poisson’s ratio is taken as 0.4; filaments have 0.34 to 0.49, which is up to 7 % of the shear modulus.',
    },
    'strips-beside': {
      name: 'Strips that twist side by side',
      holds: 'A panel of no whole number of slits counts its share.',
    },
    'twist-moment': {
      name: 'Moment that wraps it, springy',
      holds: 'The bridges count as rigid and the strips as not bent, which makes the panel stiffer than it is.',
    },
  },
  symbols: {
    t: 'thickness of the sheet',
    b: 'width of the panel, along the slits',
    n_p: 'rows of slits',
    θ_1: 'angle that each row of strips takes',
    p: 'from one row of slits to the next',
    w_g: 'width of each slit',
    B_s: 'width of a strip',
    ℓ_s: 'length of each slit',
    ℓ_b: 'length of a bridge',
    ℓ_t: 'length over which a strip twists',
    β: 'longer side over shorter side',
    j: 'odd numbers',
    Σ_k: 'sum for the peak',
    Σ_c: 'what the sum falls short by',
    Σ_5: 'one over the fifth power, over all odd numbers',
    k_τ: 'share of the peak shear',
    c_J: 'share of the section',
    γ_s: 'largest shear strain',
    J: 'torsion constant of one strip',
    G: 'shear modulus',
    ν_0: 'Poisson’s ratio of the shear modulus',
    m_p: 'strips side by side',
    M: 'moment, springy',
    r: 'half the width of a slit',
  },
};
