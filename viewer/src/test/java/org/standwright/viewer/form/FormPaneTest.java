package org.standwright.viewer.form;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Control;
import javafx.scene.control.Label;
import javafx.scene.control.Labeled;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.standwright.file.FileKind;
import org.standwright.file.text.FileProblem;
import org.standwright.viewer.MemoryScreen;

class FormPaneTest {
    private final Bench bench = Bench.of(FileKind.STAND, "table-saw-stand");
    private FormPane pane;
    private MemoryScreen screen;

    @BeforeEach
    void show() {
        screen = MemoryScreen.show(() -> pane = new FormPane(bench.model));
    }

    @Test
    void makesOneEditOfAValueThatIsTypedAndEntered() {
        type("/workingHeight/surfaceHeight", "34 1/2 in");
        press(KeyCode.ENTER);
        press(KeyCode.TAB);

        assertThat(bench.steps).containsExactly("Change surface height");
        assertThat(bench.text()).contains("\"surfaceHeight\": \"34 1/2 in\"");
    }

    @Test
    void makesTheEditWhenTheFieldIsLeft() {
        type("/workingHeight/surfaceHeight", "34 in");
        press(KeyCode.TAB);

        assertThat(bench.steps).containsExactly("Change surface height");
    }

    @Test
    void givesTheOldValueBackOnEscape() {
        type("/workingHeight/surfaceHeight", "1 in");
        press(KeyCode.ESCAPE);
        press(KeyCode.TAB);

        assertThat(bench.steps).isEmpty();
        assertThat(field("/workingHeight/surfaceHeight").getText()).isEqualTo("35 in");
    }

    @Test
    void stepsWithTheKeysAndWritesWhenTheKeyIsLetGo() {
        reveal("/workingHeight/surfaceHeight");
        screen.hands().press(KeyCode.UP);
        assertThat(field("/workingHeight/surfaceHeight").getText()).isEqualTo("35 1/16 in");
        assertThat(bench.steps).isEmpty();
        screen.hands().release(KeyCode.UP);

        assertThat(bench.text()).contains("\"surfaceHeight\": \"35 1/16 in\"");
        assertThat(bench.steps).hasSize(1);
    }

    @Test
    void saysBesideTheFieldWhatIsWrongWithIt() {
        type("/bays/1/contents/0/count", "99");
        press(KeyCode.ENTER);

        var view = line(focused());
        assertThat(texts(view)).contains("Must be 1 to 20. The nearest is 20.");
        screen.run(() -> bench.show(bench.text().replace("\"count\": 99", "\"count\": 4")));
        assertThat(texts(view)).noneMatch(text -> text.startsWith("Must"));
    }

    @Test
    void tellsHowManyProblemsAreInWhatIsFolded() {
        screen.run(() -> bench.show(bench.text().replaceFirst("\"kerf\": \"[^\"]*\"", "\"kerf\": \"wide\"")));

        assertThat(texts(pane)).contains("1 problem");
        reveal("/saw/kerf");
        assertThat(texts(pane)).doesNotContain("1 problem").anyMatch(text -> text.startsWith("Must be a length."));
    }

    @Test
    void showsAFieldThatNobodyKnowsAndWhatToDoWithIt() {
        screen.run(() -> bench.show(bench.text().replaceFirst("\\{", "{ \"colour\": 1,")));

        assertThat(texts(pane)).contains("Colour").anyMatch(text -> text.startsWith("No such field here."));
    }

    @Test
    void tellsWhatBelongsToNoFieldAboveThem() {
        screen.run(() -> bench.model.show(
                bench.text(), List.of(FileProblem.whole("stand.json", "is too wide for its machine", ""))));

        assertThat(texts(pane)).startsWith("Is too wide for its machine.");
    }

    @Test
    void offersTheFieldsOfAnotherKindWhenItIsChosen() {
        reveal("/workingHeight/kind");
        var box = (ComboBox<?>) focused();
        screen.run(() -> box.getSelectionModel().select(1));

        assertThat(bench.steps).containsExactly("Change kind");
        assertThat(texts(pane)).contains("Elbow", "Work").doesNotContain("Surface height");
        assertThat(focused()).isSameAs(box);
    }

    @Test
    void leavesAFieldOutAgainByTheFirstChoice() {
        reveal("/support/bed");
        var box = (ComboBox<?>) focused();
        screen.run(() -> box.getSelectionModel().select(0));

        assertThat(bench.steps).containsExactly("Clear bed");
        assertThat(screen.get(() -> box.getButtonCell().getText())).isEqualTo("Strips");
    }

    @Test
    void addsAndRemovesEntries() {
        fire("Add bay");
        assertThat(texts(pane)).contains("Bay 3");
        fire("Remove Bay 3");

        assertThat(texts(pane)).doesNotContain("Bay 3");
        assertThat(bench.steps).containsExactly("Add bay", "Remove bay 3");
    }

