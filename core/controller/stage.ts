/** One of the five situations a charge controller meets. */
export interface ControllerVerdict {
  situation: string;
  verdict: 'pass' | 'tight' | 'fail';
  value: number;
  limit: number;
  unit: 'V' | 'A' | 'W';
  advice: string;
}
