export { diagnosticsOf, type Diagnostic } from './diagnostics.js';
