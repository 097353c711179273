package org.standwright.cli;

/** What a run tells the program that called it. */
final class ExitCode {
    static final int FINE = 0;
    /** Everything was written, but a finding says not to build it like this. */
    static final int STOPS = 1;
    /** The command, the design file or a preset cannot be used. */
    static final int BAD_INPUT = 2;

    static final int NOT_WRITTEN = 3;
    /** A mistake in the program. */
    static final int UNEXPECTED = 70;

    private ExitCode() {}
}
