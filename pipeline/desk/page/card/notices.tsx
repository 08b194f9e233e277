import type { CardWork } from './card-work.js';
import type { WorkState } from './work-state.js';

/** What a writer must know before they go on: each with what can be done about it. */
export function Notices({ work, state }: { readonly work: CardWork; readonly state: WorkState }) {
  const { answer, trouble, isOtherOnDisk, conflict, letGo, unwritten, refused, isBusy } = state;
  return (
    <div class="stack">
      {answer.readOnly !== null && (
        <p class="notice warn">The desk cannot write this card: {answer.readOnly}</p>
      )}
      {trouble !== null && <p class="notice bad">{trouble}</p>}
      {refused.length > 0 && (
        <ul class="notice bad">
          {refused.map(({ id, finding }) => (
            <li key={id}>{finding.message}</li>
          ))}
        </ul>
      )}
      {isOtherOnDisk && !conflict && (
        <div class="notice warn row">
          <p>Somebody else changed this card while you wrote.</p>
          <button type="button" disabled={isBusy} onClick={() => void work.save()}>
            Show both texts
          </button>
        </div>
      )}
      {letGo !== null && (
        <div class="notice row">
          <p>You took the other text. Yours is still here.</p>
          <button type="button" onClick={() => work.bringBack()}>
            Bring my words back
          </button>
        </div>
      )}
      {answer.draft !== null && work.isUnsaved && !conflict && (
        <div class="notice row">
          <p>What was typed before and not saved is here again.</p>
          <button type="button" disabled={isBusy} onClick={() => void work.takeOther()}>
            Go back to what is saved
          </button>
        </div>
      )}
      {unwritten.map(({ path, why }) => (
        <p class="notice bad" key={path.join(' ')}>
          {path.join(', ')}: {why}
        </p>
      ))}
    </div>
  );
}
