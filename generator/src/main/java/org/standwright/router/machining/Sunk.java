package org.standwright.router.machining;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.standwright.geom.Grid;
import org.standwright.geom.Loop;
import org.standwright.geom.Outline;
import org.standwright.geom.Vec2;
import org.standwright.part.Channel;
import org.standwright.part.Face;
import org.standwright.part.Feature;
import org.standwright.part.Part;
import org.standwright.part.Pocket;

/**
 * An area that is cut out with upright walls.
 *
 * @param radius of its inside corners, mm
 * @param depth from its face, the thickness for one right through, mm
 * @param runOuts how far and which way each side runs out past the part's edge, for those that lie on one
 */
record Sunk(Feature feature, Face face, Outline outline, double radius, double depth, List<Optional<Vec2>> runOuts) {
    static Sunk of(Channel channel, Ground ground) {
        var outline = Outline.of(channel.area());
        return new Sunk(channel, channel.face(), outline, 0, channel.depth(), runOuts(outline, ground, true));
    }

    static Sunk of(Pocket pocket, Ground ground, double thickness) {
        var outline = pocket.outline();
        return new Sunk(
                pocket,
                pocket.face(),
                outline,
                pocket.radius(),
                pocket.depthIn(thickness),
                runOuts(outline, ground, pocket.radius() == 0));
    }

    /** As the finished part has it: nothing runs out. */
    static Sunk finished(Pocket pocket, Part part) {
        var runOuts = runOuts(pocket.outline(), new Ground(part, 0), pocket.radius() == 0).stream()
                .map(runOut -> runOut.map(by -> Vec2.ZERO))
                .toList();
        return new Sunk(
                pocket, pocket.face(), pocket.outline(), pocket.radius(), pocket.depthIn(part.thickness()), runOuts);
    }

    /** Rounded pockets keep their corners on a contour. */
    private static List<Optional<Vec2>> runOuts(Outline outline, Ground ground, boolean square) {
        return IntStream.range(0, outline.corners().size())
                .mapToObj(i -> ground.runOut(outline.corner(i), outline.corner(i + 1), square))
                .toList();
    }

    int count() {
        return outline.corners().size();
    }

    Corner corner(int index) {
        return Corner.of(outline, index);
    }

    /** Whether the bit leaves the part beside a corner, so that it has no wall there. */
    boolean isOpen(int corner) {
        return runOut(corner - 1).isPresent() || runOut(corner).isPresent();
    }

    private Optional<Vec2> runOut(int side) {
        return runOuts.get(Math.floorMod(side, count()));
    }

    /** Its corners as the model has them. */
    List<CornerCut> designed() {
        return IntStream.range(0, count())
                .mapToObj(
                        i -> isRounded(i) ? corner(i).round(radius) : corner(i).square())
                .toList();
    }

    boolean isRounded(int corner) {
        return radius > 0 && corner(corner).isInside() && !isOpen(corner);
    }

    /** The line round it, its corners cut as told. */
    Loop loop(List<CornerCut> cuts) {
        var line = new ArrayList<Loop.Corner>();
        for (int i = 0; i < count(); i++) {
            line.addAll(corner(i, cuts.get(i)));
        }
        return new Loop(tidy(line));
    }

    private List<Loop.Corner> corner(int index, CornerCut cut) {
        var before = runOut(index - 1).orElse(Vec2.ZERO);
        var after = runOut(index).orElse(Vec2.ZERO);
        var at = outline.corner(index);
        boolean leaves = after.length() > 0;
        boolean comes = before.length() > 0;
        if (leaves && comes) {
            boolean on = Grid.same(before.minus(after).length(), 0);
            return List.of(corner(at.plus(on ? after : before.plus(after))));
        }
        if (comes) {
            return List.of(corner(at.plus(before)), corner(at));
        }
        return leaves ? List.of(corner(at), corner(at.plus(after))) : cut.line();
    }

    private static Loop.Corner corner(Vec2 at) {
        return new Loop.Corner(at, 0);
    }

    /** Without sides of no length, as roundings leave them that meet. */
    private static List<Loop.Corner> tidy(List<Loop.Corner> line) {
        var tidy = new ArrayList<Loop.Corner>();
        for (int i = 0; i < line.size(); i++) {
            var next = line.get((i + 1) % line.size());
            var corner = line.get(i);
            if (corner.bulge() != 0 || next.at().minus(corner.at()).length() > Grid.STEP) {
                tidy.add(corner);
            }
        }
        return tidy;
    }
}
