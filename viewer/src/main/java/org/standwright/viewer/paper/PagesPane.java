package org.standwright.viewer.paper;

import java.util.List;
import java.util.Optional;
import javafx.beans.binding.Bindings;
import javafx.beans.value.ObservableValue;
import javafx.collections.FXCollections;
import javafx.geometry.Orientation;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ListView;
import javafx.scene.control.Separator;
import javafx.scene.control.ToolBar;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import org.kordamp.ikonli.feather.Feather;
import org.standwright.drawing.Drawing;
import org.standwright.viewer.button.IconButton;

/** The packet's pages as they are printed: a column of small ones, and the one that is looked at. */
public final class PagesPane extends BorderPane {
    private final PagesModel model;
    private final Printing printing;
    private final DrawingView view = new DrawingView();
    private final ListView<Drawing> thumbnails = new ListView<>();
    private final Label place = new Label();
    private final Label status = new Label();

    /** @param working whether other pages are on their way */
    public PagesPane(ObservableValue<List<Drawing>> pages, ObservableValue<Boolean> working, Printing printing) {
        this.model = new PagesModel(pages);
        this.printing = printing;
        getStyleClass().add("pages-pane");
        getStylesheets().add(PagesPane.class.getResource("paper.css").toExternalForm());
        setTop(new ToolBar(
                button(Feather.CHEVRON_UP, "Previous page (Page Up)", model::previous, "previous"),
                place,
                button(Feather.CHEVRON_DOWN, "Next page (Page Down)", model::next, "next"),
                new Separator(Orientation.VERTICAL),
                button(Feather.ZOOM_OUT, "Farther (−)", view::zoomOut, "farther"),
                button(Feather.ZOOM_IN, "Nearer (+)", view::zoomIn, "nearer"),
                button(Feather.MAXIMIZE, "Whole page (0)", view::fit, "fit"),
                new Separator(Orientation.VERTICAL),
                IconButton.labelled(Feather.PRINTER, "Print page …", "Print the page that is shown", this::printPage),
                IconButton.labelled(Feather.PRINTER, "Print all …", "Print all pages", this::printAll),
                Working.of(working, "Laying the pages out again …"),
                status));
        setLeft(thumbnails());
        setCenter(view);
        status.getStyleClass().add("status");
        place.getStyleClass().add("place");
        addEventFilter(KeyEvent.KEY_PRESSED, this::key);
        pages.subscribe(this::show);
        model.indexProperty().subscribe(this::look);
    }

    private static Button button(Feather sign, String words, Runnable action, String styleClass) {
        var button = IconButton.of(sign, words, action);
        button.getStyleClass().add(styleClass);
        return button;
    }

    private Node thumbnails() {
        thumbnails.getStyleClass().add("thumbnails");
        thumbnails.setAccessibleText("Pages");
        thumbnails.setCellFactory(list -> new PageThumbnail());
        thumbnails.getSelectionModel().selectedIndexProperty().subscribe(chosen -> {
            if (chosen.intValue() >= 0) {
                model.go(chosen.intValue());
            }
        });
        thumbnails.visibleProperty().bind(Bindings.isNotEmpty(thumbnails.getItems()));
        return thumbnails;
    }

    private void show(List<Drawing> pages) {
        int index = model.indexProperty().get();
        thumbnails.getItems().setAll(FXCollections.observableList(pages));
        model.go(index);
        look();
    }

    private void look() {
        int index = model.indexProperty().get();
        place.setText(model.words());
        view.drawingProperty().set(model.page());
        if (index < thumbnails.getItems().size()
                && thumbnails.getSelectionModel().getSelectedIndex() != index) {
            thumbnails.getSelectionModel().select(index);
            thumbnails.scrollTo(index);
        }
    }

    private void key(KeyEvent event) {
        switch (event.getCode()) {
            case PAGE_UP -> model.previous();
            case PAGE_DOWN -> model.next();
            case HOME -> model.first();
            case END -> model.last();
            default -> {
                return;
            }
        }
        event.consume();
    }

    public PagesModel model() {
        return model;
    }

    public void printPage() {
        print(model.page().map(List::of).orElse(List.of()));
    }

    public void printAll() {
        print(model.pagesProperty().getValue());
    }

    private void print(List<Drawing> pages) {
        if (pages.isEmpty()) {
            status.setText("There are no pages to print yet.");
        } else {
            printing.print(pages, getScene().getWindow(), status::setText);
        }
    }

    /** The page that is looked at. */
    Optional<Drawing> shown() {
        return view.drawingProperty().get();
    }
}
