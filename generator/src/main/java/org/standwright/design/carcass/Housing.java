package org.standwright.design.carcass;

import java.util.List;
import org.standwright.design.ImpossibleDesignException;
import org.standwright.design.frame.Exact;
import org.standwright.design.frame.Frame;
import org.standwright.geom.Grid;
import org.standwright.geom.Rect;
import org.standwright.part.Channel;
import org.standwright.part.Face;
import org.standwright.part.Run;

/**
 * How deep panels are housed in each other. What may be met from both faces at one place keeps a web between the two
 * dados: a partition by levels, a divider by partitions.
 */
final class Housing {
    private final Frame frame;

    Housing(Frame frame) {
        this.frame = frame;
    }

    /**
     * @throws ImpossibleDesignException when a dado would be too deep or too shallow, or when partitions and levels meet
     *     whose dados would leave too little between them
     */
    void check(Panels panels) {
        if (panels.haveHoused()) {
            new JointFit(frame.design()).housing();
        }
        double least = JointFit.LEAST_WEB + 2 * JointFit.LEAST_HOUSING;
        if (!panels.partitions().isEmpty() && !panels.inner().isEmpty() && Grid.less(frame.panel(), least)) {
            var units = frame.design().unit();
            throw new ImpossibleDesignException(
                    "/carcass/sheet",
                    "A carcass panel of " + units.length(frame.panel())
                            + " is too thin for dados from both faces, which leave "
                            + units.length(JointFit.LEAST_WEB) + " of wood between them.",
                    List.of("Use a sheet of " + Exact.up(units, least) + " or more."));
        }
    }

    /** Depth of a dado in a partition or a divider. */
    private double shared() {
        return Math.min(frame.housing(), (frame.panel() - JointFit.LEAST_WEB) / 2);
    }

    /** Depth in the upright that has a face in this plane, for a divider or a fixed shelf. */
    double inUpright(double x) {
        return frame.isSide(x) ? frame.housing() : shared();
    }

    /** How deep a level is let into the upright that has a face in this plane. */
    double of(Level level, double x) {
        boolean outer = Grid.less(level.z(), frame.openingBottom()) || Grid.same(level.z(), frame.openingTop());
        return outer ? frame.engagement() : inUpright(x);
    }

    /** How deep a partition is let into the level that has its upper or lower face at this height. */
    double inLevel(Upright partition, double z) {
        if (partition.kind() == Upright.Kind.PARTITION) {
            return frame.engagement();
        }
        return Grid.same(z, frame.openingBottom()) || Grid.same(z, frame.openingTop()) ? frame.housing() : shared();
    }

    /** A dado for a panel whose lower or left face lies at {@code x} in the part, from {@code y0} to {@code y1}. */
    Channel dado(Face face, double x, double y0, double y1, double depth) {
        double fit = frame.design().carcass().fit() / 2;
        return new Channel(face, Run.ACROSS, new Rect(x - fit, y0, x + frame.panel() + fit, y1), depth);
    }
}
