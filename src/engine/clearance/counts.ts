/** Work done in one evaluation, counted so that a test can see that it grows no faster than the plan. */
export interface Counts {
  boxQueries: number;
  distances: number;
}
