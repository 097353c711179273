/**
 * Lengths, masses, forces and money as people write them.
 *
 * <p>Inside the program a length is a double in millimetres, a mass in kilograms and a force in newtons; a unit exists
 * only at the edges, in this package.
 */
package org.standwright.unit;
