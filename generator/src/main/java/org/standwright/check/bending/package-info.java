/**
 * Whether anything sags, bends or racks under what a stand carries: formulas of beams and plates, then one rule a class.
 *
 * <p>Units: N, mm, N/mm² throughout; a load given as a mass is turned into N by the rule that knows it. Small deflections
 * and elastic boards are assumed everywhere; shear is left out, since panels are thin for their spans.
 */
package org.standwright.check.bending;
