package org.standwright.part;

/** Which way a channel is cut. */
public enum Run {
    /** Along the grain (part x). */
    ALONG,
    /** Across the grain (part y). */
    ACROSS
}
