package org.standwright.design.wall.holder;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import org.standwright.assembly.PlacedPart;
import org.standwright.geom.Vec3;
import org.standwright.part.Channel;
import org.standwright.part.Face;
import org.standwright.part.Hole;
import org.standwright.part.Part;

/**
 * One drawer: four walls that stand on a bottom, which reaches beyond them into the dados of the carcass. Sides sit in rabbets
 * of front and back; the front has a finger hole and is flush with the carcass.
 *
 * @param wall height of its walls, mm
 * @param number from the lowest, 1 for the first
 * @param front y of its front face
 * @param z underside of its bottom
 */
record DrawerBoards(HolderFrame frame, DrawerSize size, double wall, int number, double front, double z) {
    /** Through each bottom into the sides. */
    static final int SCREWS = 6;

    List<PlacedPart> boards() {
        double x = frame.board() + DrawerSize.SIDE_PLAY;
        double board = frame.board();
        double housed = frame.housing();
        double over = z + size.bottom();
        double rear = front + size.depth();
        var side = Part.blank("drawer side", frame.sheet(), size.depth() - 2 * board + 2 * housed, wall);
        var finger = Hole.through(size.front() / 2, wall / 2, DrawerSize.FINGER, "finger hole");
        var lay = frame.lay();
        return List.of(
                bottom(x),
                lay.facing(label("front"), end("drawer front", Face.BENCH).with(finger), x, front + board, over),
                lay.facing(label("back"), end("drawer back", Face.SHOW), x, rear, over),
                lay.standing(label("left side"), side, x, rear - board + housed, over),
                lay.standing(label("right side"), side, x + size.front() - board, rear - board + housed, over));
    }

    private Part end(String name, Face inside) {
        double length = size.front();
        return Part.blank(name, frame.sheet(), length, wall)
                .with(
                        Channel.across(inside, 0, frame.board(), wall, frame.housing()),
                        Channel.across(inside, length - frame.board(), length, wall, frame.housing()));
    }

    private PlacedPart bottom(double x) {
        double into = frame.housing();
        var corner = new Vec3(x - into, front, z);
        var placed = frame.lay()
                .bottom(
                        label("bottom"),
                        "drawer bottom",
                        size.bottomSheet(),
                        corner,
                        size.front() + 2 * into,
                        size.depth());
        var holes = new ArrayList<Hole>();
        for (double side : new double[] {x + frame.board() / 2, x + size.front() - frame.board() / 2}) {
            DoubleStream.of(0.25, 0.5, 0.75)
                    .mapToObj(share -> placed.placement().local(new Vec3(side, front + share * size.depth(), z)))
                    .map(at -> frame.screwing().sunk(Face.BENCH, at.x(), at.y(), "drawer bottom screw"))
                    .forEach(holes::add);
        }
        return new PlacedPart(placed.label(), placed.part().with(holes), placed.placement());
    }

    private String label(String part) {
        return "drawer " + number + " " + part;
    }
}
