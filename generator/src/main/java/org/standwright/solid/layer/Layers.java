package org.standwright.solid.layer;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.standwright.solid.mesh.BrokenMeshException;
import org.standwright.solid.mesh.Planes;
import org.standwright.solid.mesh.Shell;

/** From footprints that meet to the surface that they leave. */
public final class Layers {
    private Layers() {}

    /**
     * Adds to {@code shell} what the cuts change in the surface of a board from z = 0 to {@code thickness}: with a blank
     * the whole surface of what is left of it, without one only the difference from a board that goes on for ever.
     *
     * @param cuts that meet each other and nothing else
     * @throws BrokenMeshException when the cuts have too many different depths for this way
     */
    public static void add(Shell shell, Planes planes, Optional<Ring> blank, List<Footprint> cuts, int thickness) {
        var rings = new ArrayList<Ring>();
        if (blank.isPresent()) {
            rings.add(blank.get());
        }
        for (var cut : cuts) {
            rings.add(cut.ring());
        }
        var slices = Slices.of(blank.isPresent(), cuts, thickness);
        var arrangement = Arrangement.of(rings);
        new Walls(arrangement, new Solidity(arrangement, slices), slices.levels(), planes, shell).add();
    }
}
