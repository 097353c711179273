package org.standwright.file.text;

import java.util.List;
import java.util.stream.Collectors;

/** A file that cannot be used, with everything that is wrong with it. */
public final class DesignFileException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final transient List<FileProblem> problems;

    /** @param problems in the order in which they are told; at least one */
    public DesignFileException(List<FileProblem> problems) {
        super(problems.stream().map(FileProblem::message).collect(Collectors.joining("\n")));
        this.problems = List.copyOf(problems);
    }

    public DesignFileException(FileProblem problem) {
        this(List.of(problem));
    }

    public List<FileProblem> problems() {
        return problems;
    }
}
