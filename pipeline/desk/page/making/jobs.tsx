import type { Job } from '../../protocol.js';

/** What is being made, and what was. */
export function Jobs(props: {
  readonly jobs: readonly Job[];
  readonly cancel: (job: Job['id']) => void;
}) {
  const { jobs, cancel } = props;
  return (
    <section class="panel" aria-labelledby="jobs-title">
      <h2 id="jobs-title">Made here</h2>
      {jobs.length === 0 && <p class="quiet">Nothing yet.</p>}
      <ul class="jobs">
        {jobs.map((job) => (
          <Item key={job.id} job={job} cancel={cancel} />
        ))}
      </ul>
    </section>
  );
}

function Item(props: { readonly job: Job; readonly cancel: (job: Job['id']) => void }) {
  const { job, cancel } = props;
  const { id, kind, title, state, step, address, message } = job;
  return (
    <li class="stack" data-state={state}>
      <h3>
        {title} <span class="state">{state}</span>
      </h3>
      {state === 'running' && (
        <>
          <progress aria-label={title} {...howFar(step)} />
          <p class="small quiet">{step}</p>
          <div class="acts">
            <button type="button" onClick={() => cancel(id)}>
              Stop<span class="unseen"> {title}</span>
            </button>
          </div>
        </>
      )}
      {message !== null && (
        <p class={state === 'failed' ? 'notice bad lines' : 'lines'}>{message}</p>
      )}
      {state === 'done' && address !== null && (
        <p>
          <a class="button" href={address} target="_blank" rel="noopener noreferrer">
            {kind === 'proof' ? 'Open the proof (PDF)' : 'Open the preview'}
          </a>
        </p>
      )}
    </li>
  );
}

/** "drawing pictures: 3 of 84" is three of 84; without figures nobody knows how far it is. */
function howFar(step: string): { readonly value?: number; readonly max?: number } {
  const [, done, all] = /(\d+) of (\d+)/.exec(step) ?? [];
  return done === undefined || all === undefined || all === '0'
    ? {}
    : { value: Number(done), max: Number(all) };
}
