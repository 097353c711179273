package org.standwright.viewer.work;

import java.util.List;
import org.standwright.file.text.FileProblem;
import org.standwright.viewer.document.Document;

/**
 * A text and what is wrong with it.
 *
 * @param problems none for a good one
 */
public record Settled(Document document, List<FileProblem> problems) {
    public Settled {
        problems = List.copyOf(problems);
    }
}
