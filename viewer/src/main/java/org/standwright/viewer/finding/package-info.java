/**
 * What the rules say of a design: the heaviest first, each with its figure beside its limit, where that comes from, and
 * a button for the change that answers it.
 *
 * <p>Severity is told by a sign, a word and a colour, never by colour alone. What somebody accepted is folded away with
 * the reason; what is fine is counted and shown when asked for.
 */
package org.standwright.viewer.finding;
