import type { AnswerRefusal } from '../review/index.js';

/** Why a decision file is refused: what was found, and what to do. */
export function sayRefusal({ why, about = '' }: AnswerRefusal): string {
  switch (why) {
    case 'other property':
      return `this decision file is for another property, ${about}: record it where that one is kept`;
    case 'other packet':
      return `this decision file is of another packet, ${about}: record it where that one was made`;
    case 'other person':
      return `this decision file names ${about}, to whom this packet was not sent: ask the person it was sent to for theirs`;
    case 'packet not submitted':
      return 'the ledger has no submission of this packet: merge the ledger of whoever sent it, with `holdback ledger merge FILE`';
    case 'packet record changed':
      return 'the record of this packet was changed since it was sent: bring it back as it was, or send a new packet';
    case 'packet withdrawn':
      return 'this packet was withdrawn: ask for decisions on the one that was sent instead';
    case 'forged':
      return 'the signature does not fit: it was not made with the key of this packet, or something was changed after it was made. Ask the reviewer for the file that the packet saved';
    case 'expired':
      return `decisions on this packet could be given until ${about}: send a new packet`;
    case 'replayed':
      return 'this decision file is in the ledger already: there is nothing to do';
    case 'not decidable':
      return `${about}: it was not among what this packet asked for. Nothing of this file is recorded; ask for a new one`;
    case 'other text':
      return `${about}: the digest is not that of the text that was shown. Nothing of this file is recorded; ask for a new one`;
    case 'decided twice':
      return `${about}: it is decided on twice. Nothing of this file is recorded; ask for one decision`;
    case 'remark missing':
      return `${about}: "revise and resubmit" says nothing of what to revise. Ask for the remark`;
    case 'holder missing':
      return `${about}: "on hold" does not say with whom. Ask for the name`;
    case 'changes missing':
      return `${about}: "approved with changes" has no changes. Ask for the exact text`;
    case 'changes without approval':
      return `${about}: there are changes, and the decision is another than "approved with changes". Ask which is meant`;
    case 'changes beside copy':
      return `${about}: only the copy of a card can be approved with changes. Ask for a remark instead`;
  }
}
