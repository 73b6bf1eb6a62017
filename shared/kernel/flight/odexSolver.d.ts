/** The part of odex we use: Hairer and Wanner's ODEX, extrapolation of the explicit midpoint rule with adaptive step and order. */
export declare class Solver {
  constructor(dimension: number);
  absoluteTolerance: number;
  relativeTolerance: number;
  /** Where the search for a fitting step begins. */
  initialStepSize: number;
  /** Integrates y' = f(x, y) from x0 to x1, forwards or backwards. `outcome` 0: converged. */
  solve(
    f: (x: number, y: number[]) => number[],
    x0: number,
    y0: readonly number[],
    x1: number,
  ): { readonly y: number[]; readonly outcome: number };
}
