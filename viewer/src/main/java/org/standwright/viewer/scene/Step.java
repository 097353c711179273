package org.standwright.viewer.scene;

import java.util.Set;

/**
 * A step of putting a piece of furniture together.
 *
 * @param name what is added: 'Carcass'
 * @param seen labels of all that is there when it is done
 */
public record Step(String name, Set<String> seen) {
    public Step {
        seen = Set.copyOf(seen);
    }
}
