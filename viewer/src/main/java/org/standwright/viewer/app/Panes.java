package org.standwright.viewer.app;

import java.util.List;
import java.util.Optional;
import javafx.beans.binding.Bindings;
import javafx.beans.value.ObservableValue;
import javafx.scene.Node;
import org.kordamp.ikonli.feather.Feather;
import org.standwright.check.Cure;
import org.standwright.check.Finding;
import org.standwright.drawing.Drawing;
import org.standwright.make.Built;
import org.standwright.make.Product;
import org.standwright.viewer.finding.FindingsPane;
import org.standwright.viewer.list.CostsPane;
import org.standwright.viewer.list.CutListPane;
import org.standwright.viewer.list.HardwarePane;
import org.standwright.viewer.paper.Later;
import org.standwright.viewer.paper.PagesPane;
import org.standwright.viewer.paper.Printing;
import org.standwright.viewer.scene.tools.ScenePane;
import org.standwright.viewer.sheet.SheetsPane;
import org.standwright.viewer.work.Desk;
import org.standwright.viewer.work.Stage;

/** Every pane of the window, tied to the desk. */
final class Panes {
    static final String SCENE = "3D";
    static final String HAND = "By hand";
    static final String SHEETS = "Sheets";
    static final String CUT_LIST = "Cut list";
    static final String HARDWARE = "Hardware";
    static final String COSTS = "Costs";
    static final String PACKET = "Packet";

    private final Desk desk;
    private final Dialogs dialogs;
    private final Printing printing;
    private final Pictures pictures;

    Panes(Desk desk, Dialogs dialogs, Printing printing, Pictures pictures) {
        this.desk = desk;
        this.dialogs = dialogs;
        this.printing = printing;
        this.pictures = pictures;
    }

    void addTo(Views views) {
        views.add(SCENE, Feather.BOX, () -> new ScenePane(desk, pictures::save));
        views.add(HAND, Feather.MOVE, () -> new ByHand(desk));
        views.add(
                SHEETS,
                Feather.LAYOUT,
                () -> new SheetsPane(desk.jobProperty(), at(Stage.PLANNING), desk.pickedProperty()));
        views.add(
                CUT_LIST,
                Feather.LIST,
                () -> new CutListPane(desk.cutListProperty(), desk.shownUnits(), desk.pickedProperty()));
        views.add(HARDWARE, Feather.TOOL, () -> new HardwarePane(desk.cutListProperty()));
        views.add(COSTS, Feather.SHOPPING_CART, () -> new CostsPane(desk.jobProperty(), at(Stage.PLANNING)));
        views.add(PACKET, Feather.BOOK_OPEN, this::packet);
    }

    Node findings() {
        return new FindingsPane(
                desk.findingsProperty(),
                desk.builtProperty().map(built -> built.map(Built::furniture)),
                desk.shownUnits(),
                at(Stage.CURING),
                desk.pickedProperty(),
                this::apply);
    }

    /** The pages of the last design that was worked out, until those of the next are there. */
    private Node packet() {
        var pages = Later.of(desk.productProperty(), Product::pages);
        ObservableValue<List<Drawing>> shown = pages.result().map(drawn -> drawn.orElse(List.of()));
        var working = Bindings.createBooleanBinding(
                () -> pages.workingProperty().get() || !Optional.of(Stage.DONE).equals(stage()),
                pages.workingProperty(),
                desk.stageProperty());
        return new PagesPane(shown, working, printing);
    }

    private Optional<Stage> stage() {
        return Optional.of(desk.stageProperty().get()).map(now -> now == Stage.REFUSED ? Stage.DONE : now);
    }

    private ObservableValue<Boolean> at(Stage stage) {
        return desk.stageProperty().map(now -> now == stage);
    }

    private void apply(Finding finding) {
        finding.cure().ifPresent(this::apply);
    }

    private void apply(Cure cure) {
        desk.change(
                "Apply " + cure.words(),
                before -> cure.design().readIn(before.unit()),
                reason -> dialogs.tell("Not applied", "The cure could not be written into the file: " + reason));
    }
}
