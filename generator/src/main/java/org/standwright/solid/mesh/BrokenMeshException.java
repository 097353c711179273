package org.standwright.solid.mesh;

/** Pieces of faces that make no closed mesh; cut in another way they may. */
public final class BrokenMeshException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    public BrokenMeshException(String message) {
        super(message);
    }
}
