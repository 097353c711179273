package org.standwright.check;

/** How much a finding weighs, the heaviest first. */
public enum Severity {
    /** Do not build it like this. */
    STOP,
    /** Can be built; someone has to watch out. */
    CAUTION,
    /** Good to know. */
    NOTE,
    /** Looked at, and well within its limit. */
    FINE
}
