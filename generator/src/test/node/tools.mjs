// Blanks and tools on the 1/1024 mm grid, as ToolsJson writes them, as solids of the manifold-3d library.
import { library, solid } from './kernel.mjs';

const PER_MM = 1024;

// where u, v and w of a prism point
const AXES = {
  UP: [0, 1, 2],
  ALONG_X: [1, 2, 0],
  ALONG_Y: [2, 0, 1],
};

const mm = units => units / PER_MM;

/** Column by column, as the library takes it: turned to its direction, then shifted to its bottom. */
function matrix(direction, bottom) {
  const columns = new Array(16).fill(0);
  AXES[direction].forEach((axis, column) => { columns[4 * column + axis] = 1; });
  columns[12 + AXES[direction][2]] = bottom;
  columns[15] = 1;
  return columns;
}

function prism({ direction, ring, bottom, top }) {
  const upright = library.Manifold.extrude([ring.map(corner => corner.map(mm))], mm(top - bottom));
  const placed = upright.transform(matrix(direction, mm(bottom)));
  upright.delete();
  return placed;
}

/** Corners at the bore, at the mouth and beyond it; the flanks are split as ours are. */
function cone({ mouth, bore, face, floor, beyond }) {
  const n = mouth.length;
  const level = (ring, z) => ring.flatMap(([u, v]) => [mm(u), mm(v), mm(z)]);
  const triangles = [];
  for (let i = 0; i < n; i++) {
    const next = (i + 1) % n;
    triangles.push([i, next, n + next], [i, n + next, n + i]);
    triangles.push([n + i, n + next, 2 * n + next], [n + i, 2 * n + next, 2 * n + i]);
    if (i > 0 && next > 0) {
      triangles.push([0, next, i], [2 * n, 2 * n + i, 2 * n + next]);
    }
  }
  const outwards = face > floor ? triangles : triangles.map(([a, b, c]) => [a, c, b]);
  return solid([...level(bore, floor), ...level(mouth, face), ...level(mouth, beyond)], outwards.flat());
}

export const build = tool => (tool.kind === 'cone' ? cone(tool) : prism(tool));
