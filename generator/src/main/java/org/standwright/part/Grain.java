package org.standwright.part;

/** Whether a board's face has a direction that its parts must keep. */
public enum Grain {
    /** Parts keep their length along the sheet's length. */
    ALONG_LENGTH,
    /** No visible direction: parts may be turned by 90° on the sheet. */
    NONE
}
