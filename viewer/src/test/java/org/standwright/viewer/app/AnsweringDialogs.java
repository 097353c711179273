package org.standwright.viewer.app;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Answers at once what a maker would be asked, and remembers what was said. */
final class AnsweringDialogs implements Dialogs {
    final List<String> said = new ArrayList<>();
    Optional<Path> toOpen = Optional.empty();
    Optional<Path> toSave = Optional.empty();
    Optional<Path> toFill = Optional.empty();
    Optional<String> answer = Optional.empty();

    @Override
    public Optional<Path> fileToOpen() {
        return toOpen;
    }

    @Override
    public Optional<Path> fileToSave(String title, String name, String ending) {
        said.add("save as " + name);
        return toSave;
    }

    @Override
    public Optional<Path> folderToFill() {
        return toFill;
    }

    @Override
    public Optional<String> ask(String title, String question, List<String> answers) {
        said.add(question);
        return answer;
    }

    @Override
    public void tell(String title, String words) {
        said.add(words);
    }

    @Override
    public void fault(String words, String details) {
        said.add(words);
    }
}
