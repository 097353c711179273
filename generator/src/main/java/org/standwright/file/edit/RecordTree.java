package org.standwright.file.edit;

import com.fasterxml.jackson.annotation.JsonProperty;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.lang.reflect.RecordComponent;
import java.util.Collection;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.standwright.design.kit.Edging;
import org.standwright.design.kit.Trim;
import org.standwright.file.Families;
import org.standwright.part.Colour;
import org.standwright.part.SheetGood;
import org.standwright.unit.Money;

/**
 * The tree that a record is read from: a field for each component, in mm, kg and N; none for a component that is empty.
 * It is what a file would say that used no units, presets and defaults.
 */
final class RecordTree {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private RecordTree() {}

    static JsonNode of(Object value) {
        if (value instanceof Record record) {
            return ofRecord(record);
        }
        if (value instanceof Collection<?> list) {
            var entries = NODES.arrayNode();
            list.forEach(entry -> entries.add(of(entry)));
            return entries;
        }
        if (value instanceof Enum<?> constant) {
            return NODES.textNode(word(constant));
        }
        if (value instanceof Integer number) {
            return NODES.numberNode(number.intValue());
        }
        if (value instanceof Double number) {
            return NODES.numberNode(number.doubleValue());
        }
        if (value instanceof Boolean yes) {
            return NODES.booleanNode(yes);
        }
        if (value instanceof String text) {
            return NODES.textNode(text);
        }
        throw new IllegalStateException("A " + value.getClass().getSimpleName() + " has no form in a design file.");
    }

    private static JsonNode ofRecord(Record record) {
        if (record instanceof SheetGood sheet) {
            return SheetTree.of(sheet);
        }
        if (record instanceof Edging edging) {
            return NODES.objectNode()
                    .put("name", edging.name())
                    .put("style", word(edging.kind()))
                    .put("thickness", edging.thickness());
        }
        if (record instanceof Trim trim) {
            return TrimTree.of(trim);
        }
        if (record instanceof Money || record instanceof Colour) {
            return NODES.textNode(record.toString());
        }
        var fields = NODES.objectNode();
        Families.word(record.getClass()).ifPresent(word -> fields.put(Families.chooser(record.getClass()), word));
        for (var component : record.getClass().getRecordComponents()) {
            put(fields, component.getName(), value(component, record));
        }
        return fields;
    }

    /** Puts a value, or what an optional one holds. */
    static void put(ObjectNode fields, String name, Object value) {
        present(value).ifPresent(given -> fields.set(name, of(given)));
    }

    private static Optional<?> present(Object value) {
        if (value instanceof Optional<?> optional) {
            return optional;
        }
        if (value instanceof OptionalDouble number) {
            return number.stream().boxed().findFirst();
        }
        if (value instanceof OptionalInt number) {
            return number.stream().boxed().findFirst();
        }
        return Optional.of(value);
    }

    /** What a file calls a constant: as it is annotated, else its name in small letters. */
    static String word(Enum<?> constant) {
        try {
            var annotated =
                    constant.getDeclaringClass().getField(constant.name()).getAnnotation(JsonProperty.class);
            return annotated == null ? constant.name().toLowerCase(Locale.ROOT).replace('_', '-') : annotated.value();
        } catch (NoSuchFieldException e) {
            throw new IllegalStateException(e); // every constant is a field
        }
    }

    private static Object value(RecordComponent component, Record record) {
        try {
            return component.getAccessor().invoke(record);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(e); // records of designs are public
        }
    }
}
