import { useEffect, useRef } from 'preact/hooks';
import type { DeskFinding } from '../../protocol.js';
import { wordsOfFix } from '../card/findings.js';
import { CopyView } from './copy-view.js';

/** What the screen around it may ask of the editor. */
export interface CopyHandle {
  readonly select: (from: number, to: number) => void;
  readonly focus: () => void;
}

/** The editor of the copy. It keeps its own text; `put` counts the times that another is put in. */
export function CopyEditor(props: {
  readonly title: string;
  readonly text: string;
  readonly put: number;
  readonly findings: readonly DeskFinding[];
  readonly labelOf: (id: string) => string;
  readonly changed: (text: string) => void;
  readonly fix: (finding: DeskFinding) => void;
  readonly handle: { current: CopyHandle | null };
}) {
  const { title, text, put, findings, labelOf, handle } = props;
  const place = useRef<HTMLDivElement>(null);
  const view = useRef<CopyView | null>(null);
  const latest = useRef(props);
  latest.current = props;
  useEffect(() => {
    if (!place.current) return;
    const made = new CopyView({
      parent: place.current,
      text,
      labelledBy: 'copy-title',
      describedBy: 'copy-fit',
      labelOf,
      changed: (next) => latest.current.changed(next),
    });
    view.current = made;
    handle.current = {
      select: (from, to) => made.select(from + startOf(made.text), to + startOf(made.text)),
      focus: () => made.focus(),
    };
    return () => {
      handle.current = null;
      made.destroy();
    };
  }, []);
  useEffect(() => view.current?.put(latest.current.text), [put]);
  useEffect(() => {
    const text = view.current?.text ?? '';
    const start = startOf(text);
    const length = text.trim().length;
    const marks = findings.flatMap((each) => {
      const { finding, place: at, fixable } = each;
      // What is said of all of it is told beside it: a line under every word would hide the others.
      if (at.in !== 'copy' || (at.from === 0 && at.to >= length)) return [];
      const { severity, message, fix } = finding;
      const canMend = fixable && fix !== undefined;
      const mend = canMend ? { words: wordsOfFix(fix), act: () => latest.current.fix(each) } : null;
      return [{ from: at.from + start, to: at.to + start, severity, message, mend }];
    });
    view.current?.mark(marks);
  }, [findings]);
  return (
    <div class="stack">
      <h2 id="copy-title">{title}</h2>
      <div class="copy-editor" ref={place} />
    </div>
  );
}

/** Empty lines before the copy are not of it: the desk counts from its first words. */
function startOf(text: string): number {
  return /^\n*/.exec(text)?.[0].length ?? 0;
}
