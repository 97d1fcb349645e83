/** As much of jstat 1.9 as the tests ask: it brings no types. */
declare module 'jstat' {
  interface Distribution<Parameters extends readonly number[]> {
    cdf(x: number, ...parameters: Parameters): number;
    inv(share: number, ...parameters: Parameters): number;
  }
  export const jStat: {
    readonly normal: Distribution<readonly [mean: number, deviation: number]> & {
      pdf(x: number, mean: number, deviation: number): number;
    };
    readonly studentt: Distribution<readonly [freedom: number]>;
    readonly centralF: Distribution<readonly [above: number, below: number]>;
    readonly beta: Distribution<readonly [a: number, b: number]>;
    readonly models: {
      ols(values: readonly number[], columns: readonly (readonly number[])[]): { readonly coef: readonly number[] };
    };
  };
}
