/** The parts of a drawer and of what it runs on. */
package org.standwright.design.drawer;
