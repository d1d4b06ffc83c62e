import { json } from './resource.js';
import type { CallOptions, ClientOptions } from './transport.js';
import type { AnswerOf, BodyOf, Path } from './types.js';

/** Every stateless room the service offers, by the last part of its path. */
export type Room = Path extends infer P ? (P extends `/v1/estimating/${infer R}` ? R : never) : never;

type RoomPath<R extends Room> = Extract<Path, `/v1/estimating/${R}`>;

/** The rooms one by one; nothing is stored. */
export class Estimating {
  readonly #client: ClientOptions;

  constructor(client: ClientOptions) {
    this.#client = client;
  }

  /** `client.estimating.ask('panel-check', { … })`: the types of both sides follow from the room's name. */
  ask<R extends Room>(
    room: R,
    request: BodyOf<RoomPath<R>, 'post'>,
    options?: CallOptions,
  ): Promise<AnswerOf<RoomPath<R>, 'post'>> {
    return json(this.#client, { method: 'POST', path: `/v1/estimating/${room}`, body: request }, options);
  }
}
