package org.standwright.file.edit;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.MissingNode;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;

/** Whether two trees mean the same: numbers but for the noise of sums, objects without what no record has. */
final class SameTree {
    /** Of sums of doubles, in mm; below what any text of a length says. */
    private static final double NOISE = 1e-9;

    /** Fields for readers, and of presets as files of their own. */
    private static final Set<String> UNREAD = Set.of("note", "unit", "version");

    private SameTree() {}

    static boolean is(JsonNode one, JsonNode other) {
        if (one.isNumber() && other.isNumber()) {
            return isSame(one.doubleValue(), other.doubleValue());
        }
        if (one.isObject() && other.isObject()) {
            return fields(one, other).stream().allMatch(name -> is(field(one, name), field(other, name)));
        }
        if (one.isArray() && other.isArray()) {
            return one.size() == other.size()
                    && IntStream.range(0, one.size()).allMatch(index -> is(one.get(index), other.get(index)));
        }
        return one.equals(other);
    }

    static boolean isSame(double one, double other) {
        return Math.abs(one - other) <= NOISE;
    }

    /** Names of the fields that either has, without those that nothing follows from. */
    static Set<String> fields(JsonNode one, JsonNode other) {
        var names = new TreeSet<String>();
        one.fieldNames().forEachRemaining(names::add);
        other.fieldNames().forEachRemaining(names::add);
        names.removeAll(UNREAD);
        return names;
    }

    private static JsonNode field(JsonNode object, String name) {
        return object.has(name) ? object.get(name) : MissingNode.getInstance();
    }
}
