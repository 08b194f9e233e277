import { useEffect, useState } from 'preact/hooks';
import type { PreviewRequest, StatusAnswer } from '../../protocol.js';
import type { Desk } from '../line/desk.js';
import { instantWords } from '../parts/instant-words.js';

type Policy = NonNullable<PreviewRequest['policy']>;

const POLICIES: readonly (readonly [Policy, string])[] = [
  ['hold', 'Hold them back'],
  ['last-approved', 'Show them as they were last approved'],
  ['refuse', 'Refuse to make it'],
];

/** Asks for the site as it will be at an instant. */
export function PreviewForm(props: {
  readonly desk: Desk;
  readonly status: StatusAnswer | null;
  readonly ask: (request: PreviewRequest) => void;
}) {
  const { desk, status, ask } = props;
  const next = status?.sheet?.ahead[0]?.at;
  const [steps, setSteps] = useState<readonly string[]>([]);
  const [at, setAt] = useState('');
  const [policy, setPolicy] = useState<Policy>('hold');
  useEffect(() => {
    desk.reveals().then(
      (report) => {
        const found = report.steps.map((step) => step.at);
        setSteps(found);
      },
      () => undefined, // an instant can be typed all the same
    );
  }, [desk]);
  useEffect(() => {
    if (next !== undefined) setAt((before) => (before === '' ? next : before));
  }, [next]);
  return (
    <form
      class="panel"
      aria-labelledby="preview-form-title"
      onSubmit={(event) => {
        event.preventDefault();
        ask({ at: at.trim(), policy });
      }}
    >
      <h2 id="preview-form-title">Preview of the site</h2>
      <div class="field">
        <label for="preview-step">As of</label>
        <select
          id="preview-step"
          value={steps.includes(at) ? at : ''}
          onChange={({ currentTarget }) => setAt(currentTarget.value)}
        >
          <option value="">Another instant, typed below</option>
          {steps.map((step) => (
            <option key={step} value={step}>
              {instantWords(step)}
            </option>
          ))}
        </select>
      </div>
      <div class="field">
        <label for="preview-at">The instant</label>
        <input
          id="preview-at"
          required
          spellcheck={false}
          autocomplete="off"
          value={at}
          aria-describedby="preview-at-hint"
          onInput={({ currentTarget }) => setAt(currentTarget.value)}
        />
        <p class="hint" id="preview-at-hint">
          With offset and zone: 2027-04-16T20:00:00+01:00[Europe/London]
        </p>
      </div>
      <div class="field">
        <label for="preview-policy">Cards that are not approved</label>
        <select
          id="preview-policy"
          value={policy}
          onChange={({ currentTarget }) => {
            const found = POLICIES.find(([each]) => each === currentTarget.value);
            if (found) setPolicy(found[0]);
          }}
        >
          {POLICIES.map(([each, words]) => (
            <option key={each} value={each}>
              {words}
            </option>
          ))}
        </select>
      </div>
      <div class="acts">
        <button class="main">Make the preview</button>
      </div>
    </form>
  );
}
