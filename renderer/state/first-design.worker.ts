import { firstDesign, type Design, type FirstDesign, type InHand } from '../../core';

export interface Question {
  inHand: InHand;
  blank: Design;
}

self.onmessage = ({ data: { inHand, blank } }: MessageEvent<Question>) => {
  self.postMessage(firstDesign(inHand, blank) satisfies FirstDesign);
};
