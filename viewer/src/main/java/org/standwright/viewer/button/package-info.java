/** Buttons that show a sign and say in words what they do. */
package org.standwright.viewer.button;
