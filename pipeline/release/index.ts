export { auditEyes } from './eyes.js';
export { blockers } from './blocks.js';
export { REST, discreetReport } from './discreet.js';
export { publish, type PublishOrder, type PublishOutcome, type Refusal } from './publish.js';
export type { Unready } from './make.js';
export { readRehearsal, rehearse, type Rehearsal, type Rehearsed } from './rehearse.js';
export { partsGone } from './less.js';
export { sendOut, type Sending, type Sent } from './send-out.js';
export { verifySite, type Verification } from './verify.js';
