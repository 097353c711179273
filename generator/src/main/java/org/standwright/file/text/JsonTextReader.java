package org.standwright.file.text;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import java.io.IOException;
import java.io.UncheckedIOException;

/**
 * Reads a JSON text in one pass: tree, positions of keys and values, and refusal of what the tree could not show: a key
 * given twice, numbers that no double can hold.
 */
public final class JsonTextReader {
    private static final int DEEPEST = 64;
    private static final int MOST_VALUES = 100_000;
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private final SourceText source;
    private final JsonParser parser;
    private final Positions positions = new Positions();
    private final Problems problems;
    private int values;

    private JsonTextReader(SourceText source, JsonParser parser) {
        this.source = source;
        this.parser = parser;
        this.problems = new Problems(source.file(), positions);
    }

    /** @throws DesignFileException when the text is no JSON, is nested too deeply, or names a field twice */
    public static JsonText read(SourceText source) {
        try (var parser = new JsonFactory().createParser(source.text())) {
            return new JsonTextReader(source, parser).read();
        } catch (JsonProcessingException e) {
            throw new DesignFileException(SyntaxProblem.of(source, e));
        } catch (IOException e) {
            throw new UncheckedIOException(e); // a text in memory has no input or output
        }
    }

    private JsonText read() throws IOException {
        parser.nextToken();
        var root = value("", 0);
        if (parser.nextToken() != null) {
            throw refused("there is more after the end", "Put everything inside one pair of braces { }.");
        }
        problems.throwIfAny();
        return new JsonText(source.file(), root, positions);
    }

    private JsonNode value(String pointer, int depth) throws IOException {
        if (depth >= DEEPEST && parser.currentToken().isStructStart()) {
            throw refused(
                    "this is nested deeper than " + DEEPEST + " levels",
                    "A design needs fewer than 10; look for brackets that are never closed.");
        }
        values++;
        if (values > MOST_VALUES) {
            throw refused("there are more than " + MOST_VALUES + " values", "A design needs a few hundred.");
        }
        positions.putValue(pointer, here());
        return switch (parser.currentToken()) {
            case START_OBJECT -> object(pointer, depth);
            case START_ARRAY -> array(pointer, depth);
            case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> number(pointer);
            case VALUE_TRUE, VALUE_FALSE -> NODES.booleanNode(parser.getBooleanValue());
            case VALUE_NULL -> NODES.nullNode();
            default -> NODES.textNode(parser.getText());
        };
    }

    private JsonNode object(String pointer, int depth) throws IOException {
        var object = NODES.objectNode();
        while (parser.nextToken() != JsonToken.END_OBJECT) {
            var name = parser.currentName();
            var child = Pointer.child(pointer, name);
            var at = here();
            if (object.has(name)) {
                var first = positions.key(child);
                var where = "line " + first.line() + ", column " + first.column();
                problems.key(child, at, "given twice, first in " + where, "Keep one.");
            }
            positions.putKey(child, at);
            parser.nextToken();
            object.set(name, value(child, depth + 1));
        }
        return object;
    }

    private JsonNode array(String pointer, int depth) throws IOException {
        var array = NODES.arrayNode();
        while (parser.nextToken() != JsonToken.END_ARRAY) {
            array.add(value(Pointer.child(pointer, array.size()), depth + 1));
        }
        return array;
    }

    private JsonNode number(String pointer) throws IOException {
        double number = parser.getDoubleValue();
        if (!Double.isFinite(number)) {
            problems.value(pointer, parser.getText(), "must be a number below 1e308", "Look for a digit too many.");
            return NODES.numberNode(0);
        }
        boolean whole = parser.currentToken() == JsonToken.VALUE_NUMBER_INT && Math.abs(number) < 1e15;
        return whole ? NODES.numberNode(parser.getLongValue()) : NODES.numberNode(number);
    }

    private DesignFileException refused(String rule, String wayOut) {
        return new DesignFileException(FileProblem.at(source.file(), here(), rule, wayOut));
    }

    private Position here() {
        var location = parser.currentTokenLocation();
        return new Position(location.getLineNr(), location.getColumnNr());
    }
}
