/** Beams and plates: what sags under a load. */
package org.standwright.check.bending;
