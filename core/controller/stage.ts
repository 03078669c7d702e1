/** One of the five situations a charge controller meets. */
export interface ControllerVerdict {
  situation: string;
  verdict: 'pass' | 'tight' | 'fail';
  value: number;
  limit: number;
  unit: 'V' | 'A' | 'W';
  /** Room left as a share of the limit, negative where it is passed. */
  margin: number;
  advice: string;
}
