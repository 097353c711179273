package org.standwright.cli;

import java.io.PrintStream;
import me.tongfei.progressbar.ConsoleProgressBarConsumer;

/** A terminal that keeps still for the first second. */
final class LateConsole extends ConsoleProgressBarConsumer {
    private static final long SECOND = 1_000_000_000;

    private final long start = System.nanoTime();
    private boolean shown;

    LateConsole(PrintStream terminal) {
        super(terminal);
    }

    @Override
    public void accept(String text) {
        if (System.nanoTime() - start > SECOND) {
            shown = true;
            super.accept(text);
        }
    }

    @Override
    public void clear() {
        if (shown) {
            super.clear();
        }
    }

    @Override
    public void close() {
        if (shown) {
            super.close();
        }
    }
}
