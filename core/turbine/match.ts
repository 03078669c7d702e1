/** One point of the generator's own curve as the turbine sees it. */
export interface LoadPoint {
  /** rad/s */
  speed: number;
  /** W at the shaft, all losses counted. */
  shaftWatts: number;
}
