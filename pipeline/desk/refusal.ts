import type { Conflict, NotHandedIn, Trouble } from './protocol.js';

/** A request that is not done, with the status and what is told. */
export class Refusal extends Error {
  override readonly name = 'Refusal';

  constructor(
    readonly status: number,
    readonly trouble: Trouble | Conflict | NotHandedIn,
  ) {
    super(trouble.message);
  }
}

export function badRequest(message: string): Refusal {
  return new Refusal(400, { error: 'bad request', message });
}

export function unknown(message: string): Refusal {
  return new Refusal(404, { error: 'unknown', message });
}
