export { locked, refused, settleLeft, type Place, type Refused } from './lock.js';
export { recordAnswer, type RecordOrder, type Recorded } from './record.js';
export { recordByHand, type HandOrder } from './by-hand.js';
export { recordChecked, type Checked, type CheckedOrder } from './checked.js';
export { applyChanges, type Applied } from './apply.js';
export { LARGEST_ANSWER } from './read-answer.js';
export { sendPacket, type SendOrder, type Sending, type Sent } from './send.js';
export { KEY_SEED_OCTETS, keyPairFrom, type KeyPair } from './keys.js';
export { withdrawPacket, type WithdrawOrder } from './withdraw.js';
