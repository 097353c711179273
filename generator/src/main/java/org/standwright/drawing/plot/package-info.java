/**
 * What is drawn at its true size for machines and templates: layers of paths with true arcs, in mm, x to the right and y up.
 */
package org.standwright.drawing.plot;
