import type { BackFile, Decision } from '../../../schema/index.js';
import type { ZoneWords } from '../../model/index.js';
import type { SubmittedPart } from './submission.js';

/** What the script of a packet's page is given. */
export interface PageData {
  readonly packet: string;
  readonly property: string;
  readonly person: string;
  /** Instants in milliseconds since 1970. */
  readonly expires: number;
  readonly privateKey: string;
  /** Names that a remark can be about. */
  readonly names: readonly string[];
  readonly cards: readonly PageCard[];
  readonly layouts: Readonly<Record<string, PageLayout>>;
  /** The keys of the fonts: each stands packed in a template of its own. */
  readonly fonts: readonly string[];
}

export interface PageCard {
  /** `set/subset/card`, or `set/sales/id`. */
  readonly key: string;
  readonly heading: string;
  /** `set/subset`. */
  readonly subset: string;
  readonly subsetTitle: string;
  readonly parts: readonly SubmittedPart[];
  /** Whether it is not as it was when its reviewer last decided on all of it. */
  readonly isChanged: boolean;
  /** What is shown of it, as markup. */
  readonly html: string;
  /** What can be rewritten; null where its words may not be decided on. */
  readonly words: PageWords | null;
}

/** The words of a card, and how they are set. */
export interface PageWords {
  readonly layout: string | null;
  readonly bio: readonly (readonly PageRun[])[];
  readonly rest: Omit<ZoneWords, 'bio'>;
}

/** A stretch of a bio in one face; `"\n"` alone is a hard line break. */
export interface PageRun {
  readonly text: string;
  readonly italic: boolean;
  readonly bold: boolean;
  /** Words that must stay as they are. */
  readonly held: boolean;
}

export interface PageLayout {
  readonly layout: BackFile;
  /** The keys of its faces, by the name that the layout gives a font. */
  readonly faces: Readonly<Record<string, FaceKeys>>;
}

export interface FaceKeys {
  readonly regular: string;
  readonly italic: string;
  readonly bold: string;
  readonly boldItalic: string;
}

export type Part = Decision['part'];
export type Verdict = Decision['decision'];

/** What the script that sets cards anew gives the page. */
export interface Setter {
  /** `art` is the address of the picture on its front. */
  readonly set: (words: PageWords, art: string | null) => SetAnew;
}

/** Makes a setter of the layouts and the plain font files of a page. */
export type OpenSetter = (
  data: Pick<PageData, 'layouts'>,
  fonts: ReadonlyMap<string, Uint8Array>,
) => Setter;

/** A card that was set anew. */
export interface SetAnew {
  readonly front: string;
  readonly back: string;
  /** What keeps it from printing, a sentence each; none if it fits. */
  readonly faults: readonly string[];
}
