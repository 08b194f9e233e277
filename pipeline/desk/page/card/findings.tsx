import type { DeskFinding } from '../../protocol.js';
import { counted } from '../parts/counted.js';

/** What was found, each with what to do; what can be mended by one press has the press. */
export function Findings(props: {
  readonly findings: readonly DeskFinding[];
  readonly settled: boolean;
  readonly isBusy: boolean;
  readonly fix: (finding: DeskFinding) => void;
  readonly show: (finding: DeskFinding) => void;
}) {
  const { findings, settled, isBusy, fix, show } = props;
  const errors = findings.filter(({ finding }) => finding.severity === 'error').length;
  return (
    <section class="panel" aria-labelledby="findings-title">
      <div class="row spread">
        <h2 id="findings-title">What was found</h2>
        <span class="small quiet" id="findings-state">
          {settled ? 'All rules have looked' : 'Looking further…'}
        </span>
      </div>
      {findings.length === 0 ? (
        <p class="good">Nothing.</p>
      ) : (
        <p>
          {counted(errors, 'error')}, {counted(findings.length - errors, 'warning')}
        </p>
      )}
      <ul class="findings">
        {findings.map((each) => (
          <Item key={each.id} each={each} isBusy={isBusy} fix={fix} show={show} />
        ))}
      </ul>
    </section>
  );
}

function Item(props: {
  readonly each: DeskFinding;
  readonly isBusy: boolean;
  readonly fix: (finding: DeskFinding) => void;
  readonly show: (finding: DeskFinding) => void;
}) {
  const { each, isBusy, fix, show } = props;
  const { finding, place, fixable } = each;
  const { severity, message, found, expected, rule, related, accepted } = finding;
  return (
    <li class={severity}>
      <p>
        <strong class={severity === 'error' ? 'bad' : 'warn'}>{capital(severity)}</strong>:{' '}
        {message}
      </p>
      {(found !== undefined || expected !== undefined) && (
        <p class="small">
          {found !== undefined && <>Found: {found}. </>}
          {expected !== undefined && <>Expected: {expected}.</>}
        </p>
      )}
      {related.map(({ message: more, file, line }) => (
        <p class="small quiet" key={`${file} ${line} ${more}`}>
          {more} ({file}, line {line})
        </p>
      ))}
      {accepted !== undefined && <p class="small good">Accepted: {accepted}</p>}
      <div class="row">
        {fixable && finding.fix !== undefined && (
          <button type="button" disabled={isBusy} onClick={() => fix(each)}>
            {wordsOfFix(finding.fix)}
          </button>
        )}
        {(place.in === 'copy' || place.in === 'field') && (
          <button type="button" class="plain" onClick={() => show(each)}>
            {place.in === 'copy' ? 'Show it in the copy' : 'Go to the field'}
          </button>
        )}
        <span class="small quiet">
          {place.in === 'elsewhere' && `${place.file}, line ${place.line} · `}
          {place.in === 'file' && `line ${place.line} of the file · `}
          {rule}
        </span>
      </div>
    </li>
  );
}

/** From so many letters on, a fix is not written out on what makes it. */
const LONG_FIX = 60;

/** What the press of a fix does. */
export function wordsOfFix(fix: string): string {
  if (fix === '') return 'Take it out';
  const isShort = fix.length <= LONG_FIX && !fix.includes('\n');
  return isShort ? `Change to “${fix}”` : 'Change to what is expected';
}

function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
