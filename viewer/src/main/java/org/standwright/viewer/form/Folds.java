package org.standwright.viewer.form;

import java.util.HashSet;
import java.util.Set;

/** Which groups are open, by the path of their row; 'More' of a group by the path and a mark. */
final class Folds {
    private final Set<String> open = new HashSet<>();

    boolean isOpen(String path) {
        return open.contains(path);
    }

    void set(String path, boolean isOpen) {
        if (isOpen) {
            open.add(path);
        } else {
            open.remove(path);
        }
    }

    Set<String> open() {
        return Set.copyOf(open);
    }

    static String more(String path) {
        return path + "/…";
    }
}
