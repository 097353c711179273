package org.standwright.viewer.paper;

import java.util.List;
import java.util.function.Consumer;
import javafx.stage.Window;
import org.standwright.drawing.Drawing;

/** The way to a printer. */
@FunctionalInterface
public interface Printing {
    /**
     * Asks which printer and prints; returns before the paper is out. On the screen's thread.
     *
     * @param owner the window that asks
     * @param said gets a sentence each time there is something to say, on the screen's thread
     */
    void print(List<Drawing> pages, Window owner, Consumer<String> said);
}
