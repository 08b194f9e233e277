import { mkdirSync, readdirSync, rmSync, writeFileSync } from 'node:fs';

import { jsonSchemas } from '../../schema/make-json.js';

const folder = new URL('../../schema/json/', import.meta.url);
mkdirSync(folder, { recursive: true });
for (const old of readdirSync(folder)) rmSync(new URL(old, folder));
for (const [file, text] of jsonSchemas()) writeFileSync(new URL(file, folder), text);
