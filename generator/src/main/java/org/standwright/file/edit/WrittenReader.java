package org.standwright.file.edit;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Finds where the keys and values of a JSON text stand. */
final class WrittenReader {
    private static final JsonFactory JSON = new JsonFactory();
    private static final String BYTE_ORDER_MARK = "\ufeff";

    private final String text;
    private final JsonParser parser;
    /** Characters that the parser does not see. */
    private final int before;

    private WrittenReader(String text, JsonParser parser, int before) {
        this.text = text;
        this.parser = parser;
        this.before = before;
    }

    /** @throws JsonEditException when the text is no JSON */
    static Written read(String text) {
        int before = text.startsWith(BYTE_ORDER_MARK) ? 1 : 0;
        try (var parser = JSON.createParser(text.substring(before))) {
            return new WrittenReader(text, parser, before).whole();
        } catch (JsonProcessingException e) {
            var at = e.getLocation();
            throw new JsonEditException("The text is no JSON at line " + at.getLineNr() + ", column " + at.getColumnNr()
                    + ": " + e.getOriginalMessage() + ".");
        } catch (IOException e) {
            throw new UncheckedIOException(e); // a text in memory has no input or output
        }
    }

    private Written whole() throws IOException {
        if (parser.nextToken() == null) {
            throw new JsonEditException("The text is empty, but must be a JSON value.");
        }
        var root = value();
        if (parser.nextToken() != null) {
            throw new JsonEditException("The text goes on after its end, at line "
                    + parser.currentTokenLocation().getLineNr() + ".");
        }
        return root;
    }

    private Written value() throws IOException {
        int start = start();
        return switch (parser.currentToken()) {
            case START_OBJECT -> {
                var members = fields();
                yield new Written(Span.between(start, start() + 1), Written.Shape.OBJECT, members);
            }
            case START_ARRAY -> {
                var members = entries();
                yield new Written(Span.between(start, start() + 1), Written.Shape.LIST, members);
            }
            case VALUE_STRING -> new Written(string(start), Written.Shape.SINGLE, List.of());
            default -> new Written(new Span(start, parser.getTextLength()), Written.Shape.SINGLE, List.of());
        };
    }

    private List<Written.Member> fields() throws IOException {
        var members = new ArrayList<Written.Member>();
        while (parser.nextToken() != JsonToken.END_OBJECT) {
            var name = parser.currentName();
            var key = string(start());
            parser.nextToken();
            members.add(new Written.Member(name, Optional.of(key), value()));
        }
        return members;
    }

    private List<Written.Member> entries() throws IOException {
        var members = new ArrayList<Written.Member>();
        while (parser.nextToken() != JsonToken.END_ARRAY) {
            members.add(new Written.Member(Integer.toString(members.size()), Optional.empty(), value()));
        }
        return members;
    }

    private int start() {
        return before + (int) parser.currentTokenLocation().getCharOffset();
    }

    /** From quote to quote. */
    private Span string(int start) {
        int end = start + 1;
        while (text.charAt(end) != '"') {
            end += text.charAt(end) == '\\' ? 2 : 1;
        }
        return Span.between(start, end + 1);
    }
}
