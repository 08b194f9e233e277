import type { DemoEdit } from './edit.js';

export const LEGAL_EDITS: readonly DemoEdit[] = [];
