package org.standwright.viewer.paper;

import javafx.geometry.Pos;
import javafx.scene.canvas.Canvas;
import javafx.scene.control.ContentDisplay;
import javafx.scene.control.ListCell;
import org.standwright.drawing.Drawing;

/** A page in small with its number below it; drawn only while it is in sight. */
final class PageThumbnail extends ListCell<Drawing> {
    /** Of the longer side, pixels. */
    private static final double LARGEST = 132;

    private final Canvas canvas = new Canvas();

    PageThumbnail() {
        getStyleClass().add("page-thumbnail");
        setAlignment(Pos.CENTER);
        setContentDisplay(ContentDisplay.TOP);
    }

    @Override
    protected void updateItem(Drawing page, boolean empty) {
        boolean isNew = page != getItem();
        super.updateItem(page, empty);
        if (empty || page == null) {
            setGraphic(null);
            setText("");
            return;
        }
        if (isNew || getGraphic() == null) {
            draw(page);
        }
        setGraphic(canvas);
        setText(String.valueOf(getIndex() + 1));
        setAccessibleText(page.title());
    }

    private void draw(Drawing page) {
        double scale = LARGEST / Math.max(page.width(), page.height());
        canvas.setWidth(Math.ceil(scale * page.width()));
        canvas.setHeight(Math.ceil(scale * page.height()));
        CanvasInk.draw(
                page, Flat.of(page.shapes()), new Sight(scale, 0, canvas.getHeight()), canvas.getGraphicsContext2D());
    }
}
