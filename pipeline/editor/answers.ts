import {
  CodeActionKind,
  CompletionItemKind,
  MarkupKind,
  type CodeAction,
  type CompletionItem,
  type Hover,
  type MarkupContent,
  type Position,
  type Range,
  type TextEdit,
  type WorkspaceEdit,
} from 'vscode-languageserver/node';
import type { TextDocument } from 'vscode-languageserver-textdocument';

import type { Change } from '../edit/index.js';
import type { Instant } from '../model/index.js';
import { actionsFor, type Action } from './actions.js';
import type { Known } from './checker.js';
import { offersAt, type Offer } from './completion.js';
import { diagnosticsOf } from './diagnostics.js';
import { bodyFrom } from './links.js';
import { groundOf, type Ground } from './ground.js';
import { hoverAt } from './hover.js';
import { asMarkdown, asPlain, type Line } from './shown.js';

/** A document that something is asked of, and what is known where it lies. */
export interface Asking {
  readonly path: string;
  readonly document: TextDocument;
  readonly known: Known;
  readonly now: Instant;
  readonly markdown: boolean;
  readonly versionedEdits: boolean;
  readonly uriOf: (path: string) => string;
}

function groundFor({ path, document, known, now }: Asking): Ground | null {
  return groundOf(known.standing.content, now, { path, text: document.getText() });
}

export function answerHover(asking: Asking, position: Position): Hover | null {
  const { document } = asking;
  const ground = groundFor(asking);
  const told = ground && hoverAt(ground, document.offsetAt(position));
  if (!told) return null;
  return {
    contents: shown(told.lines, asking),
    range: { start: document.positionAt(told.from), end: document.positionAt(told.to) },
  };
}

function shown(lines: readonly Line[], { markdown }: Asking): MarkupContent {
  return markdown
    ? { kind: MarkupKind.Markdown, value: asMarkdown(lines) }
    : { kind: MarkupKind.PlainText, value: asPlain(lines) };
}

const KINDS = {
  key: CompletionItemKind.Property,
  word: CompletionItemKind.EnumMember,
  id: CompletionItemKind.Reference,
  name: CompletionItemKind.Value,
  file: CompletionItemKind.File,
} as const;

/** @param trigger the sign that was typed, if it is why an editor asks. */
export function answerCompletion(
  asking: Asking,
  position: Position,
  trigger: string | undefined,
): CompletionItem[] | null {
  const { document, path } = asking;
  const ground = groundFor(asking);
  if (!ground) return null;
  const offset = document.offsetAt(position);
  const start = bodyFrom(path, ground.text);
  // In running words an editor asks by itself only within a link.
  const inWords = start !== null && offset >= start;
  if (inWords && trigger !== undefined && trigger !== '(' && trigger !== ':') return [];
  const offers = offersAt(ground, offset);
  return offers.map((offer, at) => itemOf(offer, at, document));
}

function itemOf(offer: Offer, at: number, document: TextDocument): CompletionItem {
  const { text, what, detail, label, about, from, to, written } = offer;
  const typed = document.getText().slice(from, to);
  const quote = /^["']/.exec(typed)?.[0] ?? '';
  const known = label !== null && label !== text ? label : null;
  return {
    label: text,
    kind: KINDS[what],
    ...(detail === null || detail === '' ? {} : { detail }),
    ...(known === null ? {} : { labelDetails: { description: known } }),
    ...(about === null ? {} : { documentation: about }),
    filterText: `${quote}${text}${known === null ? '' : ` ${known}`}`,
    sortText: String(at).padStart(5, '0'),
    textEdit: {
      range: { start: document.positionAt(from), end: document.positionAt(to) },
      newText: written,
    },
  };
}

export function answerActions(
  asking: Asking,
  range: Range,
  only: readonly string[] | undefined,
): CodeAction[] {
  const { path, document, known } = asking;
  const ofFile = known.findings.filter(
    (finding) => finding.file === path && finding.accepted === undefined,
  );
  const here = ofFile.filter((finding) => {
    const [shownAs] = diagnosticsOf([finding], path);
    return shownAs !== undefined && meet(shownAs.range, range);
  });
  return actionsFor({ file: path, text: document.getText() }, here, ofFile)
    .filter(({ kind }) => only === undefined || only.some((each) => isOf(kind, each)))
    .map((action) => actionOf(action, asking));
}

/** "source" stands for "source.fixAll" too. */
function isOf(kind: string, wanted: string): boolean {
  return kind === wanted || kind.startsWith(`${wanted}.`);
}

function meet(a: Range, b: Range): boolean {
  return !isBefore(a.end, b.start) && !isBefore(b.end, a.start);
}

function isBefore(a: Position, b: Position): boolean {
  return a.line < b.line || (a.line === b.line && a.character < b.character);
}

function actionOf(
  { title, kind, preferred, finding, changes }: Action,
  asking: Asking,
): CodeAction {
  const about = finding ? diagnosticsOf([finding], asking.path) : [];
  return {
    title,
    kind: kind === 'quickfix' ? CodeActionKind.QuickFix : CodeActionKind.SourceFixAll,
    ...(preferred ? { isPreferred: true } : {}),
    ...(about.length === 0 ? {} : { diagnostics: [...about] }),
    edit: editOf(changes, asking),
  };
}

/** Bound to the version of the document where the editor can take that: else it may have moved on. */
function editOf(changes: readonly Change[], { document, versionedEdits }: Asking): WorkspaceEdit {
  const { uri, version } = document;
  const edits = changes.map(({ spot, text }): TextEdit => ({
    range: { start: document.positionAt(spot.from), end: document.positionAt(spot.to) },
    newText: text,
  }));
  return versionedEdits
    ? { documentChanges: [{ textDocument: { uri, version }, edits }] }
    : { changes: { [uri]: edits } };
}
