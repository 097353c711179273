// Reads every 3MF file that expected.tsv lists with the lib3mf library in its strict mode: no warning, every object a valid
// closed mesh with a name, as many parts and triangles as expected, and volume and centroid of all of them where they are
// built.
// usage: run judge-3mf.mjs FOLDER
import lib3mf from '@3mfconsortium/lib3mf';
import { judgeAll } from './expected.mjs';

const SHARE = 1e-6; // what a volume may differ by
const AWAY = 1e-3; // what a centroid may differ by, mm
const FILE = '/judged.3mf';

const library = await lib3mf();
const wrapper = new library.CWrapper();

// what the library has handed out has to be given back to it
const handedOut = [];

function hold(value) {
  handedOut.push(value);
  return value;
}

function giveBack() {
  while (handedOut.length > 0) {
    handedOut.pop().delete();
  }
}

function read(bytes) {
  library.FS.writeFile(FILE, bytes);
  const model = hold(wrapper.CreateModel());
  const reader = hold(model.QueryReader('3mf'));
  reader.SetStrictModeActive(true);
  reader.ReadFromFile(FILE);
  if (reader.GetWarningCount() !== 0) {
    throw new Error(`${reader.GetWarningCount()} warnings of the reader`);
  }
  return model;
}

function corner(vertex) {
  const point = [vertex.get_Coordinates0(), vertex.get_Coordinates1(), vertex.get_Coordinates2()];
  vertex.delete();
  return point;
}

function corners(triangle) {
  const indices = [triangle.get_Indices0(), triangle.get_Indices1(), triangle.get_Indices2()];
  triangle.delete();
  return indices;
}

const minus = (a, b) => a.map((coordinate, axis) => coordinate - b[axis]);
const dot = (a, b) => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
const cross = (a, b) => [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]];

/** Triangles, volume and centroid in the object's own frame, by tetrahedra up to its first vertex. */
function measured(object) {
  const name = object.GetName();
  if (name === '' || !object.IsValid() || !object.IsManifoldAndOriented()) {
    throw new Error(`object '${name}' is not a closed mesh with a name`);
  }
  const points = Array.from({ length: object.GetVertexCount() }, (_, i) => corner(object.GetVertex(i)));
  const triangles = object.GetTriangleCount();
  let sixfold = 0;
  const moment = [0, 0, 0];
  for (let i = 0; i < triangles; i++) {
    const [a, b, c] = corners(object.GetTriangle(i)).map(index => minus(points[index], points[0]));
    const part = dot(a, cross(b, c));
    sixfold += part;
    moment.forEach((_, axis) => { moment[axis] += part * (a[axis] + b[axis] + c[axis]) / 4; });
  }
  if (!(sixfold > 0)) {
    throw new Error(`volume of object '${name}' is ${sixfold / 6} mm3, but must be more than 0`);
  }
  return { triangles, volume: sixfold / 6, centroid: points[0].map((at, axis) => at + moment[axis] / sixfold) };
}

/** A point is a row before the matrix. */
const placed = (point, transform) => [0, 1, 2].map(column =>
  [...point, 1].reduce((sum, coordinate, row) => sum + coordinate * transform[`get_Fields_${row}_${column}`](), 0));

function* each(iterator, current) {
  hold(iterator);
  while (iterator.MoveNext()) {
    yield hold(iterator[current]());
  }
}

/** Every part that is built, where it is built. */
function built(model) {
  const objects = new Map();
  for (const object of each(model.GetMeshObjects(), 'GetCurrentMeshObject')) {
    objects.set(object.GetUniqueResourceID(), measured(object));
  }
  const parts = [];
  for (const item of each(model.GetBuildItems(), 'GetCurrent')) {
    const assembly = hold(model.GetComponentsObjectByID(hold(item.GetObjectResource()).GetUniqueResourceID()));
    const shift = hold(item.GetObjectTransform());
    for (let i = 0; i < assembly.GetComponentCount(); i++) {
      const component = hold(assembly.GetComponent(i));
      const object = objects.get(hold(component.GetObjectResource()).GetUniqueResourceID());
      const own = placed(object.centroid, hold(component.GetTransform()));
      parts.push({ ...object, centroid: placed(own, shift) });
    }
  }
  return parts;
}

function same(what, found, expected) {
  if (found !== expected) {
    throw new Error(`there are ${found} ${what}, but ${expected} are expected`);
  }
}

function judge(expected) {
  const parts = built(read(expected.bytes));
  const sum = of => parts.reduce((all, part) => all + of(part), 0);
  same('parts', parts.length, expected.parts);
  same('triangles', sum(part => part.triangles), expected.triangles);
  const volume = sum(part => part.volume);
  if (!(Math.abs(volume - expected.volume) <= SHARE * expected.volume)) {
    throw new Error(`volume is ${volume} mm3, but ${expected.volume} is expected`);
  }
  const centroid = [0, 1, 2].map(axis => sum(part => part.volume * part.centroid[axis]) / volume);
  if (!(Math.hypot(...minus(centroid, expected.centroid)) <= AWAY)) {
    throw new Error(`centroid is ${centroid} mm, but ${expected.centroid} is expected`);
  }
}

await judgeAll('.3mf', expected => {
  try {
    judge(expected);
  } finally {
    giveBack();
  }
});
