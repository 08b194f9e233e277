export { packetPage, PACKET_SCRIPTS, type PacketOptions } from './page.js';
export type {
  EarlierLine,
  FieldText,
  Submission,
  SubmittedPart,
  SubmittedText,
} from './submission.js';
export {
  NONCE_OCTETS,
  PASSPHRASE_OCTETS,
  SALT_OCTETS,
  passphraseFrom,
  passphraseLetters,
  seal,
  type Chance,
} from './seal.js';
