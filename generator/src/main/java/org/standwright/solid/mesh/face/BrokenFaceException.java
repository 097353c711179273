package org.standwright.solid.mesh.face;

/** Loops that are not the boundaries of faces: they cross, or run the wrong way round. */
public final class BrokenFaceException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    BrokenFaceException(String message) {
        super(message);
    }
}
