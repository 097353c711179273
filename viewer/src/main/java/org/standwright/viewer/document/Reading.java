package org.standwright.viewer.document;

import java.util.List;
import java.util.Optional;
import org.standwright.design.ImpossibleDesignException;
import org.standwright.file.DesignFile;
import org.standwright.file.DesignFiles;
import org.standwright.file.PresetLibrary;
import org.standwright.file.text.DesignFileException;
import org.standwright.file.text.FileProblem;

/**
 * What came of reading a text.
 *
 * @param file the design in it; empty when there are problems
 */
public record Reading(Optional<DesignFile> file, List<FileProblem> problems) {
    public Reading {
        problems = List.copyOf(problems);
    }

    static Reading of(String name, String text, PresetLibrary presets) {
        try {
            return new Reading(Optional.of(DesignFiles.parse(name, text, presets)), List.of());
        } catch (DesignFileException refusal) {
            return new Reading(Optional.empty(), refusal.problems());
        }
    }

    /** The refusal of a design that was read, as a problem of its text. */
    public FileProblem problem(ImpossibleDesignException refusal) {
        return file.orElseThrow().problem(refusal);
    }
}
