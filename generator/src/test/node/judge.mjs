// Judges every STL file in a folder with the manifold-3d library: closed, two faces at each edge, volume above 0, and
// volume and genus as expected of it, if a list tells them: file, volume in mm3 and genus, with tabs between.
// usage: node judge.mjs FOLDER [EXPECTED.tsv]
import fs from 'node:fs';
import path from 'node:path';
import { solid } from './kernel.mjs';

const HEADER = 84; // bytes before the first facet of a binary STL: 80 of text, then the number of facets
const FACET = 50; // twelve floats (normal, three corners) and two spare bytes

// what a volume may differ by: mm3, and as a share
const ABSOLUTE = 1;
const RELATIVE = 1e-6;

/** Corners of a binary STL, welded where all three floats are equal. */
function weld(bytes) {
  if (bytes.length < HEADER || bytes.length !== HEADER + FACET * bytes.readUInt32LE(80)) {
    throw new Error('not a binary STL: its length does not follow from its number of facets');
  }
  const index = new Map();
  const coordinates = [];
  const corners = [];
  for (let facet = HEADER; facet < bytes.length; facet += FACET) {
    for (let corner = 0; corner < 3; corner++) {
      const point = [0, 4, 8].map(byte => bytes.readFloatLE(facet + 12 + 12 * corner + byte));
      const key = point.map(coordinate => coordinate + 0).join(' '); // + 0 turns -0 into 0
      if (!index.has(key)) {
        index.set(key, index.size);
        coordinates.push(...point);
      }
      corners.push(index.get(key));
    }
  }
  return { coordinates, corners };
}

function measured(file) {
  const { coordinates, corners } = weld(fs.readFileSync(file));
  const read = solid(coordinates, corners);
  const status = read.status();
  const found = { triangles: corners.length / 3, volume: read.volume(), genus: read.genus() };
  read.delete();
  if (status !== 'NoError') {
    throw new Error(status);
  }
  if (!(found.volume > 0)) {
    throw new Error(`volume is ${found.volume} mm3, but must be more than 0`);
  }
  return found;
}

function listed(file) {
  const lines = fs.readFileSync(file, 'utf8').split('\n').filter(line => line !== '').map(line => line.split('\t'));
  return new Map(lines.map(([name, volume, genus]) => [name, { volume: Number(volume), genus: Number(genus) }]));
}

function compare({ volume, genus }, expected) {
  if (expected === undefined) {
    throw new Error('nothing is expected of it');
  }
  if (!(Math.abs(volume - expected.volume) <= ABSOLUTE + RELATIVE * expected.volume)) {
    throw new Error(`volume is ${volume} mm3, but ${expected.volume} is expected`);
  }
  if (genus !== expected.genus) {
    throw new Error(`genus is ${genus}, but ${expected.genus} is expected`);
  }
}

const [folder, expectedFile] = process.argv.slice(2);
if (folder === undefined) {
  console.error('usage: node judge.mjs FOLDER [EXPECTED.json]');
  process.exit(2);
}
const expected = expectedFile === undefined ? undefined : listed(expectedFile);
const files = fs.readdirSync(folder, { recursive: true })
  .map(name => name.split(path.sep).join('/'))
  .filter(name => name.endsWith('.stl'))
  .sort();
let failed = files.length === 0 ? 1 : 0;
console.log(`${'triangles'.padStart(9)} ${'genus'.padStart(6)} ${'volume, mm3'.padStart(16)}  file`);
for (const file of files) {
  try {
    const found = measured(path.join(folder, file));
    if (expected !== undefined) {
      compare(found, expected.get(file));
    }
    const { triangles, genus, volume } = found;
    console.log(`${String(triangles).padStart(9)} ${String(genus).padStart(6)} ${volume.toFixed(3).padStart(16)}  ${file}`);
  } catch (error) {
    failed++;
    console.log(`${'FAILED'.padStart(9)}  ${file}: ${error.message}`);
  }
}
if (expected !== undefined) {
  const missing = [...expected.keys()].filter(file => !files.includes(file));
  failed += missing.length;
  missing.forEach(file => console.log(`${'FAILED'.padStart(9)}  ${file}: not there`));
}
console.log(`${files.length} solids read, ${failed} not accepted`);
process.exit(failed === 0 ? 0 : 1);
