/**
 * Views, dimensions and tables as shapes on paper: not yet PDF, SVG or screen.
 *
 * <p>Paper frame: millimetres, x to the right, y up, origin at the lower left corner.
 */
package org.standwright.drawing;
