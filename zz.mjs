import {rolldown} from 'rolldown';
import {gzipSync} from 'node:zlib';
for (const i of process.argv.slice(2)){ const b=await rolldown({input:i}); const {output}=await b.generate({minify:true}); console.log(i,output[0].code.length,gzipSync(output[0].code,{level:9}).length);}
