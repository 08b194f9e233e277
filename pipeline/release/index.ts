export { blockers } from './blocks.js';
export { REST, discreetReport } from './discreet.js';
export { publish, type PublishOrder, type PublishOutcome, type Refusal } from './publish.js';
