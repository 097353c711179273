package org.standwright.design.built;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.stream.Stream;
import org.standwright.assembly.PlacedPart;
import org.standwright.design.ImpossibleDesignException;

/** The sheet parts of a stand by the names that a design file may use for them. */
public final class NamedParts {
    private final List<PlacedPart> parts;

    /** @param all parts of sheets and of bars, of which the latter are left out */
    public NamedParts(List<PlacedPart> all) {
        this.parts =
                all.stream().filter(part -> !part.part().material().isBar()).toList();
    }

    /**
     * The parts that a list of names means, in its order: one by its label, or all that are called so.
     *
     * @throws ImpossibleDesignException when a name means none
     */
    List<PlacedPart> of(String field, List<String> names) {
        var found = new LinkedHashSet<PlacedPart>();
        for (int i = 0; i < names.size(); i++) {
            found.addAll(of(field + "/" + i, names.get(i)));
        }
        return List.copyOf(found);
    }

    private List<PlacedPart> of(String field, String name) {
        var single = parts.stream().filter(part -> part.label().equals(name)).toList();
        var found = single.isEmpty() ? called(name).toList() : single;
        if (found.isEmpty()) {
            throw unknown(field, name, "part");
        }
        return found;
    }

    /** @throws ImpossibleDesignException when no part is called so */
    public void require(String field, String name) {
        if (called(name).findAny().isEmpty()) {
            throw unknown(field, name, "kind of part");
        }
    }

    private Stream<PlacedPart> called(String name) {
        return parts.stream().filter(part -> part.part().name().equals(name));
    }

    private ImpossibleDesignException unknown(String field, String name, String what) {
        var known = parts.stream().map(part -> part.part().name()).distinct().toList();
        return new ImpossibleDesignException(
                field,
                "No " + what + " of this stand is called '" + name + "'.",
                List.of("There are '" + String.join("', '", known) + "'."));
    }
}
