import type { Person } from './choose.js';

/** Roles of people of the house; all others are outside. */
export const HOUSE_ROLES: readonly Person['role'][] = ['writer', 'editor', 'publisher'];
