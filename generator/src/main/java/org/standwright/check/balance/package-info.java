/** Stability: statics on the support polygon, feet and floors. */
package org.standwright.check.balance;
