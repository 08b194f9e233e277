import { setText, openFace } from '../../pipeline/typeset/index.js';
import { fontBytes, facesOf, plain, zoneWith } from './support.js';
for (const z of [{width:1000,height:1000,size:100,leading:100},{ width: 1e6, height: 1e4, size: 100, leading: 100 }]) { console.log('go'); const s=setText([[plain('AV Ta')]], zoneWith(z), facesOf('alegreya')); console.log(s.lines[0]?.width); }
import { paragraphs } from './support.js';
console.log(paragraphs(200,600).length);
    const words = paragraphs(200, 600).slice(0, 300).join(' ').split(' ');
console.log(words.length);
for (const b of [fontBytes('alegreya','400-normal','woff2'),Buffer.from('ttcf\u0000\u0001\u0000\u0000'),new Uint8Array(0),fontBytes('alegreya').subarray(0,5000)]) { try { openFace(b,'x'); } catch(e) {console.log(String(e))} }
