// Asks the glTF validator about every GLB file that expected.tsv lists: no error and no warning may be left.
// usage: run judge-glb.mjs FOLDER
import validator from 'gltf-validator';
import { judgeAll } from './expected.mjs';

await judgeAll('.glb', async ({ bytes }) => {
  const { issues } = await validator.validateBytes(new Uint8Array(bytes), { format: 'glb' });
  if (issues.numErrors + issues.numWarnings > 0) {
    const [{ code, message, pointer }] = issues.messages;
    throw new Error(`${issues.numErrors} errors, ${issues.numWarnings} warnings, first ${code} at ${pointer}: ${message}`);
  }
});
