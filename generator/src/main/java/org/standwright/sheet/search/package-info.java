/** Finds cut trees for a packing job: {@link org.standwright.sheet.search.Packer} is the door. */
package org.standwright.sheet.search;
