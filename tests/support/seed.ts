import fc from 'fast-check';

/**
 * The build draws the same cases each time, so that a red build can be reproduced and a green one repeated.
 * `npm run test:random` draws new ones; a case that fails there is copied as a plain example into `behaviour/`.
 */
const FIXED = 20_261_125;

if (process.env['RANDOM_CASES'] === undefined) fc.configureGlobal({ seed: FIXED });
