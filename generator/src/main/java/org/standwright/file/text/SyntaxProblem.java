package org.standwright.file.text;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.io.JsonEOFException;
import java.util.regex.Pattern;

/** Says in plain words why a text is no JSON, from the first character that does not fit. */
final class SyntaxProblem {
    private static final Pattern NO_NUMBER = Pattern.compile("[+-]?(?i:nan|inf|infinity)(?![\\w\"])");

    private final SourceText source;
    private final Position position;
    private final int offset;

    private SyntaxProblem(SourceText source, Position position, int offset) {
        this.source = source;
        this.position = position;
        this.offset = offset;
    }

    static FileProblem of(SourceText source, JsonProcessingException e) {
        var location = e.getLocation();
        if (location == null) {
            return FileProblem.whole(
                    source.file(), "holds a number or a name that is far too long", "Look for a key that got stuck.");
        }
        int offset = (int) location.getCharOffset();
        int word = startOfWord(source.text(), offset);
        if (NO_NUMBER
                .matcher(source.text())
                .region(word, source.text().length())
                .lookingAt()) {
            var start = new Position(location.getLineNr(), location.getColumnNr() - (offset - word));
            return new SyntaxProblem(source, start, word)
                    .says("this is not a number that JSON knows", "Write one in digits.");
        }
        var position = new Position(location.getLineNr(), location.getColumnNr());
        var problem = new SyntaxProblem(source, position, offset);
        return e instanceof JsonEOFException || problem.offset >= source.text().length()
                ? problem.says("the text ends too early", "Close every quote, bracket and brace.")
                : problem.byCharacter();
    }

    private static int startOfWord(String text, int offset) {
        int start = Math.min(offset, text.length());
        while (start > 0 && (Character.isLetter(text.charAt(start - 1)) || "+-".indexOf(text.charAt(start - 1)) >= 0)) {
            start--;
        }
        return start;
    }

    private FileProblem byCharacter() {
        char c = source.text().charAt(offset);
        return switch (c) {
            case '/', '#' -> says("comments are no part of JSON", "Put the words into a \"note\" field.");
            case '\'', '\u2018', '\u2019', '\u201c', '\u201d' ->
                says("this quote is no part of JSON", "Use plain double quotes.");
            case '"' -> says("a comma or a colon is missing before this", "Put a comma after each field but the last.");
            case '\n', '\r' -> says("a closing quote is missing in this line", "Texts end on the line they start on.");
            case ':' -> says("no colon can stand here", "Put fields in braces { }; brackets [ ] hold lists.");
            case '}', ']' -> closing();
            default -> says("this is no JSON", "Put words, and quantities with a unit, in double quotes: \"876 mm\".");
        };
    }

    private FileProblem closing() {
        return source.text().substring(0, offset).stripTrailing().endsWith(",")
                ? says("a comma stands before the closing bracket", "Take the last comma away.")
                : says("this bracket closes nothing", "Give every { its } and every [ its ].");
    }

    private FileProblem says(String rule, String wayOut) {
        return FileProblem.at(source.file(), position, rule, wayOut);
    }
}
