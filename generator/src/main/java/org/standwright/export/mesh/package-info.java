/**
 * Solids as triangles for other programs, one writer per format: STL binary and as text, OBJ with its materials, 3MF, GLB.
 *
 * <p>Lengths are millimetres with z up, as in the assembly; only GLB asks for metres with y up. STL and OBJ don't say their
 * unit, so the files' names do.
 */
package org.standwright.export.mesh;
