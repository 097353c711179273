/** Rules on making: what can be cut and bored safely. */
package org.standwright.check.making;
