// The manifold-3d library, and solids by it.
import Module from 'manifold-3d';

export const library = await Module();
library.setup();

/** A solid from flat lists of coordinates and of vertex numbers; throws if they enclose none. */
export function solid(coordinates, corners) {
  return new library.Manifold(new library.Mesh({
    numProp: 3,
    vertProperties: Float32Array.from(coordinates),
    triVerts: Uint32Array.from(corners),
  }));
}
