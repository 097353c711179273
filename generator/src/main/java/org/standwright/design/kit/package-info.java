/**
 * What is bought or already there, as its owner measured it: machines, sheets' companions and hardware. Each is what one
 * preset describes; lengths in mm, masses in kg, forces in N.
 */
package org.standwright.design.kit;
