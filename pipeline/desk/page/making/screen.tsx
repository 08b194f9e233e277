import { useEffect, useState } from 'preact/hooks';
import type { Job, StatusAnswer } from '../../protocol.js';
import { sentenceOf, type Desk } from '../line/desk.js';
import type { Live } from '../line/live.js';
import { say } from '../shell/announce.js';
import { Title } from '../shell/title.js';
import { Jobs } from './jobs.js';
import { PreviewForm } from './preview-form.js';
import { ProofForm } from './proof-form.js';

/** Proofs, and the site as it will be: what is made, how far it is, and a way to stop it. */
export function MakingScreen(props: {
  readonly desk: Desk;
  readonly live: Live;
  /** Set, set and subset, or a card: what a proof is asked of at first. */
  readonly of: string;
  readonly status: StatusAnswer | null;
}) {
  const { desk, live, of, status } = props;
  const [jobs, setJobs] = useState<readonly Job[]>([]);
  const [trouble, setTrouble] = useState<string | null>(null);
  const put = (job: Job): void => setJobs((before) => withJob(before, job));
  const act = (asked: Promise<{ readonly job: Job }>): void => {
    setTrouble(null);
    asked.then(
      ({ job }) => put(job),
      (thrown: unknown) => setTrouble(sentenceOf(thrown)),
    );
  };
  useEffect(() => {
    desk.jobs().then(
      (answer) => setJobs(answer.jobs),
      (thrown: unknown) => setTrouble(sentenceOf(thrown)),
    );
    return live.on((event) => {
      if (event.type !== 'job') return;
      put(event.job);
      if (event.job.state !== 'running') say(`${event.job.title}: ${event.job.state}.`);
    });
  }, [desk, live]);
  return (
    <>
      <Title
        words="Proofs and preview"
        more="What is made here is for the house: nothing is sent out"
      />
      {trouble !== null && (
        <p class="notice bad" role="alert">
          {trouble}
        </p>
      )}
      <div class="two">
        {status && <ProofForm status={status} of={of} ask={(asked) => act(desk.proof(asked))} />}
        <PreviewForm desk={desk} status={status} ask={(asked) => act(desk.preview(asked))} />
      </div>
      <Jobs jobs={jobs} cancel={(job) => act(desk.cancel({ job }))} />
    </>
  );
}

/** The newest first; a job that is known stays in its place. */
function withJob(before: readonly Job[], job: Job): readonly Job[] {
  const isKnown = before.some(({ id }) => id === job.id);
  return isKnown ? before.map((each) => (each.id === job.id ? job : each)) : [job, ...before];
}
