/** The text of the design file: JSON with colours, and what is wrong with it under the line that it is about. */
package org.standwright.viewer.text;
