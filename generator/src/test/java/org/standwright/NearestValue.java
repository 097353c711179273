package org.standwright;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.regex.Pattern;
import org.standwright.design.stand.Clearances;

/** Whether the message of a refusal names a value that builds when it is copied to its place, word for word. */
final class NearestValue {
    private NearestValue() {}

    /**
     * @param stand to start from: 'planer', 'plain' (the same without bolts and notches) or 'drill' (in inches)
     * @param changes JSON pointers and the values that make it impossible
     * @param field that the refusal points at
     * @param way a pattern whose groups are the values in the message
     * @param where JSON pointers of the fields that take them, one a group, with blanks between
     */
    static void check(String stand, String changes, String field, String way, String where) {
        var design = start(stand).with(changes);
        var refused = design.refusal();
        assertThat(refused.field()).as(refused.getMessage()).isEqualTo(field);
        var found = Pattern.compile(way).matcher(refused.getMessage());
        assertThat(found.find()).as("'%s' in: %s", way, refused.getMessage()).isTrue();

        var pointers = where.split(" ");
        assertThat(pointers).hasSize(found.groupCount());
        for (int i = 0; i < pointers.length; i++) {
            design = design.copied(pointers[i], found.group(i + 1));
        }
        Clearances.check(design.stand().assembly());
    }

    private static ChangedDesign start(String stand) {
        return switch (stand) {
            case "planer" -> ChangedDesign.of("planer-stand");
            case "drill" -> ChangedDesign.of("drill-press-stand");
            default -> ChangedDesign.of("planer-stand").with("""
                        {
                          "/machine": {
                            "name": "machine without bolts",
                            "base": { "width": 400, "depth": 300 },
                            "envelope": { "width": 400, "depth": 300, "height": 300 },
                            "mass": 30,
                            "reference": { "kind": "table", "height": 100 }
                          },
                          "/drawers/grip": { "kind": "pull", "pull": "pull-96" }
                        }""");
        };
    }
}
