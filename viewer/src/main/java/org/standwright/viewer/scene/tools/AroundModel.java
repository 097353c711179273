package org.standwright.viewer.scene.tools;

import java.util.List;
import java.util.Optional;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.DoubleProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleDoubleProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.value.ObservableValue;
import org.standwright.viewer.scene.around.Around;
import org.standwright.viewer.scene.around.FeedWay;
import org.standwright.viewer.scene.around.Figure;
import org.standwright.viewer.scene.around.FloorGrid;
import org.standwright.viewer.scene.around.WallFace;

/** What there is around the furniture, and which of it is to be seen. */
final class AroundModel {
    private final BooleanProperty floor = new SimpleBooleanProperty(this, "floor", true);
    private final BooleanProperty person = new SimpleBooleanProperty(this, "person", false);
    private final BooleanProperty feed = new SimpleBooleanProperty(this, "feed", false);
    private final BooleanProperty wall = new SimpleBooleanProperty(this, "wall", true);
    private final DoubleProperty board = new SimpleDoubleProperty(this, "board", FeedWay.USUAL_BOARD);
    private final ObjectProperty<Optional<Around>> around =
            new SimpleObjectProperty<>(this, "around", Optional.empty());

    BooleanProperty floorProperty() {
        return floor;
    }

    BooleanProperty personProperty() {
        return person;
    }

    /** The way of the boards through the machine. */
    BooleanProperty feedProperty() {
        return feed;
    }

    BooleanProperty wallProperty() {
        return wall;
    }

    /** Length of the boards that pass through the machine, mm. */
    DoubleProperty boardProperty() {
        return board;
    }

    /** All there is; empty until it is worked out. */
    ObjectProperty<Optional<Around>> aroundProperty() {
        return around;
    }

    /** Whether boards pass through the machine. */
    ObservableValue<Boolean> hasFeed() {
        return around.map(all -> all.flatMap(Around::feed).isPresent());
    }

    ObservableValue<Boolean> hasWalls() {
        return around.map(all -> all.filter(known -> !known.walls().isEmpty()).isPresent());
    }

    Optional<FloorGrid> seenFloor() {
        return around.get().filter(all -> floor.get()).map(Around::floor);
    }

    Optional<Figure> seenPerson() {
        return around.get().filter(all -> person.get()).map(Around::figure);
    }

    Optional<FeedWay> seenFeed() {
        return around.get().filter(all -> feed.get()).flatMap(Around::feed);
    }

    Optional<List<WallFace>> seenWalls() {
        return around.get().filter(all -> wall.get()).map(Around::walls);
    }
}
