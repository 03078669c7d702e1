import { createAnswerer, type ThreadQuestion } from '../../../core';

const answer = createAnswerer();

self.onmessage = (event: MessageEvent<ThreadQuestion>) => {
  self.postMessage(answer(event.data));
};
