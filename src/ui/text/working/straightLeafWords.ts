import type { WorkingWords } from './words.ts';

const PLACES = 'Chebyshev’s places of equal weight, nine to a piece: good to ten figures.';
const SERIES = 'A power series: for so little thrust the functions would cancel.';

/** Words that only a straight leaf has. */
export const STRAIGHT_LEAF_WORDS: WorkingWords = {
  steps: {
    'push-share': {
      name: 'Travel over length',
      holds:
        'The leaf neither shears nor stretches, which up to 0.8 and a tenth as thick as long makes about 1 % of force; a taper is left out.',
    },
    'push-farthest': {
      name: 'Travel over length, no more than can be',
      holds: 'Nothing pushes a tip by its own length: past 0.99 the figures of 0.99 stand.',
    },
    'push-modulus': {
      name: 'How far the tip still is from lying along the force',
      holds:
        'The slope of the tip has been found by trying; that it is the right one is seen by the travel that it gives.',
    },
    'push-reach': { name: 'How far the integrals go, from the tip to the clamp' },
    'push-first': {
      name: 'Length of the leaf as the load sees it, an elliptic integral of the first kind',
      holds: PLACES,
    },
    'push-second': { name: 'How the leaf leans, an elliptic integral of the second kind', holds: PLACES },
    'push-travel': {
      name: 'The travel that this slope gives is the one wanted',
      holds: 'Exact at any bend of a leaf that neither stretches nor shears.',
    },
    'push-moment': { name: 'Moment at the clamp, over E·I/L' },
    'push-far': {
      name: 'Length of the leaf as the load sees it, the tip along the force',
      holds: 'From 0.96 of the length on, to ten figures; a real leaf stretches there, and this is only an estimate.',
    },
    'push-moment-far': { name: 'Moment at the clamp, over E·I/L' },
    'push-strain': {
      name: 'Strain of the skin at the clamp',
      holds: 'Bending alone; the force along the leaf is left out.',
    },
    'push-force': { name: 'Force across the leaf, narrow and springy', holds: 'Before anything flows.' },
    'thrust-m': { name: 'Half the length in radians of its wave' },
    'pull-m': { name: 'Half the length, as a pull sees it' },
    'thrust-q': { name: 'The function in which a thrust acts', holds: 'Small slopes.' },
    'pull-q': { name: 'The function in which a pull acts', holds: 'Small slopes.' },
    'column-ks': { name: 'Stiffness of its ends, bent to an S' },
    'column-kc': { name: 'Stiffness of its ends, bent to a C' },
    'column-bs': { name: 'How much an S brings its ends together' },
    'column-bc': { name: 'How much a C brings its ends together' },
    'series-ks': { name: 'Stiffness of its ends, bent to an S', holds: SERIES },
    'series-kc': { name: 'Stiffness of its ends, bent to a C', holds: SERIES },
    'series-bs': { name: 'How much an S brings its ends together', holds: SERIES },
    'series-bc': { name: 'How much a C brings its ends together', holds: SERIES },
    'pin-shortening': { name: 'How much nearer bending brings the moving end', holds: 'Small slopes.' },
    'pin-squeeze': {
      name: 'The thrust that this asks for is the one put in',
      holds: 'What the pin asks the end to come nearer, less what bending does, squeezes or stretches the leaf.',
    },
    'pin-moment-end': { name: 'Largest moment, at an end' },
    'pin-odd': { name: 'Part of an S in the moment' },
    'pin-even': { name: 'Part of a C in the moment' },
    'pin-moment-bulge': { name: 'Largest moment, where the thrust makes it bulge' },
    'pin-strain': {
      name: 'Strain of the skin, of bending and thrust together',
      holds:
        'Small slopes: up to 0.3 rad and pins from 0.1 to 0.9 within 1.3 % of shapes solved exactly; past the yield strain it is a nominal figure.',
    },
    'pin-stiffness': {
      name: 'Torque about the pin for each radian, over E·I/L',
      holds:
        'Up to 0.3 rad within 0.5 % of shapes solved exactly; shear, which at a tenth as thick as long makes up to 3 %, is left out.',
    },
    'pin-moment': { name: 'Torque about the pin, narrow and springy', holds: 'Before anything flows.' },
  },
  symbols: {
    ρ: 'travel over length',
    ρ_m: 'most that is reckoned with',
    ρ_t: 'travel over length, by this slope',
    θ_t: 'slope of the tip, as arc over radius',
    k_c: 'complementary modulus of the integrals',
    ζ: 'how far the integrals go',
    u: 'place between tip and clamp',
    n_u: 'how many places',
    a: 'root of force over E·I/L²',
    e: 'integral of the second kind',
    m_0: 'largest moment over E·I/L',
    c: 'place of the pin, as a share of the length from the fixed root',
    n_t: 'thrust over E·I/L², a pull below 0',
    n_g: 'thrust over E·I/L² that the squeeze takes',
    m: 'half the root of thrust, as a plain number',
    q_m: 'm over its tangent',
    k_S: 'end stiffness of an S',
    k_C: 'end stiffness of a C',
    b_S: 'bowing of an S',
    b_C: 'bowing of a C',
    g: 'how much nearer, over length and slope squared',
    m_S: 'part of an S',
    m_C: 'part of a C',
    k_T: 'torque over E·I/L and angle',
  },
};
