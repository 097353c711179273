package org.standwright.viewer.scene.around;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.standwright.design.built.CleatWall;
import org.standwright.design.built.Furniture;
import org.standwright.design.built.FurnitureVisitor;
import org.standwright.design.built.Stand;
import org.standwright.geom.Box3;

/**
 * All that stands around a piece of furniture.
 *
 * @param feed of a stand whose machine boards pass through
 * @param walls of walls of cleats
 */
public record Around(FloorGrid floor, Figure figure, Optional<FeedWay> feed, List<WallFace> walls) {
    public Around {
        walls = List.copyOf(walls);
    }

    public static Around of(Furniture furniture) {
        return of(furniture, Figure.USUAL_STATURE, FeedWay.USUAL_BOARD);
    }

    /**
     * @param stature of who stands beside it, mm; walls know their person themselves
     * @param board length of the boards that pass through the machine, mm
     */
    public static Around of(Furniture furniture, double stature, double board) {
        return furniture.accept(new FurnitureVisitor<>() {
            @Override
            public Around stand(Stand stand) {
                var box = stand.assembly().box();
                var feed = FeedWay.of(stand, board);
                var figure = Standing.by(box, feed, Figure.of(stature));
                return new Around(FloorGrid.around(box.union(figure.box())), figure, feed, List.of());
            }

            @Override
            public Around wall(CleatWall walls) {
                var figure = Standing.by(walls, Figure.of(walls.design().person()));
                var room = Stream.concat(
                                walls.walls().stream().map(WallFace::box),
                                Stream.of(walls.assembly().box(), figure.box()))
                        .toList();
                return new Around(
                        FloorGrid.around(Box3.around(room)),
                        figure,
                        Optional.empty(),
                        walls.walls().stream()
                                .map(wall -> WallFace.of(walls, wall.number()))
                                .toList());
            }
        });
    }
}
