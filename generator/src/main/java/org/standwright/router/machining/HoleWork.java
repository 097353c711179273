package org.standwright.router.machining;

import java.util.List;
import java.util.Optional;
import org.standwright.design.kit.Router;
import org.standwright.drawing.plot.Mark;
import org.standwright.geom.Grid;
import org.standwright.geom.Loop;
import org.standwright.geom.Vec2;
import org.standwright.part.Face;
import org.standwright.part.Hole;
import org.standwright.part.Recess;

/** What each hole takes: a circle to bore or mill, or a mark where the router has no bit so small. */
final class HoleWork {
    /** Takes what is to be done. */
    interface Operations {
        void add(Optional<Face> face, Work work, Mark mark);
    }

    private final Ground ground;
    private final Router router;
    private final double through;
    private final Remarks remarks;
    private final Operations operations;

    HoleWork(Ground ground, Router router, double through, Remarks remarks, Operations operations) {
        this.ground = ground;
        this.router = router;
        this.through = through;
        this.remarks = remarks;
        this.operations = operations;
    }

    void add(Hole hole) {
        var at = new Vec2(hole.x(), hole.y());
        if (hole.recess().orElse(null) instanceof Recess.Counterbore flat) {
            var face = Optional.of(hole.face());
            round(at, flat.diameter(), face, Work.bore(flat.diameter(), flat.depth()), Work.pocket(flat.depth()));
        }
        if (hole.recess().orElse(null) instanceof Recess.Countersink cone) {
            remarks.countersink(hole, cone);
        }
        bore(hole, at);
    }

    private void bore(Hole hole, Vec2 at) {
        boolean whole = hole.depth().isEmpty();
        var face = whole && hole.recess().isEmpty() ? Optional.<Face>empty() : Optional.of(hole.face());
        double depth = hole.depth().orElse(through);
        if (Grid.less(hole.diameter(), router.smallestHole())) {
            if (ground.touches(Flat.disc(at, hole.diameter() / 2))) {
                operations.add(face, Work.centreMark(), new Mark.Spot(at));
                remarks.centreMark(hole);
            }
            return;
        }
        var work = whole ? Work.boreThrough(hole.diameter(), depth) : Work.bore(hole.diameter(), depth);
        round(at, hole.diameter(), face, work, whole ? Work.cutout(depth) : Work.pocket(depth));
    }

    /** A whole circle, unless it reaches out of the part so far that only what lies within may be cut. */
    private void round(Vec2 at, double diameter, Optional<Face> face, Work bore, Work clipped) {
        var disc = Flat.disc(at, diameter / 2);
        if (ground.reaches(disc)) {
            operations.add(face, bore, new Mark.Circle(at, diameter));
            return;
        }
        var arm = new Vec2(diameter / 2, 0);
        var loop = new Loop(List.of(new Loop.Corner(at.minus(arm), 1), new Loop.Corner(at.plus(arm), 1)));
        ground.clipped(loop).forEach(piece -> operations.add(face, clipped, new Mark.Closed(piece)));
    }
}
