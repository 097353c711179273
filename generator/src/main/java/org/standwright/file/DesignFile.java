package org.standwright.file;

import org.standwright.design.Design;
import org.standwright.design.ImpossibleDesignException;
import org.standwright.file.text.FileProblem;
import org.standwright.file.text.JsonText;
import org.standwright.file.text.Problems;

/** A design file that was read: the design, and where each of its fields stands in the text. */
public final class DesignFile {
    private final JsonText json;
    private final Design design;

    DesignFile(JsonText json, Design design) {
        this.json = json;
        this.design = design;
    }

    /** Name of the file, as given to its reader. */
    public String file() {
        return json.file();
    }

    public Design design() {
        return design;
    }

    /** A refusal of the design as a problem of this file, at the field to change. */
    public FileProblem problem(ImpossibleDesignException refusal) {
        return new Problems(json.file(), json.positions()).about(refusal.field(), refusal.getMessage());
    }
}
