package org.standwright.viewer.app;

import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.layout.BorderPane;
import org.standwright.design.built.CleatWall;
import org.standwright.design.built.Furniture;
import org.standwright.design.built.FurnitureVisitor;
import org.standwright.design.built.Stand;
import org.standwright.make.Built;
import org.standwright.viewer.hand.ElevationPane;
import org.standwright.viewer.hand.FrontPane;
import org.standwright.viewer.work.Desk;

/** The pane in which each kind of furniture is changed by hand. */
final class ByHand extends BorderPane {
    private final Desk desk;

    ByHand(Desk desk) {
        this.desk = desk;
        visibleProperty().bind(desk.builtProperty().map(Optional::isPresent));
        desk.builtProperty()
                .map(built -> built.map(Built::furniture).map(Furniture::getClass))
                .subscribe(kind -> desk.builtProperty()
                        .get()
                        .ifPresent(built -> setCenter(built.furniture().accept(new PaneOf()))));
    }

    private final class PaneOf implements FurnitureVisitor<Node> {
        @Override
        public Node stand(Stand stand) {
            return new FrontPane(desk);
        }

        @Override
        public Node wall(CleatWall wall) {
            return new ElevationPane(desk);
        }
    }
}
