import type { Answer } from './answer.js';
import { json, writing } from './resource.js';
import type { Settings } from './settings.js';
import type { CallOptions } from './transport.js';
import type { AnswerOf, BodyOf, Path } from './types.js';

/** Every stateless room the service offers, by the last part of its path. */
export type Room = Path extends infer P ? (P extends `/v1/estimating/${infer R}` ? R : never) : never;

type RoomPath<R extends Room> = Extract<Path, `/v1/estimating/${R}`>;

/** The rooms one by one; nothing is stored. */
export class Estimating {
  readonly #settings: Settings;

  constructor(settings: Settings) {
    this.#settings = settings;
  }

  /**
   * Asks one room; the types of both sides follow from its name.
   *
   * @example
   * const check = await kingplank.estimating.ask('panel-check', request);
   */
  ask<R extends Room>(
    room: R,
    request: BodyOf<RoomPath<R>, 'post'>,
    options?: CallOptions,
  ): Answer<AnswerOf<RoomPath<R>, 'post'>> {
    return json(this.#settings, writing('POST', ['v1', 'estimating', room], { body: request }), options);
  }
}
