import type { CardKey } from './protocol.js';

// Jobs.

export interface ProofRequest {
  readonly set?: string;
  readonly subset?: string;
  readonly card?: CardKey;
  readonly kind?: 'annotated' | 'nine-up' | 'deck' | 'overset';
  readonly paper?: 'a4' | 'letter';
}

export interface PreviewRequest {
  /** "2027-04-16T09:00:00+01:00[Europe/London]". */
  readonly at: string;
  /** What becomes of cards that are not approved; `hold` if it is not said. */
  readonly policy?: 'refuse' | 'hold' | 'last-approved';
}

export interface CancelRequest {
  readonly job: string;
}

export interface Job {
  readonly id: string;
  readonly kind: 'proof' | 'publish-preview';
  readonly title: string;
  readonly state: 'running' | 'done' | 'failed' | 'cancelled';
  /** "drawing pictures: 3 of 84". */
  readonly step: string;
  /** Where the result is: a PDF on this port, or a site on another. */
  readonly address: string | null;
  /** Why it failed, in lines. */
  readonly message: string | null;
}

export interface JobAnswer {
  readonly job: Job;
}

export interface JobsAnswer {
  readonly jobs: readonly Job[];
}
