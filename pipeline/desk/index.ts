export { servePreview, type Preview } from './preview.js';
