/**
 * Parts where they belong: the one model that checks, solids, lists, plans and drawings read.
 *
 * <p>Assembly frame, right-handed, mm: x to the right, y away from the person, z up from the floor.
 */
package org.standwright.assembly;