    @Test
    void movesAnEntryWithTheKeysAndKeepsItsFocus() {
        reveal("/bays/0");
        var head = focused();
        screen.hands().push(KeyCode.CONTROL, KeyCode.DOWN);

        assertThat(bench.steps).containsExactly("Move bay 1 down");
        assertThat(focused()).isSameAs(head);
        assertThat(((Button) head).getText()).isEqualTo("Bay 2");
    }

    @Test
    void keepsFocusCaretAndScrollWhileTheTextChangesElsewhere() {
        reveal("/bays/0/width");
        var field = (TextField) focused();
        screen.run(() -> field.positionCaret(1));
        double scroll = scroll();
        screen.run(
                () -> bench.show(bench.text().replace("\"surfaceHeight\": \"35 in\"", "\"surfaceHeight\": \"36 in\"")));

        assertThat(focused()).isSameAs(field);
        assertThat(field.getCaretPosition()).isEqualTo(1);
        assertThat(scroll()).isEqualTo(scroll);
        assertThat(field("/workingHeight/surfaceHeight").getText()).isEqualTo("36 in");
    }

    @Test
    void goesFromTopToBottomWithTheTabKey() {
        reveal("/name");
        var tops = new ArrayList<Double>();
        for (int i = 0; i < 14; i++) {
            tops.add(screen.get(() -> pane.sceneToLocal(focused()
                                    .localToScene(0, focused().getLayoutBounds().getHeight() / 2))
                            .getY()
                    + scroll()));
            press(KeyCode.TAB);
        }

        assertThat(tops).isSorted().doesNotHaveDuplicates();
    }

    @Test
    void buildsNothingInsideWhatIsFolded() {
        int folded = screen.get(() -> nodes(pane).size());
        reveal("/drawers/gap");

        assertThat(screen.get(() -> nodes(pane).size())).isGreaterThan(folded + 30);
    }

    @Test
    void fitsANarrowPaneAndTextTwiceAsLarge() {
        reveal("/bays/1/contents/0/count");
        screen.run(() -> {
            pane.setStyle("-fx-font-size: 28px;");
            pane.setMaxWidth(440);
            pane.setPrefWidth(440);
            pane.resize(440, 700);
            pane.applyCss();
            pane.layout();
        });

        var outside = screen.get(() -> nodes(pane).stream()
                .filter(node -> node instanceof Control && node.isVisible() && node.isManaged())
                .filter(node -> pane.sceneToLocal(node.localToScene(node.getLayoutBounds()))
                                .getMaxX()
                        > 441)
                .map(Node::toString)
                .toList());
        assertThat(outside).isEmpty();
        var cut = screen.get(() -> nodes(pane).stream()
                .filter(node ->
                        node instanceof Label label && label.getStyleClass().contains("form-label"))
                .map(Label.class::cast)
                .filter(label -> label.getHeight() + 0.5 < label.prefHeight(label.getWidth()))
                .map(Label::getText)
                .toList());
        assertThat(cut).isEmpty();
    }

    private void type(String pointer, String text) {
        reveal(pointer);
        screen.run(() -> ((TextField) screen.scene().getFocusOwner()).selectAll());
        screen.hands().write(text, 0);
    }

    private void press(KeyCode key) {
        screen.hands().push(key);
    }

    private void reveal(String pointer) {
        screen.run(() -> pane.reveal(pointer));
    }

    private TextField field(String pointer) {
        reveal(pointer);
        return (TextField) focused();
    }

    private Node focused() {
        return screen.scene().getFocusOwner();
    }

    private double scroll() {
        var scroll = nodes(pane).stream()
                .filter(node -> node.getStyleClass().contains("form-scroll"))
                .findFirst();
        var view = (ScrollPane) scroll.orElseThrow();
        return view.getVvalue()
                * (view.getContent().getLayoutBounds().getHeight()
                        - view.getViewportBounds().getHeight());
    }

    private void fire(String words) {
        screen.run(() -> nodes(pane).stream()
                .filter(node -> node instanceof Button button
                        && (words.equals(button.getText()) || words.equals(button.getAccessibleText())))
                .map(Button.class::cast)
                .findFirst()
                .orElseThrow(() -> new AssertionError(words))
                .fire());
    }

    private static Node line(Node control) {
        var node = control;
        while (!(node instanceof RowView)) {
            node = node.getParent();
        }
        return node;
    }

    private List<String> texts(Node in) {
        return screen.get(() -> nodes(in).stream()
                .filter(node -> node.isVisible() && node.isManaged())
                .flatMap(node -> node instanceof Labeled labeled ? Stream.of(labeled.getText()) : Stream.empty())
                .toList());
    }

    private static List<Node> nodes(Node in) {
        var all = new ArrayList<Node>(List.of(in));
        if (in instanceof Parent parent) {
            parent.getChildrenUnmodifiable().forEach(child -> all.addAll(nodes(child)));
        }
        return all;
    }
}
