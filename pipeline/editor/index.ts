export { diagnosticsOf, type Diagnostic } from './diagnostics.js';
export { Checker, type Known } from './checker.js';
export { EditedFolder } from './edited-folder.js';
export { Reader, type Standing } from './reader.js';
export { serve, type Serving } from './server.js';
