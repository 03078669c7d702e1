import { firstDesign, type Design, type FirstDesign, type InHand } from '../../core';

/** How far it is, or what came of it. */
export type Report = { share: number } | { found: FirstDesign };

export interface Question {
  inHand: InHand;
  blank: Design;
}

self.onmessage = ({ data: { inHand, blank } }: MessageEvent<Question>) => {
  const tell = (report: Report) => self.postMessage(report);
  tell({ found: firstDesign(inHand, blank, (share) => tell({ share })) });
};
