export { servePreview, type Preview } from './preview.js';
export { serveDesk, type ServedDesk, type Serving } from './server.js';
export { readPageFiles, type PageFile, type PageFiles } from './page-files.js';
