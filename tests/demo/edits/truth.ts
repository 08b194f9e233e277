import type { DemoEdit } from './edit.js';

export const TRUTH_EDITS: readonly DemoEdit[] = [];
