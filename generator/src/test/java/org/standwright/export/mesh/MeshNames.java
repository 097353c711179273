package org.standwright.export.mesh;

import java.util.ArrayList;
import java.util.List;
import org.standwright.assembly.Assembly;
import org.standwright.assembly.Group;
import org.standwright.assembly.PlacedPart;
import org.standwright.assembly.Placement;
import org.standwright.geom.Axis;
import org.standwright.geom.Vec3;
import org.standwright.part.Grain;
import org.standwright.part.Material;
import org.standwright.part.Part;
import org.standwright.solid.AssemblySolids;

/** Boards one above the other, and such with names that files find hard to hold. */
final class MeshNames {
    /** Names that are all different, and worse than any that a design file may hold. */
    static final List<String> HARD = List.of(
            "plain",
            "a \"quoted\" & <tagged> 'name'",
            "two\nlines\tand a tab\r",
            "板",
            "側板",
            "Seitenwand weiß",
            "\ud83e\ude9a saw",
            "\ud83e\ude9b driver",
            "half \ud83e of a pair",
            "half \ude9a of a pair",
            "bell \u0007 and nothing \u0000",
            "no character \ufffe",
            "right to left \u202e",
            "# usemtl",
            "a/b\\c",
            "a b",
            "a_b",
            "long ".repeat(60),
            "long ".repeat(60) + "too",
            "-");

    private MeshNames() {}

    static AssemblySolids hard() {
        var parts = HARD.stream()
                .map(name -> Part.blank(name, new Material(name, 18, 700, Grain.NONE), 300, 200))
                .toList();
        return assembly("all of <\"these\u0000\n🪚\">", parts);
    }

    /** Each labelled as it is called. */
    static AssemblySolids assembly(String name, List<Part> parts) {
        var placed = new ArrayList<PlacedPart>();
        for (var part : parts) {
            var above = new Vec3(0, 0, 20 * placed.size());
            placed.add(new PlacedPart(part.name(), part, new Placement(Axis.X_PLUS, Axis.Y_PLUS, above)));
        }
        return AssemblySolids.of(new Assembly(name, List.of(Group.fixed(name, placed, List.of())), List.of()));
    }
}
