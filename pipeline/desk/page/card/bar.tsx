import { addressOf } from '../shell/route.js';
import type { CardWork } from './card-work.js';
import type { WorkState } from './work-state.js';

/** What can be done with the card, and whether it is saved. */
export function Bar({ work, state }: { readonly work: CardWork; readonly state: WorkState }) {
  const { answer, isBusy } = state;
  const { isUnsaved } = work;
  const isStuck = isBusy || answer.readOnly !== null;
  const stateNow = answer.row?.state ?? null;
  return (
    <div class="bar" role="group" aria-label="This card">
      <button
        type="button"
        class="main"
        disabled={isStuck || !isUnsaved}
        onClick={() => void work.save()}
      >
        Save
      </button>
      <button
        type="button"
        disabled={isStuck || isUnsaved || !answer.canUndo}
        onClick={() => void work.undo()}
      >
        Undo the save
      </button>
      <button
        type="button"
        disabled={isStuck || isUnsaved || !answer.canRedo}
        onClick={() => void work.redo()}
      >
        Redo the save
      </button>
      <button
        type="button"
        disabled={isStuck || isHandedIn(state)}
        onClick={() => void work.handIn()}
      >
        Hand in
      </button>
      <span id="saved-state" class={isUnsaved ? 'unsaved' : 'quiet'}>
        {isUnsaved ? 'Not saved' : 'Saved'}
      </span>
      {stateNow !== null && <span class="state">{stateNow}</span>}
      <span class="row end">
        <a class="button" {...whereTo(answer.previous)}>
          Card before
        </a>
        <a class="button" {...whereTo(answer.next)}>
          Next card
        </a>
        <a class="button" href={addressOf({ screen: 'making', of: answer.card })}>
          Proof of it
        </a>
      </span>
    </div>
  );
}

function isHandedIn({ typed, answer }: WorkState): boolean {
  return typed.fields?.['state'] === 'ready' && answer.saved.fields?.['state'] === 'ready';
}

function whereTo(card: string | null) {
  return card === null
    ? { 'aria-disabled': 'true' as const, role: 'link' as const }
    : { href: addressOf({ screen: 'card', card }) };
}
