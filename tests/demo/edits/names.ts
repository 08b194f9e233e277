import type { DemoEdit } from './edit.js';

export const NAMES_EDITS: readonly DemoEdit[] = [];
