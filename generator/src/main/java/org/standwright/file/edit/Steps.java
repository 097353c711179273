package org.standwright.file.edit;

import java.util.Arrays;
import java.util.List;

/** The keys that a JSON pointer goes through. */
final class Steps {
    private Steps() {}

    static List<String> of(String pointer) {
        if (pointer.isEmpty()) {
            return List.of();
        }
        if (pointer.charAt(0) != '/') {
            throw new JsonEditException("pointer \"" + pointer + "\" must start with a slash, as /bays/0/width does.");
        }
        return Arrays.stream(pointer.substring(1).split("/", -1))
                .map(step -> step.replace("~1", "/").replace("~0", "~"))
                .toList();
    }
}
