// Judges every STL file in a folder with the manifold-3d library: closed, two faces at each edge, volume above 0.
// usage: node judge.mjs FOLDER
import fs from 'node:fs';
import path from 'node:path';
import Module from 'manifold-3d';

const HEADER = 84; // bytes before the first facet of a binary STL: 80 of text, then the number of facets
const FACET = 50; // twelve floats (normal, three corners) and two spare bytes

/** Corners of a binary STL, welded where all three floats are equal. */
function weld(bytes) {
  if (bytes.length < HEADER || bytes.length !== HEADER + FACET * bytes.readUInt32LE(80)) {
    throw new Error('not a binary STL: its length does not follow from its number of facets');
  }
  const index = new Map();
  const vertProperties = [];
  const triVerts = [];
  for (let facet = HEADER; facet < bytes.length; facet += FACET) {
    for (let corner = 0; corner < 3; corner++) {
      const point = [0, 4, 8].map(byte => bytes.readFloatLE(facet + 12 + 12 * corner + byte));
      const key = point.map(coordinate => coordinate + 0).join(' '); // + 0 turns -0 into 0
      if (!index.has(key)) {
        index.set(key, index.size);
        vertProperties.push(...point);
      }
      triVerts.push(index.get(key));
    }
  }
  return { vertProperties, triVerts };
}

function judge(library, file) {
  const { vertProperties, triVerts } = weld(fs.readFileSync(file));
  const solid = new library.Manifold(new library.Mesh({
    numProp: 3,
    vertProperties: Float32Array.from(vertProperties),
    triVerts: Uint32Array.from(triVerts),
  }));
  const status = solid.status();
  const verdict = { triangles: triVerts.length / 3, status, volume: solid.volume(), genus: solid.genus() };
  solid.delete();
  if (status !== 'NoError') {
    throw new Error(status);
  }
  if (!(verdict.volume > 0)) {
    throw new Error(`volume is ${verdict.volume} mm3, but must be more than 0`);
  }
  return verdict;
}

const folder = process.argv[2];
if (folder === undefined) {
  console.error('usage: node judge.mjs FOLDER');
  process.exit(2);
}
const files = fs.readdirSync(folder, { recursive: true }).filter(name => name.endsWith('.stl')).sort();
const library = await Module();
library.setup();
let failed = files.length === 0 ? 1 : 0;
console.log(`${'triangles'.padStart(9)} ${'genus'.padStart(6)} ${'volume, mm3'.padStart(16)}  file`);
for (const file of files) {
  try {
    const { triangles, genus, volume } = judge(library, path.join(folder, file));
    console.log(`${String(triangles).padStart(9)} ${String(genus).padStart(6)} ${volume.toFixed(3).padStart(16)}  ${file}`);
  } catch (error) {
    failed++;
    console.log(`${'FAILED'.padStart(9)}  ${file}: ${error.message}`);
  }
}
console.log(`${files.length} solids read, ${failed} not accepted`);
process.exit(failed === 0 ? 0 : 1);
