package org.standwright.viewer.app;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** Everything that the window asks its maker in a box of its own; tests answer by themselves. */
interface Dialogs {
    /** A design file to open. */
    Optional<Path> fileToOpen();

    /** Where to save a file; with a name of this ending, such as '.json'. */
    Optional<Path> fileToSave(String title, String name, String ending);

    /** A folder for many files. */
    Optional<Path> folderToFill();

    /**
     * A question with some answers.
     *
     * @param answers of which the first is the usual one
     * @return the answer; nothing when the box was closed
     */
    Optional<String> ask(String title, String question, List<String> answers);

    /** Something to know. */
    void tell(String title, String words);

    /** A fault of the program. */
    void fault(String words, String details);
}
