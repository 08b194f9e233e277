import { readStyles } from './formats.js';
import { TableError, type Grid } from './grid.js';
import { unpack, type Parts } from './unpack.js';
import { readWorksheet, unescaped } from './worksheet.js';
import { readXml } from './xml.js';

/**
 * The sheets of an .xlsx workbook (ECMA-376, Office Open XML): what stands in their cells, how
 * numbers are shown, which sheets are hidden and which cells merged. Formulas are not worked out.
 * @throws TableError for what is no workbook, damaged or too large.
 */
export function readWorkbook(bytes: Uint8Array): readonly Grid[] {
  const parts = unpack(bytes);
  if (parts.has('content.xml') && !parts.has('[content_types].xml')) {
    throw new TableError('this is an .ods file: save it as .xlsx or .csv');
  }
  const path = targetOf(relationsOf(parts, ''), 'officeDocument') ?? 'xl/workbook.xml';
  const book = readBook(textOf(parts, path));
  const relations = relationsOf(parts, path);
  const styles = targetOf(relations, 'styles');
  const strings = targetOf(relations, 'sharedStrings');
  const shared = {
    from1904: book.from1904,
    styles: styles === null ? [] : readStyles(textOf(parts, styles)),
    strings: strings === null ? [] : readStrings(textOf(parts, strings)),
  };
  return book.sheets.flatMap(({ name, hidden, relation }): Grid[] => {
    const own = relations.get(relation);
    // What is no table, such as a page that is one chart, has no rows.
    if (own?.type !== 'worksheet') return [];
    return [{ name, hidden, ...readWorksheet(textOf(parts, own.target), shared) }];
  });
}

interface Relation {
  /** The last part of its type: the first differs between the two forms of the standard. */
  readonly type: string;
  readonly target: string;
}

const decoder = new TextDecoder('utf-8', { fatal: true });

function textOf(parts: Parts, path: string): string {
  const part = parts.get(path.toLowerCase());
  if (!part) throw new TableError('this is no .xlsx workbook: save the sheet as .xlsx or .csv');
  try {
    return decoder.decode(part);
  } catch {
    throw new TableError('the workbook is damaged: open it and save it again as .xlsx');
  }
}

/** What a part leads to, by the id of the relation (ECMA-376 Part 2, 6.5). */
function relationsOf(parts: Parts, path: string): ReadonlyMap<string, Relation> {
  const cut = path.lastIndexOf('/') + 1;
  const folder = path.slice(0, cut);
  const file = `${folder}_rels/${path.slice(cut)}.rels`;
  const relations = new Map<string, Relation>();
  if (!parts.has(file.toLowerCase())) return relations;
  readXml(textOf(parts, file), {
    open: (name, attributes) => {
      if (name !== 'Relationship' || attributes.get('TargetMode') === 'External') return;
      const target = attributes.get('Target') ?? '';
      relations.set(attributes.get('Id') ?? '', {
        type: (attributes.get('Type') ?? '').split('/').at(-1) ?? '',
        target: target.startsWith('/') ? target.slice(1) : resolved(folder, target),
      });
    },
  });
  return relations;
}

function resolved(folder: string, target: string): string {
  const steps = folder.split('/').slice(0, -1);
  for (const step of target.split('/')) {
    if (step === '..') steps.pop();
    else if (step !== '.') steps.push(step);
  }
  return steps.join('/');
}

function targetOf(relations: ReadonlyMap<string, Relation>, type: string): string | null {
  return [...relations.values()].find((relation) => relation.type === type)?.target ?? null;
}

interface Book {
  readonly from1904: boolean;
  readonly sheets: readonly {
    readonly name: string;
    readonly hidden: boolean;
    readonly relation: string;
  }[];
}

function readBook(xml: string): Book {
  const sheets: Book['sheets'][number][] = [];
  let from1904 = false;
  readXml(xml, {
    open: (name, attributes) => {
      if (name === 'workbookPr') from1904 = /^(?:1|true)$/.test(attributes.get('date1904') ?? '');
      if (name !== 'sheet') return;
      sheets.push({
        name: unescaped(attributes.get('name') ?? ''),
        hidden: (attributes.get('state') ?? 'visible') !== 'visible',
        relation: attributes.get('id') ?? '',
      });
    },
  });
  return { from1904, sheets };
}

/** The strings that cells share, without the signs that say how they are spoken. */
function readStrings(xml: string): readonly string[] {
  const strings: string[] = [];
  let words = '';
  let isWords = false;
  let isSound = false;
  readXml(xml, {
    open: (name) => {
      if (name === 'si') words = '';
      if (name === 't') isWords = true;
      if (name === 'rPh') isSound = true;
    },
    close: (name) => {
      if (name === 'si') strings.push(unescaped(words));
      if (name === 't') isWords = false;
      if (name === 'rPh') isSound = false;
    },
    text: (text) => {
      if (isWords && !isSound) words += text;
    },
  });
  return strings;
}
