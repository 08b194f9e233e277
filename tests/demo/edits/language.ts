import type { DemoEdit } from './edit.js';

export const LANGUAGE_EDITS: readonly DemoEdit[] = [];
