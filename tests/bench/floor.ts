import remarkFrontmatter from 'remark-frontmatter';
import remarkParse from 'remark-parse';
import { unified } from 'unified';
import { parseDocument } from 'yaml';

import { diskFolder } from '../../pipeline/read/index.js';

const parser = unified().use(remarkParse).use(remarkFrontmatter, ['yaml']).freeze();

/**
 * The least that any checker of these files must do: read them, parse each card as Markdown with
 * front matter, and each front matter as YAML once.
 */
export function readingFloor(content: string): void {
  const folder = diskFolder(content);
  for (const { path } of folder.list()) {
    const text = new TextDecoder().decode(folder.read(path));
    if (!path.endsWith('.md')) continue;
    parser.parse(text);
    parseDocument(text.slice(4, text.indexOf('\n---\n', 4) + 1));
  }
}
