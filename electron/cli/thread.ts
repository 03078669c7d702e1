import { parentPort } from 'node:worker_threads';
import { createAnswerer, type ThreadQuestion } from '../../core/index';

const answer = createAnswerer();

parentPort?.on('message', (question: ThreadQuestion) => parentPort?.postMessage(answer(question)));
