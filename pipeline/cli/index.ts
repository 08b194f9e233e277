export { processIo, type Io } from './io.js';
export { main } from './main.js';
