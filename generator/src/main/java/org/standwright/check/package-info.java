/**
 * What would go wrong in the workshop: rules that read furniture with everything that weighs on it, and report findings.
 * Rules stand in the packages inside this one, by what they look at; {@code check.rules} lists them all.
 */
package org.standwright.check;
