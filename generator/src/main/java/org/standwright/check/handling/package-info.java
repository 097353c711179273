/** Rules on people: heights, lifting, the way to the workshop. */
package org.standwright.check.handling;
