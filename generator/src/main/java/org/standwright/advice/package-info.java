/**
 * Other designs that are worth a look: which smallest change, within what the maker allows, saves a sheet or money.
 *
 * <p>A change is a value that makes one design of another. Each changed design is built, checked and planned like any
 * other; what cannot be built, or may not be built like this, is left out. Nothing is reported that its own plan does not
 * confirm. The same design gives the same advice.
 */
package org.standwright.advice;
