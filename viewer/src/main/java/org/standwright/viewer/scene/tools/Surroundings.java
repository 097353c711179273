package org.standwright.viewer.scene.tools;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import javafx.scene.Group;
import javafx.scene.Node;
import javafx.scene.paint.Material;
import org.standwright.design.built.Furniture;
import org.standwright.viewer.scene.AssemblyView;
import org.standwright.viewer.scene.Newest;
import org.standwright.viewer.scene.around.Around;
import org.standwright.viewer.scene.around.AroundNodes;
import org.standwright.viewer.scene.around.FeedWay;
import org.standwright.viewer.scene.around.Figure;
import org.standwright.viewer.scene.around.FloorGrid;
import org.standwright.viewer.scene.around.WallFace;

/** Draws what is around the furniture, after the furniture. */
final class Surroundings {
    private final AroundModel model;
    private final Slot<FloorGrid> floor;
    private final Slot<Figure> person;
    private final Slot<List<WallFace>> walls;
    private final Slot<List<WallFace>> swings;
    private final Slot<FeedWay> feed;
    private final Newest<Asked, Around> newest;
    private Optional<Furniture> furniture = Optional.empty();

    private record Asked(Furniture furniture, double board) {
        Around around() {
            return Around.of(furniture, Figure.USUAL_STATURE, board);
        }
    }

    Surroundings(AssemblyView view, AroundModel model) {
        this.model = model;
        var nodes = new AroundNodes(styleClass -> paint(view, styleClass), view::colour);
        floor = new Slot<>(nodes::floor);
        person = new Slot<>(nodes::figure);
        walls = new Slot<>(faces -> all(faces, nodes::wall));
        swings = new Slot<>(faces -> all(faces, nodes::swings));
        feed = new Slot<>(nodes::feed);
        newest = new Newest<>(
                Asked::around,
                made -> AfterPulse.run(() -> model.aroundProperty().set(Optional.of(made))));
        view.add(new Group(floor.node(), walls.node(), person.node()), new Group(swings.node(), feed.node()));
        follow();
    }

    private static Material paint(AssemblyView view, String styleClass) {
        boolean isLine = styleClass.equals(AroundNodes.FLOOR_LINE) || styleClass.equals(AroundNodes.HEAVY_FLOOR_LINE);
        return isLine ? view.glow(styleClass) : view.paint(styleClass);
    }

    private static Node all(List<WallFace> faces, Function<WallFace, Node> draw) {
        return new Group(faces.stream().map(draw).toList());
    }

    /** Something else is to be surrounded. */
    void around(Furniture next) {
        furniture = Optional.of(next);
        newest.ask(new Asked(next, model.boardProperty().get()));
    }

    private void follow() {
        model.boardProperty().subscribe(board -> furniture.ifPresent(this::around));
        model.aroundProperty().subscribe(this::draw);
        List.of(model.floorProperty(), model.personProperty(), model.feedProperty(), model.wallProperty())
                .forEach(seen -> seen.subscribe(this::draw));
    }

    private void draw() {
        floor.show(model.seenFloor());
        person.show(model.seenPerson());
        walls.show(model.seenWalls());
        swings.show(model.seenWalls());
        feed.show(model.seenFeed());
    }
}
