package org.standwright.design.top;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.standwright.assembly.Block;
import org.standwright.assembly.Group;
import org.standwright.assembly.PlacedPart;
import org.standwright.assembly.Placement;
import org.standwright.design.frame.Frame;
import org.standwright.design.kit.Edging;
import org.standwright.geom.Axis;
import org.standwright.geom.Vec3;
import org.standwright.part.Banding;
import org.standwright.part.Bands;
import org.standwright.part.Part;

/** The layers that lie on the sub-top, the upper one with its edges covered. */
final class WorktopMaker {
    /** The upper of two glued layers is cut over on every edge and trimmed flush, mm (shop practice). */
    private static final double CUT_OVER = 3;

    private final Frame frame;

    WorktopMaker(Frame frame) {
        this.frame = frame;
    }

    /** The worktop's group, before anything is cut into it. */
    Group group(List<Block> blocks) {
        var outline = WorktopSize.outline(frame);
        var worktop = frame.design().worktop();
        var material = worktop.sheet().material();
        var parts = new ArrayList<PlacedPart>();
        for (int layer = 1; layer <= worktop.layers(); layer++) {
            var name = worktop.layers() == 1 ? "worktop" : layer == 1 ? "worktop lower layer" : "worktop upper layer";
            var part = Part.blank(name, material, outline.width(), outline.height());
            double z = frame.top() + (layer - 1) * material.thickness();
            parts.add(new PlacedPart(
                    name,
                    layer == worktop.layers() ? upper(part) : part,
                    new Placement(Axis.X_PLUS, Axis.Y_PLUS, new Vec3(outline.x0(), outline.y0(), z))));
        }
        return Group.fixed("worktop", parts, blocks);
    }

    /** A layer with covered edges is cut to size for them; only a bare one is trimmed flush after gluing. */
    private Part upper(Part part) {
        var edges = frame.design().edges().worktop();
        var bands = new Bands(band(edges.left()), band(edges.right()), band(edges.front()), band(edges.back()));
        if (!bands.equals(Bands.NONE)) {
            return part.banded(bands);
        }
        return frame.design().worktop().layers() == 1 ? part : part.cutOver(CUT_OVER);
    }

    private static Optional<Banding> band(Optional<Edging> edging) {
        return edging.map(cover -> new Banding(cover.name(), cover.thickness()));
    }
}
