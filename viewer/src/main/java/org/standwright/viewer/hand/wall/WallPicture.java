package org.standwright.viewer.hand.wall;

import java.util.List;
import java.util.stream.Stream;
import org.standwright.design.wall.Cleat;
import org.standwright.geom.Rect;
import org.standwright.geom.Vec2;
import org.standwright.viewer.hand.change.Mark;

/** What of walls is seen from the room besides what can be picked. */
record WallPicture(List<Seen> walls, Cleat cleat) {
    /** Seen beyond the walls, mm. */
    private static final double MARGIN = 60;

    Rect bounds() {
        double right = walls.get(walls.size() - 1).bounds().x1();
        double low =
                walls.stream().mapToDouble(wall -> wall.bounds().y0()).min().orElseThrow();
        double high =
                walls.stream().mapToDouble(wall -> wall.bounds().y1()).max().orElseThrow();
        return new Rect(-MARGIN, low - MARGIN, right + MARGIN, high + MARGIN);
    }

    /** Behind the obstacles and holders. */
    List<Mark> under() {
        return walls.stream()
                .flatMap(wall -> Stream.of(surface(wall), studs(wall), kept(wall), strips(wall))
                        .flatMap(marks -> marks))
                .toList();
    }

    private static Stream<Mark> surface(Seen wall) {
        var corners = wall.wall().outline().corners().stream()
                .map(corner -> new Vec2(wall.left() + corner.x(), corner.y()))
                .toList();
        return Stream.of(new Mark(corners, true, "surface"));
    }

    private static Stream<Mark> studs(Seen wall) {
        var bounds = wall.bounds();
        return wall.wall().studs().stream()
                .map(stud ->
                        Mark.line(wall.left() + stud.x(), bounds.y0(), wall.left() + stud.x(), bounds.y1(), "stud"));
    }

    private static Stream<Mark> kept(Seen wall) {
        return wall.wall().zones().stream().map(zone -> Mark.area(wall.shown(zone.kept()), "kept"));
    }

    private Stream<Mark> strips(Seen wall) {
        return wall.wall().strips().stream()
                .map(strip -> Mark.area(
                        wall.shown(new Rect(
                                strip.along().from(),
                                strip.top() - cleat.face(),
                                strip.along().to(),
                                strip.top())),
                        "strip"));
    }
}
