/** The lower and upper end of a figure, in the figure's own unit. How much of the doubt it holds is said beside it. */
export interface Range {
  readonly low: number;
  readonly high: number;
}
