import { answer } from './answer.ts';
import { answerCompare } from './answer-compare.ts';
import { answerSums } from './answer-sums.ts';
import type { Ask, CompareAsk, SumsAsk } from './messages.ts';

const scope = self as unknown as DedicatedWorkerGlobalScope;
scope.onmessage = ({ data }: MessageEvent<Ask | SumsAsk | CompareAsk>) =>
  scope.postMessage('sums' in data ? answerSums(data) : 'compare' in data ? answerCompare(data) : answer(data));
