export { digestOf, type Json } from './digest.js';
export { copyDigest, copyVersion } from './parts.js';
