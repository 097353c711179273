/** Screws and other fasteners, and the rules on what they carry. */
package org.standwright.check.fastener;
