/**
 * Plots as DXF R2000 (AC1015), the first that has light polylines with arcs, as the DXF reference and the documentation of
 * ezdxf describe it.
 */
package org.standwright.export.dxf;
