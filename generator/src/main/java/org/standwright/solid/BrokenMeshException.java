package org.standwright.solid;

/** One way of building a solid has failed; another may still do. */
final class BrokenMeshException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    BrokenMeshException(String message) {
        super(message);
    }
}
