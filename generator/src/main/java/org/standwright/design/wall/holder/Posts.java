package org.standwright.design.wall.holder;

import java.util.List;
import java.util.stream.IntStream;
import org.standwright.assembly.PlacedPart;
import org.standwright.geom.Grid;
import org.standwright.geom.Outline;
import org.standwright.geom.Rect;
import org.standwright.geom.Vec2;
import org.standwright.part.Channel;
import org.standwright.part.Contour;
import org.standwright.part.Face;
import org.standwright.part.Feature;
import org.standwright.part.Part;
import org.standwright.part.Run;

/**
 * Brackets that stand out from the back, glued into dados of it, at the ends into rabbets.
 *
 * @param places left faces, from the left, mm
 * @param length how far they stand out from the back's face, mm
 * @param top height of their upper edges
 * @param nose how high their front ends are, mm; less than at the back, they are cut to a slope below
 */
record Posts(
        HolderFrame frame, double width, List<Double> places, double length, double bottom, double top, double nose) {
    /** Length of the lower edge before the slope begins, mm; common practice, no source. */
    private static final double FOOT = 15;

    Posts {
        places = List.copyOf(places);
    }

    List<PlacedPart> boards() {
        var part = part();
        return IntStream.range(0, places.size())
                .mapToObj(i -> frame.lay()
                        .standing("bracket " + (i + 1), part, places.get(i), frame.face() + frame.housing(), bottom))
                .toList();
    }

    /** In the back. */
    List<Feature> dados() {
        return places.stream()
                .<Feature>map(x -> across(x, width, 0, top - bottom))
                .toList();
    }

    /** Over the whole width of a board that lies across all noses, in the frame of that board. */
    List<Feature> dadosIn(Face face, double length, double height) {
        return places.stream()
                .<Feature>map(x -> new Channel(face, Run.ACROSS, area(x, length, 0, height), frame.housing()))
                .toList();
    }

    private Channel across(double x, double length, double y0, double y1) {
        return new Channel(Face.SHOW, Run.ACROSS, area(x, length, y0, y1), frame.housing());
    }

    /** As wide as the board and its fit, but never beyond a rabbet's end. */
    private Rect area(double x, double length, double y0, double y1) {
        double play = frame.design().making().fit() / 2;
        double x0 = Grid.same(x, 0) ? 0 : x - play;
        double x1 = x + frame.board();
        return new Rect(x0, y0, Grid.same(x1, length) ? length : x1 + play, y1);
    }

    private Part part() {
        double height = top - bottom;
        double out = length + frame.housing();
        var part = Part.blank("bracket", frame.sheet(), out, height);
        if (!Grid.less(nose, height)) {
            return part;
        }
        double foot = frame.housing() + Math.min(FOOT, length / 3);
        return part.with(new Contour(
                new Outline(List.of(
                        new Vec2(0, 0),
                        new Vec2(foot, 0),
                        new Vec2(out, height - nose),
                        new Vec2(out, height),
                        new Vec2(0, height))),
                "bracket"));
    }
}
