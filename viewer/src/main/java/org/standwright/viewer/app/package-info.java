/** Start and window. The model knows no node; the pane builds nodes and binds them to it. */
package org.standwright.viewer.app;
