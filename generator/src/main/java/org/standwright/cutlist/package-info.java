/** What to cut and what to buy: equal parts of an assembly merged into lines, hardware counted. */
package org.standwright.cutlist;
