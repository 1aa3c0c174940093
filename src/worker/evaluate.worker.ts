import { answer } from './answer.ts';
import { answerSums } from './answer-sums.ts';
import type { Ask, SumsAsk } from './messages.ts';

const scope = self as unknown as DedicatedWorkerGlobalScope;
scope.onmessage = ({ data }: MessageEvent<Ask | SumsAsk>) =>
  scope.postMessage('sums' in data ? answerSums(data) : answer(data));
