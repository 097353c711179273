package org.standwright.router.machining;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.standwright.design.kit.Router;
import org.standwright.drawing.plot.Mark;
import org.standwright.geom.Loop;
import org.standwright.part.Bevel;
import org.standwright.part.Channel;
import org.standwright.part.Contour;
import org.standwright.part.EdgeHole;
import org.standwright.part.Face;
import org.standwright.part.FeatureVisitor;
import org.standwright.part.Hole;
import org.standwright.part.Part;
import org.standwright.part.Pocket;

/** What each feature of one part takes of a router, and what there is to say about it. */
final class FeatureWork implements FeatureVisitor<Void> {
    private final Part part;
    private final Router router;
    private final Ground ground;
    private final Neighbours neighbours;
    private final double through;
    private final boolean afterTrim;
    private final List<Operation> operations = new ArrayList<>();
    private final Remarks remarks;
    private final HoleWork holes;

    FeatureWork(Part part, Router router, double thickness, Ground ground, Sizes sizes) {
        this.part = part;
        this.router = router;
        this.ground = ground;
        neighbours = new Neighbours(part, Corner.WIDER * router.bit() / 2);
        through = thickness + router.below();
        afterTrim = Trim.comesFirst(part);
        remarks = new Remarks(router, sizes);
        holes = new HoleWork(ground, router, through, remarks, this::add);
    }

    List<Operation> operations() {
        return operations;
    }

    List<String> remarks() {
        return remarks.all();
    }

    @Override
    public Void channel(Channel channel) {
        var sunk = neighbours.runInto(Sunk.of(channel, ground), router.bit() / 2);
        var reliefs = sink(sunk, Optional.of(channel.face()), Work.channel(channel.depth()));
        if (channel.isStopped(part.length(), part.width())) {
            remarks.stopped(channel, reliefs);
        } else {
            remarks.corners(channel.purpose(), reliefs);
        }
        return null;
    }

    @Override
    public Void pocket(Pocket pocket) {
        var sunk = Sunk.of(pocket, ground, part.thickness());
        boolean whole = pocket.depth().isEmpty();
        var reliefs = sink(
                sunk,
                whole ? Optional.empty() : Optional.of(pocket.face()),
                whole ? Work.cutout(through) : Work.pocket(pocket.depth().getAsDouble()));
        remarks.corners(pocket.purpose(), reliefs);
        remarks.radius(pocket, sunk);
        return null;
    }

    @Override
    public Void hole(Hole hole) {
        holes.add(hole);
        return null;
    }

    @Override
    public Void edgeHole(EdgeHole hole) {
        return null;
    }

    @Override
    public Void bevel(Bevel bevel) {
        return null;
    }

    /** It is the outline, unless the part leaves the sheet larger. */
    @Override
    public Void contour(Contour contour) {
        if (part.oversize() > 0) {
            add(
                    Optional.empty(),
                    Work.outline(through, through).afterTrim(),
                    new Mark.Closed(Loop.of(contour.outline())));
        }
        return null;
    }

    private Reliefs sink(Sunk sunk, Optional<Face> face, Work work) {
        var width = new Width(sunk.loop(sunk.designed()), router.bit());
        var widest = width.widest();
        if (widest.isPresent()) {
            remarks.narrow(sunk, widest.getAsDouble());
            draw(sunk.loop(sunk.designed()), face, work.narrow(widest.getAsDouble()));
            return new Reliefs(sunk);
        }
        if (width.isNarrowInPlaces()) {
            remarks.narrowInPlaces(sunk);
        }
        var reliefs = new Reliefs(sunk, router, ground, neighbours);
        draw(sunk.loop(reliefs.cuts()), face, work);
        return reliefs;
    }

    private void draw(Loop loop, Optional<Face> face, Work work) {
        ground.clipped(loop).forEach(piece -> add(face, work, new Mark.Closed(piece)));
    }

    private void add(Optional<Face> face, Work work, Mark mark) {
        operations.add(new Operation(face, afterTrim && work.kind() != Kind.OUTLINE ? work.afterTrim() : work, mark));
    }
}
