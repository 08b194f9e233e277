import { useState } from 'preact/hooks';
import { Dialog } from './dialog.js';
import { capsOf, keysNow, singleKeysWork, switchSingleKeys } from './keys.js';

/** The shortcuts of this screen. */
export function Help({ close }: { readonly close: () => void }) {
  const [groups] = useState(keysNow);
  const [singles, setSingles] = useState(singleKeysWork);
  return (
    <Dialog title="Shortcuts" close={close}>
      {groups.map(({ title, keys }) => (
        <section class="stack" key={title}>
          <h3>{title}</h3>
          <dl class="keys">
            {keys.map(({ chord, does }) => (
              <div class="key" key={chord}>
                <dt>
                  {capsOf(chord).map((cap, at) => (
                    <span key={cap}>
                      {at > 0 && ' '}
                      <kbd>{cap}</kbd>
                    </span>
                  ))}
                </dt>
                <dd>{does}</dd>
              </div>
            ))}
          </dl>
        </section>
      ))}
      <label class="tick">
        <input
          type="checkbox"
          checked={singles}
          onChange={({ currentTarget }) => {
            switchSingleKeys(currentTarget.checked);
            setSingles(currentTarget.checked);
          }}
        />
        Single keys work outside of fields
      </label>
      <div class="acts">
        <button type="button" class="main" onClick={close}>
          Close
        </button>
      </div>
    </Dialog>
  );
}
