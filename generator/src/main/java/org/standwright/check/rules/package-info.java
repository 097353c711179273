/** The list of all rules. */
package org.standwright.check.rules;
