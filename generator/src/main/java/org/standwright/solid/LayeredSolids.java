package org.standwright.solid;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.standwright.solid.layer.Footprint;
import org.standwright.solid.layer.Layers;
import org.standwright.solid.mesh.BrokenMeshException;
import org.standwright.solid.mesh.Mesh;
import org.standwright.solid.mesh.Planes;
import org.standwright.solid.mesh.Shell;

/**
 * The fast way to a solid. Cuts that meet nothing are added as they are ({@link FreeCut}); those from the two faces in
 * layers, each cluster that hangs together for itself ({@link Layers}); only where a tool that comes from the side, or a
 * cone, meets others, the CSG kernel cuts a small cell around it ({@link Cells}).
 */
final class LayeredSolids {
    private final Workpiece workpiece;
    private final Planes planes = new Planes();
    private final Shell shell = new Shell(planes);
    private final List<Prism> upright = new ArrayList<>();
    private final List<Tool> sideways = new ArrayList<>();

    private LayeredSolids(Workpiece workpiece) {
        this.workpiece = workpiece;
    }

    /** Throws {@link BrokenMeshException} when no closed mesh comes of it. */
    static Mesh of(Workpiece workpiece) {
        var mesh = new LayeredSolids(workpiece).mesh();
        VolumeCheck.check(mesh, workpiece);
        return mesh;
    }

    private Mesh mesh() {
        addFree();
        addLayers();
        new Cells(workpiece, planes).add(sideways, upright, shell);
        return shell.closed();
    }

    private void addFree() {
        var cuts = workpiece.cuts();
        var extents = new Extent[cuts.size()];
        for (int i = 0; i < extents.length; i++) {
            extents[i] = cuts.get(i).extent();
        }
        for (int i = 0; i < extents.length; i++) {
            var free = touchesAny(extents, i) ? Optional.<FreeCut>empty() : FreeCut.of(cuts.get(i), workpiece);
            if (free.isPresent()) {
                free.get().addTo(shell, planes, workpiece.board());
            } else {
                sort(cuts.get(i));
            }
        }
    }

    private static boolean touchesAny(Extent[] extents, int one) {
        for (int i = 0; i < extents.length; i++) {
            if (i != one && extents[i].touches(extents[one])) {
                return true;
            }
        }
        return false;
    }

    private void sort(Cut cut) {
        for (var tool : cut.tools()) {
            if (tool instanceof Prism prism && prism.isUpright()) {
                upright.add(prism);
            } else if (!sideways.contains(tool)) {
                sideways.add(tool);
            }
        }
    }

    private void addLayers() {
        var atRim = new ArrayList<Footprint>();
        for (var cluster : Clusters.of(upright)) {
            boolean amidst = true;
            var footprints = new ArrayList<Footprint>();
            for (var prism : cluster) {
                amidst &= workpiece.isAmidst(prism.ring());
                footprints.add(new Footprint(prism.ring(), prism.bottom(), prism.top()));
            }
            if (amidst) {
                Layers.add(
                        shell,
                        planes,
                        Optional.empty(),
                        footprints,
                        workpiece.board().z1());
            } else {
                atRim.addAll(footprints);
            }
        }
        Layers.add(
                shell,
                planes,
                Optional.of(workpiece.blank().ring()),
                atRim,
                workpiece.board().z1());
    }
}
