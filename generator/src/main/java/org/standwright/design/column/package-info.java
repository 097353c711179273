/** How the width is shared by bays and the height of a bay by what is in it. */
package org.standwright.design.column;
