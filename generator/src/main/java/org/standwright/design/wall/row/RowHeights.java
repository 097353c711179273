package org.standwright.design.wall.row;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import org.standwright.design.ImpossibleDesignException;
import org.standwright.design.WallDesign;
import org.standwright.design.frame.Exact;
import org.standwright.design.wall.Cleat;
import org.standwright.design.wall.Rows;
import org.standwright.geom.Grid;
import org.standwright.unit.Units;

/** How high the rows of a design run, the same on all its walls: heights of strips' high edges above the floor, mm. */
public final class RowHeights {
    private final WallDesign design;
    private final Rows rows;
    private final Cleat cleat;
    private final Units units;

    private RowHeights(WallDesign design) {
        this.design = design;
        this.rows = design.rows();
        this.cleat = design.cleat();
        this.units = design.unit();
    }

    /**
     * From the lowest up. Refuses rows that are closer than a hanger needs, and limits that leave no room for one row.
     *
     * <p>{@link Rows.Even} takes the number of gaps whose pitch is nearest to the one wished for, of two as near the
     * fewer. {@link Rows.Reach} goes up from the lowest row; the gap above a row is the near one where any of it then
     * lies between elbow and eyes, and the far one elsewhere.
     */
    public static List<Double> of(WallDesign design) {
        return new RowHeights(design).heights();
    }

    private List<Double> heights() {
        limits();
        new HighestWall(design).holds(rows.lowest());
        if (rows instanceof Rows.Fixed fixed) {
            pitch("spacing", fixed.spacing());
            return up(height -> fixed.spacing());
        }
        if (rows instanceof Rows.Reach reach) {
            pitch("near", reach.near());
            pitch("far", reach.far());
            return up(height -> gap(height, reach));
        }
        if (rows instanceof Rows.Even even) {
            pitch("about", even.about());
            return evenly(even.about());
        }
        return up(height -> cleat.densestPitch());
    }

    private double gap(double height, Rows.Reach reach) {
        var person = design.person();
        boolean atHand = Grid.less(person.elbow(), height + reach.near()) && Grid.less(height, person.eye());
        return atHand ? reach.near() : reach.far();
    }

    private List<Double> up(DoubleUnaryOperator gap) {
        var heights = new ArrayList<Double>();
        double height = rows.lowest();
        while (!Grid.less(rows.highest(), height)) {
            heights.add(height);
            height += gap.applyAsDouble(height);
        }
        return heights;
    }

    private List<Double> evenly(double about) {
        double whole = rows.highest() - rows.lowest();
        if (!Grid.less(0, whole)) {
            return List.of(rows.lowest());
        }
        int most = (int) StrictMath.floor((whole + Grid.STEP) / cleat.densestPitch());
        if (most < 1) {
            throw new ImpossibleDesignException(
                    "/rows/highest",
                    "From the lowest row at " + units.length(rows.lowest()) + " to the highest at "
                            + units.length(rows.highest()) + " are " + units.length(whole)
                            + ", but a hanger gets in between two rows only if they are "
                            + units.length(cleat.densestPitch()) + " apart.",
                    List.of(
                            "Raise the highest row to " + Exact.up(units, rows.lowest() + cleat.densestPitch()) + ".",
                            "Or make both " + Exact.length(units, rows.lowest()) + " for a single row."));
        }
        int fewer = Math.max(1, Math.min(most, (int) StrictMath.floor(whole / about)));
        int more = Math.min(most, fewer + 1);
        double wide = whole / fewer - about;
        double narrow = about - whole / more;
        int gaps = narrow < wide - Grid.STEP ? more : fewer;
        return IntStream.rangeClosed(0, gaps)
                .mapToObj(i -> i == gaps ? rows.highest() : rows.lowest() + whole * i / gaps)
                .toList();
    }

    private void limits() {
        if (Grid.less(rows.highest(), rows.lowest())) {
            throw new ImpossibleDesignException(
                    "/rows/highest",
                    "The highest row at " + units.length(rows.highest()) + " is below the lowest at "
                            + units.length(rows.lowest()) + ", so there is no room for one.",
                    List.of("Make it " + Exact.length(units, rows.lowest()) + " or more."));
        }
        if (Grid.less(rows.lowest(), cleat.height())) {
            throw new ImpossibleDesignException(
                    "/rows/lowest",
                    "The lowest row at " + units.length(rows.lowest()) + " would reach into the floor: its strip is "
                            + units.length(cleat.height()) + " high below its high edge.",
                    List.of("Make it " + Exact.up(units, cleat.height()) + " or more."));
        }
    }

    private void pitch(String field, double pitch) {
        if (Grid.less(pitch, cleat.densestPitch())) {
            throw new ImpossibleDesignException(
                    "/rows/" + field,
                    "Rows " + units.length(pitch) + " apart leave no room for a hanger: a strip of "
                            + units.length(cleat.face()) + ", the hanger's short face of "
                            + units.length(cleat.shortFace()) + " and " + units.length(cleat.headroom())
                            + " to lift it take " + units.length(cleat.densestPitch()) + ".",
                    List.of("Make it " + Exact.up(units, cleat.densestPitch()) + " or more."));
        }
    }
}
