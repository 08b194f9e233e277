import { readFileSync, writeFileSync } from 'node:fs';

import { RULES, pageOfRule } from '../../pipeline/checks/index.js';
import { rulesMarkdown } from '../../pipeline/status/index.js';
import { withRulesTable } from './rules-table.js';

const readme = new URL('../../README.md', import.meta.url);
writeFileSync(readme, withRulesTable(readFileSync(readme, 'utf8')));
writeFileSync(new URL('../../RULES.md', import.meta.url), rulesMarkdown(RULES.map(pageOfRule)));
