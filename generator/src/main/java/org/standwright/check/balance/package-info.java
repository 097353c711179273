/**
 * Stability: does the stand tip, roll, rock or press its feet too hard? {@code Standing} puts a stand with all its
 * weights on the polygon of its feet; each rule says what acts on it besides. The statics are in {@link
 * org.standwright.check.balance.statics}.
 */
package org.standwright.check.balance;
