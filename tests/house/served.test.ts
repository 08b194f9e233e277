import { expect, test } from 'vitest';

import { diskFolder, readContent } from '../../pipeline/read/index.js';
import { read, repositoryFiles, root } from './files.js';

/** Scripts and styles are served as they stand, comments and all: no name of a demo stands in them. */
test('what is served of the theme names nobody', () => {
  const names = readContent(diskFolder(`${root}content`)).names?.value.names ?? [];
  const forms = names.map(({ name }) => name.replace(/^the /, ''));
  expect(forms.length).toBeGreaterThan(20);
  const served = repositoryFiles().filter((file) => /^site\/(scripts|styles)\//.test(file));
  expect(served.length).toBeGreaterThan(10);
  for (const file of served) {
    const text = read(file);
    expect(
      forms.filter((form) => text.includes(form)),
      file,
    ).toEqual([]);
  }
});
