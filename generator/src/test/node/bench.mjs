// Builds parts with the manifold-3d library and says how long that takes: a stranger's figures beside ours.
// usage: node bench.mjs TOOLS.json, then a line on standard input for each answer, a line of JSON, wanted:
//   warm MS PART   builds for so long in each way, and stays with the faster one
//   time MS PART   builds for so long and tells every run's milliseconds
//   size PART      tells what comes of it
import fs from 'node:fs';
import readline from 'node:readline';
import { library } from './kernel.mjs';
import { build } from './tools.mjs';

const FEWEST = 3;

const ways = {
  'blank less all tools': (blank, tools) => library.Manifold.difference([blank, ...tools]),
  'union of tools first': (blank, tools) => {
    const union = library.Manifold.union(tools);
    const rest = blank.subtract(union);
    rest.numTri(); // it is worked out here, not when it is asked for
    union.delete();
    return rest;
  },
};
const parts = JSON.parse(fs.readFileSync(process.argv[2], 'utf8'));
const chosen = {};

/** Tools and result together; the caller gives the result back. */
function carve(part, way) {
  const blank = build(part.blank);
  const tools = part.tools.map(build);
  const rest = ways[way](blank, tools);
  rest.numTri();
  [blank, ...tools].forEach(used => used.delete());
  return rest;
}

function runs(part, way, forMillis) {
  const millis = [];
  const end = performance.now() + forMillis;
  while (millis.length < FEWEST || performance.now() < end) {
    const start = performance.now();
    const rest = carve(part, way);
    millis.push(performance.now() - start);
    rest.delete();
  }
  return millis;
}

const median = millis => [...millis].sort((a, b) => a - b)[Math.floor(millis.length / 2)];

function warm(name, forMillis) {
  const medians = Object.keys(ways).map(way => {
    const millis = runs(parts[name], way, forMillis);
    return [median(millis.slice(millis.length >> 1)), way];
  });
  chosen[name] = medians.sort(([a], [b]) => a - b)[0][1];
  return { way: chosen[name] };
}

function size(name) {
  const raw = carve(parts[name], chosen[name]);
  const simple = raw.simplify();
  const answer = {
    status: raw.status(),
    volume: raw.volume(),
    genus: raw.genus(),
    triangles: raw.numTri(),
    simplified: simple.numTri(),
  };
  raw.delete();
  simple.delete();
  return answer;
}

function answer(line) {
  const [, word, millis, name] = /^(warm|time|size) (?:(\d+) )?(.*)$/.exec(line);
  switch (word) {
    case 'warm': return warm(name, Number(millis));
    case 'time': return { millis: runs(parts[name], chosen[name], Number(millis)) };
    default: return size(name);
  }
}

console.log(JSON.stringify({ ready: true }));
for await (const line of readline.createInterface({ input: process.stdin })) {
  console.log(JSON.stringify(answer(line)));
}
