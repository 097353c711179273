/** How little any plan needs: {@link org.standwright.sheet.bound.LowerBound} is the door. */
package org.standwright.sheet.bound;
