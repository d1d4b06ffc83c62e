import type { IncomingMessage } from 'node:http';
import type { Caller } from './roles.js';

const callers = new WeakMap<IncomingMessage, Caller>();

export const callerOf = (request: IncomingMessage): Caller | undefined => callers.get(request);

export const rememberCaller = (request: IncomingMessage, caller: Caller): void => {
  callers.set(request, caller);
};
