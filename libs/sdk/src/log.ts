/** What `console` can do; any logger with these four will do. */
export interface Logger {
  debug(message: string): void;
  info(message: string): void;
  warn(message: string): void;
  error(message: string): void;
}

type Level = keyof Logger;

const order: readonly (Level | 'off')[] = ['debug', 'info', 'warn', 'error', 'off'];

/** The part of a client's settings that is asked here. */
interface Listener {
  readonly logger: Logger | undefined;
  readonly logLevel: Level | 'off';
}

/** Says it when the client's level lets it through. Keys and bodies are never handed in. */
export function log({ logger, logLevel }: Listener, level: Level, message: string): void {
  if (order.indexOf(level) < order.indexOf(logLevel)) return;
  logger?.[level](`kingplank: ${withoutSecrets(message)}`);
}

/** A key that found its way into an address or a message stays out of the log. */
export const withoutSecrets = (message: string): string =>
  message.replace(/\b(kp_[a-z]*_?|whsec_)[A-Za-z0-9+/_=-]{6,}/g, '$1…');
