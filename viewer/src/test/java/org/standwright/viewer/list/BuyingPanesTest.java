package org.standwright.viewer.list;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Comparator;
import java.util.Optional;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.scene.control.Label;
import org.junit.jupiter.api.Test;
import org.standwright.cutlist.CutList;
import org.standwright.cutlist.HardwareLine;
import org.standwright.viewer.Examples;
import org.standwright.viewer.MemoryScreen;

class BuyingPanesTest {
    @Test
    void hardwareIsSortedByCount() {
        var list = new SimpleObjectProperty<Optional<CutList>>(
                Optional.of(Examples.planerStand().cutList()));
        var pane = new HardwarePane[1];
        var screen = MemoryScreen.show(() -> {
            pane[0] = new HardwarePane(list);
            return pane[0];
        });
        screen.hands().clickOn("Count");

        assertThat(screen.get(() -> pane[0].table().getItems().stream()
                        .map(HardwareLine::count)
                        .toList()))
                .isSortedAccordingTo(Comparator.naturalOrder())
                .hasSize(list.get().orElseThrow().hardware().size());
    }

    @Test
    void costsSayWhatIsKnownAndWhatIsNot() {
        var job = new SimpleObjectProperty<>(Optional.of(PurchasesTest.job(Examples.mortiserStand())));
        var planning = new SimpleBooleanProperty(true);
        var pane = new CostsPane[1];
        var screen = MemoryScreen.show(() -> {
            pane[0] = new CostsPane(job, planning);
            return pane[0];
        });
        screen.await(() -> !pane[0].table().getItems().isEmpty());

        assertThat(screen.hands().lookup(".total").<Label>query().getText())
                .contains("Known prices come to ")
                .contains("Without a price: ")
                .contains("hardware");
        assertThat(screen.hands().lookup(".working").<Label>query().isVisible()).isTrue();
        screen.run(() -> planning.set(false));
        assertThat(screen.hands().lookup(".working").<Label>query().isVisible()).isFalse();
        assertThat(screen.get(() -> pane[0].table().wholeText())).contains("no price");
    }
}
