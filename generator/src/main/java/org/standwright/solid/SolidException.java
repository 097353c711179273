package org.standwright.solid;

import org.standwright.solid.mesh.BrokenMeshException;

/** No closed solid can be made of a part; the message names it. */
public final class SolidException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private SolidException(String message, Throwable cause) {
        super(message, cause);
    }

    static SolidException nothingLeft(String part) {
        return new SolidException(
                "the features of '" + part + "' leave nothing of it; make some of them shallower.", null);
    }

    static SolidException vanishing(String part) {
        return new SolidException(
                "'" + part + "' is shorter, narrower or thinner than 1/2048 mm; give it a size that can be cut.", null);
    }

    static SolidException broken(String part, BrokenMeshException last) {
        return new SolidException(
                "no closed solid can be made of '" + part + "', " + last.getMessage()
                        + "; move features apart that all but touch each other.",
                last);
    }
}
