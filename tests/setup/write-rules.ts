import { readFileSync, writeFileSync } from 'node:fs';

import { withRulesTable } from './rules-table.js';

const readme = new URL('../../README.md', import.meta.url);
writeFileSync(readme, withRulesTable(readFileSync(readme, 'utf8')));
