package org.standwright.file.text;

import java.util.Optional;

/**
 * One thing wrong with a file, in words for its writer.
 *
 * @param file as its reader named it
 * @param position of the key or value; empty when the file as a whole is meant
 * @param field such as {@code bays[0].width}; empty when no field is meant
 * @param value as written; empty when the message is not about a value
 * @param rule what it must be, or what is wrong
 * @param wayOut what to write instead
 */
public record FileProblem(
        String file, Optional<Position> position, String field, String value, String rule, String wayOut) {

    /** A problem of the file as a whole. */
    public static FileProblem whole(String file, String rule, String wayOut) {
        return new FileProblem(file, Optional.empty(), "", "", rule, wayOut);
    }

    /** A problem at one place of the text, where no field can be named. */
    static FileProblem at(String file, Position position, String rule, String wayOut) {
        return new FileProblem(file, Optional.of(position), "", "", rule, wayOut);
    }

    /** {@code rack.json line 12, column 9: field "layers" is 3, but must be 1 to 2. The nearest is 2.} */
    public String message() {
        var sentence = place() + subject() + rule + ".";
        return wayOut.isEmpty() ? sentence : sentence + " " + wayOut;
    }

    private String place() {
        return position.map(at -> file + " line " + at.line() + ", column " + at.column() + ": ")
                .orElse(file + " ");
    }

    private String subject() {
        if (field.isEmpty()) {
            return value.isEmpty() ? "" : "is " + value + ", but ";
        }
        return "field \"" + field + "\"" + (value.isEmpty() ? ": " : " is " + value + ", but ");
    }
}
