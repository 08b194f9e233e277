export { editDistance } from './distance.js';
export { nearest } from './nearest.js';
