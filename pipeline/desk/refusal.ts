import type { Conflict, DeskFinding, NotHandedIn, Trouble } from './protocol.js';

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

/** The finding that was to be mended is gone. */
export function fixGone(): Refusal {
  const message = 'this finding is not there any more, or has no fix: look at the card again';
  return new Refusal(409, { error: 'unknown', message });
}

/** Errors stand in the way of handing in. */
export function notReady(findings: readonly DeskFinding[]): Refusal {
  const count = `${String(findings.length)} ${findings.length === 1 ? 'finding' : 'findings'}`;
  const message = `${count} to mend before this card can be handed in`;
  return new Refusal(422, { error: 'not ready', message, findings });
}

/** There is no save before, or after. */
export function nothingTo(way: 'back' | 'forth'): Refusal {
  const step = stepOf(way);
  return new Refusal(409, { error: `nothing to ${step}`, message: `there is nothing to ${step}` });
}

/** What is typed would be lost. */
export function unsavedBefore(way: 'back' | 'forth'): Refusal {
  const message = `save what you typed, or let it go, before you ${stepOf(way)}`;
  return new Refusal(409, { error: 'unsaved', message });
}

function stepOf(way: 'back' | 'forth'): 'undo' | 'redo' {
  return way === 'back' ? 'undo' : 'redo';
}
