import { STRAIGHT_LEAF_WORDS } from './straightLeafWords.ts';
import type { WorkingWords } from './words.ts';

const PLACES = 'Chebyshev’s places of equal weight, nine to a piece: good to ten figures.';

/** Words that only parallel leaves have; a leaf that is pushed, or pulled, has those of the straight leaf. */
export const PARALLEL_LEAVES_WORDS: WorkingWords = {
  steps: {
    ...STRAIGHT_LEAF_WORDS.steps,
    'pad-spread': { name: 'How far the leaves stand apart: the squares of their places, summed up' },
    'pad-tilt': {
      name: 'How far the pad tilts, over travel and length',
      holds: 'Little travel; the ends of the leaves want to turn back, and only their stretch holds them.',
    },
    'pad-outermost': { name: 'From the middle to the outermost leaf' },
    'shifted-strain': {
      name: 'Strain of the skin at the fixed end of the outermost leaf, of bending and pull',
      holds:
        'Up to a twentieth of the length and leaves at least half as far apart as long; the tilt that grows on the way makes 3 % there.',
    },
    'leaf-stiffness': {
      name: 'Force for each travel of one leaf whose ends stay parallel',
      holds: 'Little travel; 1 % for shear where it is twenty times as long as thick.',
    },
    'shifted-force': { name: 'Force across the pad, narrow and springy', holds: 'Before anything flows.' },
    'push-share': {
      name: 'Travel over length',
      holds: 'Each leaf is two of half the length, back to back, that are pushed at their tips by half the travel.',
    },
    'push-farthest': {
      name: 'Travel over length, no more than can be',
      holds: 'No unstretched leaf reaches across by its own length: past 0.995 the figures of 0.995 stand.',
    },
    'push-modulus': {
      name: 'How far the middle of the leaf still is from lying along the force',
      holds:
        'The slope at mid-length has been found by trying; that it is the right one is seen by the travel that it gives.',
    },
    'push-reach': { name: 'How far the integrals go, from the middle to an end' },
    'push-first': {
      name: 'Half the leaf as the load sees it, an elliptic integral of the first kind',
      holds: PLACES,
    },
    'push-second': { name: 'How it leans, an elliptic integral of the second kind', holds: PLACES },
    'push-moment': { name: 'Moment at either end, over E·I and half the length' },
    'push-moment-far': { name: 'Moment at either end, over E·I and half the length' },
    'guided-strain': {
      name: 'Strain of the skin at both ends of each leaf',
      holds:
        'Up to half the length, and twenty times as long as thick; bending alone, without the pull along the leaf.',
    },
    'guided-force': {
      name: 'Force across the pad, narrow and springy',
      holds: 'Exact for leaves that neither stretch nor shear, before anything flows.',
    },
    'held-stretch': {
      name: 'The pull that this travel asks for is the one put in',
      holds: 'The leaf is stretched by as much as its slope and its bowing ask for. Small slopes, any stretch.',
    },
    'held-strain': {
      name: 'Strain of the skin at both ends of each leaf, of bending and pull',
      holds: 'Up to a twentieth of the length, where slopes reach 0.075: 0.6 % in their square, and 1 % for shear.',
    },
    'held-force': {
      name: 'Force across the pad, narrow and springy',
      holds: 'Its share along the pull counts with that of bending; before anything flows.',
    },
  },
  symbols: {
    ...STRAIGHT_LEAF_WORDS.symbols,
    L: 'length of each leaf',
    L_f: 'length of each leaf',
    n_ℓ: 'how many leaves carry the pad',
    d: 'from the middle of one leaf to the next',
    S_x: 'squares of the places of the leaves, summed up',
    ρ: 'share of travel over length',
    x_o: 'from the middle to the outermost leaf',
    k_ℓ: 'force for each travel of one leaf',
    a: 'root of force on half a leaf over E·I and the square of half its length',
    m_0: 'moment over E·I and half the length',
    θ_t: 'slope at mid-length, as arc over radius',
    u: 'place between middle and end',
    n_t: 'pull over E·I/L², below 0',
    n_g: 'pull over E·I/L² that the stretch takes, below 0',
  },
};
