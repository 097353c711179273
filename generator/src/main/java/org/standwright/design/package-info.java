/**
 * One class per piece of furniture: what the maker decided goes in, an assembly comes out. Arithmetic only: no files, no
 * screen.
 *
 * <p>The records here carry the same names as the fields of a design file, lengths in mm and masses in kg.
 */
package org.standwright.design;
