package org.standwright.check.balance;

import java.util.List;
import java.util.stream.Stream;
import org.standwright.check.Finding;
import org.standwright.check.LoadedStand;
import org.standwright.check.Rule;
import org.standwright.check.RuleText;
import org.standwright.check.balance.statics.Force;
import org.standwright.check.balance.statics.Moments;
import org.standwright.check.balance.statics.TippingEdge;
import org.standwright.design.StandDesign;
import org.standwright.design.built.Stand;
import org.standwright.design.kit.Side;
import org.standwright.design.kit.WorkingForce;
import org.standwright.geom.Vec2;
import org.standwright.geom.Vec3;

/**
 * The force of work at the machine, along and against its feed as it stands turned; without a feed, to and from the
 * operator. A machine that hangs in the worktop or is the worktop itself has its underside at the worktop's upper face.
 */
public final class TipFeed implements Rule<LoadedStand> {
    private static final RuleText TEXT = new RuleText(
            "tip-feed",
            "Does it tip while the machine is fed?",
            "ratio = R / O, with O including F H",
            "Contents count only where they tip. Swivel casters point the worst way. It does not "
                    + "slide. Drawers and doors are closed.",
            "statics; the limits are our own choice");

    @Override
    public RuleText text() {
        return TEXT;
    }

    @Override
    public List<Finding> check(LoadedStand loaded) {
        return loaded.design().machine().workingForce().stream()
                .map(force -> finding(loaded, force))
                .toList();
    }

    private static Finding finding(LoadedStand loaded, WorkingForce force) {
        var standing = new Standing(loaded);
        double height = underside(loaded.stand()) + force.height();
        // the moment of a level force does not ask where on the worktop it acts
        var middle = loaded.stand().worktop().centre();
        var at = new Vec3(middle.x(), middle.y(), height);
        var way = way(infeed(loaded.design()));
        var fed = standing.closed().with(edge -> bothWays(force.force(), way, at, edge));
        return new Verdict(
                        TEXT,
                        loaded.design().machine().name(),
                        "Fed with " + loaded.units().force(force.force()) + " at "
                                + loaded.units().length(height),
                        standing,
                        fed)
                .within(Verdict.IN_USE);
    }

    /** Height of the underside of the machine's base, mm. */
    private static double underside(Stand stand) {
        return stand.machine()
                .map(machine -> machine.base().min().z())
                .orElseGet(() -> stand.worktop().max().z());
    }

    /** The stand's side at which boards go in, or the person works. */
    private static Side infeed(StandDesign design) {
        var machine = design.machine();
        return machine.feed()
                .infeed()
                .orElse(machine.operator())
                .turned(design.place().turn());
    }

    private static List<Moments> bothWays(double force, Vec2 way, Vec3 at, TippingEdge edge) {
        return Stream.of(way, way.times(-1))
                .map(direction -> edge.of(Force.level(force, direction, at)))
                .toList();
    }

    private static Vec2 way(Side from) {
        return from == Side.LEFT || from == Side.RIGHT ? new Vec2(1, 0) : new Vec2(0, 1);
    }
}
