import { stringify } from 'yaml';

import type { MappingFile } from '../../schema/index.js';

/** A mapping as YAML that reads back as this mapping, for `--mapping`. */
export function mappingText(mapping: MappingFile): string {
  return stringify(mapping, {
    aliasDuplicateObjects: false,
    defaultKeyType: 'PLAIN',
    lineWidth: 0,
    version: '1.1', // quotes around yes and no, so that every reader takes them for words
  });
}
