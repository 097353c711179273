/** From cut trees to places and cuts in order, the kerf put back. */
package org.standwright.sheet.sawing;
