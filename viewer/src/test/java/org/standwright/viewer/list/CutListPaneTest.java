package org.standwright.viewer.list;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import javafx.beans.property.SimpleObjectProperty;
import javafx.scene.control.Label;
import javafx.scene.input.Clipboard;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.standwright.cutlist.CutList;
import org.standwright.unit.Units;
import org.standwright.viewer.Examples;
import org.standwright.viewer.MemoryScreen;

class CutListPaneTest {
    private final CutList list = Examples.planerStand().cutList();
    private final SimpleObjectProperty<Optional<CutList>> cutList = new SimpleObjectProperty<>(Optional.of(list));
    private final SimpleObjectProperty<Units> units = new SimpleObjectProperty<>(Units.MM);
    private final SimpleObjectProperty<Optional<String>> picked = new SimpleObjectProperty<>(Optional.empty());
    private CutListPane pane;
    private MemoryScreen screen;

    @BeforeEach
    void open() {
        screen = MemoryScreen.show(() -> {
            pane = new CutListPane(cutList, units, picked);
            return pane;
        });
    }

    private List<String> labels() {
        return screen.get(() ->
                pane.table().getItems().stream().map(row -> row.line().label()).toList());
    }

    private List<String> selected() {
        return screen.get(() -> pane.table().getSelectionModel().getSelectedItems().stream()
                .map(row -> row.line().label())
                .toList());
    }

    @Test
    void hasARowForEveryLineInTheirOrder() {
        assertThat(labels())
                .containsExactlyElementsOf(
                        list.lines().stream().map(line -> line.label()).toList());
    }

    @Test
    void aHeadingSortsByLengthAndNotByLetters() {
        screen.hands().clickOn("Length");

        var lengths = screen.get(() -> pane.table().getItems().stream()
                .map(row -> row.line().part().roughLength())
                .toList());
        assertThat(lengths).isSortedAccordingTo(Comparator.naturalOrder());
        assertThat(lengths.get(0)).isNotEqualTo(lengths.get(lengths.size() - 1));
    }

    @Test
    void selectingARowPicksItsFirstPart() {
        screen.hands().clickOn("bottom");

        assertThat(picked.get()).contains("bottom");
    }

    @Test
    void aPickedPartSelectsItsRowAndStaysPicked() {
        var line = list.lines().stream()
                .filter(each -> each.count() > 1)
                .findFirst()
                .orElseThrow();
        var second = line.members().get(1);
        screen.run(() -> picked.set(Optional.of(second)));

        assertThat(selected()).containsExactly(line.label());
        assertThat(picked.get()).contains(second);
        screen.run(() -> picked.set(Optional.empty()));
        assertThat(selected()).isEmpty();
    }

    @Test
    void aNewCutListKeepsThePickedPart() {
        screen.hands().clickOn("bottom");
        screen.run(() -> cutList.set(Optional.of(Examples.scrollSawStand().cutList())));

        assertThat(picked.get()).contains("bottom");
        assertThat(selected()).hasSize(1);
        screen.run(() -> cutList.set(Optional.empty()));
        assertThat(picked.get()).contains("bottom");
        assertThat(labels()).isEmpty();
    }

    @Test
    void copiesSelectedRowsForASpreadsheet() {
        screen.run(() -> {
            pane.table().requestFocus();
            pane.table().getSelectionModel().selectRange(0, 2);
        });
        screen.hands().press(KeyCode.CONTROL).type(KeyCode.C).release(KeyCode.CONTROL);

        var lines = screen.get(() -> Clipboard.getSystemClipboard().getString()).split("\n");
        assertThat(lines).hasSize(2);
        assertThat(lines[0].split("\t", -1))
                .hasSize(9)
                .startsWith(
                        list.lines().get(0).label(), list.lines().get(0).part().name());
    }

    @Test
    void copiesTheWholeTableWithItsHeadings() {
        var lines = screen.get(() -> pane.table().wholeText()).split("\n");

        assertThat(lines).hasSize(list.lines().size() + 1);
        assertThat(lines[0]).isEqualTo("Label\tPart\tCount\tLength\tWidth\tThick\tMaterial\tEdges\tNotes");
    }

    @Test
    void showsInchesToThoseWhoMeasureInThem() {
        screen.run(() -> units.set(Units.INCH));

        assertThat(screen.get(() -> pane.table().wholeText())).contains("/32\t");
    }

    @Test
    void saysAllOfTheSelectedRowBelow() {
        screen.hands().clickOn("bottom");

        assertThat(screen.hands().lookup(".details .label").queryAllAs(Label.class))
                .extracting(Label::getText)
                .anySatisfy(words -> assertThat(words).startsWith("Rough blank "))
                .containsAll(list.lines().stream()
                        .filter(line -> line.members().contains("bottom"))
                        .findFirst()
                        .orElseThrow()
                        .notes());
    }
}
