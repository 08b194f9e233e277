import { canSign } from '../answer-file.js';
import { FONT_PREFIX } from '../font-prefix.js';
import type { PageCard, PageData, Setter } from '../page-data.js';
import { Book } from './book.js';
import { packedText, readData, unpackFonts } from './data.js';
import { Deciding } from './decide.js';
import { byId, make, say } from './dom.js';
import { Finish } from './finish.js';
import { Keys } from './keys.js';
import { printsAll } from './print.js';
import { Remarks } from './remarks.js';
import { Rewriting } from './rewrite.js';
import { Shelf } from './show.js';
import { Store } from './store.js';
import { VERDICTS, capital } from './words.js';

type FontFiles = Awaited<ReturnType<typeof unpackFonts>>;

/** Makes the page ready: what was decided before stands again, and the first text is shown. */
async function start(): Promise<void> {
  const data = await readData();
  const book = new Book(data);
  let files: Promise<FontFiles> | null = null;
  const fonts = (): Promise<FontFiles> => (files ??= unpackFonts(data.fonts));
  const [store] = await Promise.all([Store.of(data.privateKey), warn(data)]);
  const draft = await store.draft();
  if (draft) book.restore(draft);
  const remarks = new Remarks(book);
  const shelf = new Shelf(book, (card) => shown(card));
  const deciding = new Deciding(book, shelf, new Rewriting(setterOf(data, fonts)));
  const finish = new Finish(book, shelf, remarks, store);
  const stand = (card: PageCard): void => {
    deciding.stand(card);
    remarks.list(card);
  };
  const shown = (card: PageCard): void => {
    deciding.offerParts(card);
    stand(card);
  };
  book.onChange((now) => {
    void store.keep(now).then(() => {
      if (!store.works) say('This browser keeps nothing: finish before you close the page.');
    });
    shelf.list();
    if (shelf.card) stand(shelf.card);
  });
  const undo = (): void => say(book.undo() ? 'Undone.' : 'There is nothing to undo.');
  const remark = (): void => {
    if (shelf.card) remarks.ask(shelf.card);
  };
  byId('undo', HTMLElement).addEventListener('click', undo);
  byId('remark-open', HTMLElement).addEventListener('click', remark);
  byId('finish-open', HTMLElement).addEventListener('click', () => finish.show());
  const keys = new Keys([
    ...VERDICTS.map(({ verdict, key }) => ({
      keys: [key],
      does: capital(verdict),
      press: () => deciding.decide(verdict),
    })),
    { keys: ['j', 'ArrowRight'], does: 'Next text', press: () => shelf.turn(1) },
    { keys: ['k', 'ArrowLeft'], does: 'Previous text', press: () => shelf.turn(-1) },
    { keys: ['m'], does: 'Remark', press: remark },
    { keys: ['u'], does: 'Undo', press: undo },
    { keys: ['o'], does: 'Only what changed', press: () => shelf.toggleOnly() },
    { keys: ['f'], does: 'Finish', press: () => finish.show() },
    { keys: ['?'], does: 'This list', press: () => keys.help() },
  ]);
  printsAll(book);
  const [first] = data.cards;
  if (first) shelf.show(book.undecided()[0] ?? first, false);
  if (draft) say('What you had decided is here again.');
  // Last of all: fonts take longer to open than the page does.
  setTimeout(() => void fonts().then(useFonts));
}

/** Says at once what would make work go lost. */
async function warn({ privateKey, expires }: PageData): Promise<void> {
  const warnings = [
    ...(Date.now() > expires
      ? ['This submission has expired: decisions on it are no longer taken. Ask for a new one.']
      : []),
    ...((await canSign(privateKey))
      ? []
      : ['This browser cannot sign a decision file (Ed25519): open this page in a newer one.']),
  ];
  const box = byId('warning', HTMLElement);
  box.textContent = warnings.join(' ');
  box.hidden = warnings.length === 0;
}

function useFonts(files: FontFiles): void {
  for (const [key, octets] of files) {
    document.fonts.add(new FontFace(`${FONT_PREFIX}${key}`, octets));
  }
}

/** Runs the setting script when it is first asked for. */
function setterOf(data: PageData, fonts: () => Promise<FontFiles>): () => Promise<Setter> {
  let setter: Promise<Setter> | null = null;
  return () => {
    setter ??= fonts().then((files) => runSetter(data, files));
    return setter;
  };
}

async function runSetter(data: PageData, files: FontFiles): Promise<Setter> {
  const script = await packedText('setter');
  return new Promise((done) => {
    document.addEventListener('setterready', ({ detail }) => done(detail(data, files)), {
      once: true,
    });
    document.body.append(make('script', script));
  });
}

void start();
