/** The pane with the furniture in 3D: the view, and a strip of tools for it. */
package org.standwright.viewer.scene.tools;
