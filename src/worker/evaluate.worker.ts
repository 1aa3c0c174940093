import { answer } from './answer.ts';
import type { Ask } from './messages.ts';

const scope = self as unknown as DedicatedWorkerGlobalScope;
scope.onmessage = (event: MessageEvent<Ask>) => scope.postMessage(answer(event.data));
