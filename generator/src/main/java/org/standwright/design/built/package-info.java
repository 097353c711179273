/** A stand as it was worked out: its height stack, its openings and what is in them, and everything at its place. */
package org.standwright.design.built;
