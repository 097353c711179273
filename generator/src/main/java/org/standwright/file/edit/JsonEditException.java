package org.standwright.file.edit;

/** An edit that cannot be made: the text is no JSON, or has no such place. */
public final class JsonEditException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    JsonEditException(String message) {
        super(message);
    }
}
