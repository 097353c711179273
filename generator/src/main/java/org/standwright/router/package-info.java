/**
 * Sheets cut by a CNC router: which part lies where, and which face of it is up. A board's frame: x along its length, y
 * across, z up, its origin in the corner that the sheet is zeroed at, mm.
 */
package org.standwright.router;
