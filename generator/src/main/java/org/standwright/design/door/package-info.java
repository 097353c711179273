/** Doors: their panels, what they hang on, and where they reach when they open. */
package org.standwright.design.door;
