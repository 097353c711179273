package org.standwright.viewer.app;

import java.io.PrintWriter;
import java.io.StringWriter;

/** What happens when the program itself fails: the work is kept first, then the maker is told. */
final class Crash {
    private final Keeper keeper;
    private final Dialogs dialogs;
    private boolean telling;

    Crash(Keeper keeper, Dialogs dialogs) {
        this.keeper = keeper;
        this.dialogs = dialogs;
    }

    /** On the screen's thread. A second fault, while the first is being told, is only printed. */
    void happened(Throwable fault) {
        fault.printStackTrace();
        if (telling) {
            return;
        }
        telling = true;
        try {
            keeper.keep();
            dialogs.fault(
                    "The program made a mistake: " + fault + ". Your work is kept, and the window goes on. If it does"
                            + " not, start it again: unsaved work is taken up.",
                    details(fault));
        } finally {
            telling = false;
        }
    }

    private static String details(Throwable fault) {
        var text = new StringWriter();
        fault.printStackTrace(new PrintWriter(text));
        return text.toString();
    }
}
