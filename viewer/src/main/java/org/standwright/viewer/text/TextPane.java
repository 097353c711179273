package org.standwright.viewer.text;

import java.util.List;
import javafx.animation.PauseTransition;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.util.Duration;
import org.fxmisc.flowless.VirtualizedScrollPane;
import org.fxmisc.richtext.CodeArea;
import org.fxmisc.richtext.LineNumberFactory;
import org.fxmisc.richtext.util.UndoUtils;
import org.standwright.file.text.FileProblem;
import org.standwright.viewer.work.Desk;

/**
 * The text of the design file, to be edited as it stands. What is typed becomes an edit after a short rest; undo is that
 * of the desk, so that form and text share one history.
 */
public final class TextPane extends BorderPane {
    private static final Duration REST = Duration.millis(350);

    private final Desk desk;
    private final CodeArea area = new CodeArea();
    private final PauseTransition rest = new PauseTransition(REST);
    private final ProblemList problems = new ProblemList(this::goTo);
    /** Whether what is put into the area comes from the desk. */
    private boolean following;
    /** The text that was last shown here, with the line ends of its file. */
    private String base = "";
    /** Whether something was typed that is no edit yet. */
    private boolean typed;

    public TextPane(Desk desk) {
        this.desk = desk;
        getStyleClass().add("text-pane");
        getStylesheets().add(TextPane.class.getResource("text.css").toExternalForm());
        area.setUndoManager(UndoUtils.noOpUndoManager());
        area.setParagraphGraphicFactory(LineNumberFactory.get(area));
        area.setAccessibleText("Text of the design file");
        area.setWrapText(false);
        area.addEventFilter(KeyEvent.KEY_PRESSED, this::pressed);
        var title = new Label("The design file as it is saved. F6 leads out of the text.");
        title.getStyleClass().add("hint");
        setTop(title);
        setCenter(new VirtualizedScrollPane<>(area));
        setBottom(problems);
        rest.setOnFinished(done -> flush());
        area.plainTextChanges().subscribe(change -> typed());
        area.focusedProperty().addListener((property, before, focused) -> {
            if (!focused) {
                flush();
            }
        });
        desk.settledProperty().subscribe(settled -> follow());
        sceneProperty().subscribe(now -> follow());
    }

    /** Makes what was typed an edit at once. */
    public void flush() {
        rest.stop();
        if (typed) {
            typed = false;
            desk.edit("Change the text", LineEnds.typedInto(base, area.getText()));
        }
    }

    /** Puts the caret on what is wrong. */
    public void goTo(FileProblem problem) {
        problem.position().ifPresent(position -> {
            int line = Math.min(position.line(), area.getParagraphs().size()) - 1;
            int column = Math.min(position.column() - 1, area.getParagraphLength(line));
            area.moveTo(line, column);
            area.requestFollowCaret();
            area.requestFocus();
        });
    }

    private void pressed(KeyEvent event) {
        // Tab writes a tab here, so another key leads on
        if (event.getCode() == KeyCode.F6) {
            (event.isShiftDown() ? getParent() : problems).requestFocus();
            event.consume();
        } else if (event.isShortcutDown() && (event.getCode() == KeyCode.Z || event.getCode() == KeyCode.Y)) {
            flush();
            step(event.getCode() == KeyCode.Y || event.isShiftDown());
            event.consume(); // the area would take the key for an undo of its own, and has none
        }
    }

    private void step(boolean forth) {
        if (forth) {
            desk.redo();
        } else {
            desk.undo();
        }
    }

    private void typed() {
        area.setStyleSpans(0, JsonColours.of(area.getText()));
        if (!following) {
            typed = true;
            rest.playFromStart();
        }
    }

    /** Shows the text as it stands, while somebody can see it and nothing is being typed. */
    private void follow() {
        var settled = desk.settledProperty().get();
        var text = LineEnds.plain(settled.document().text());
        if (getScene() == null || typed) {
            return;
        }
        base = settled.document().text();
        if (!area.getText().equals(text)) {
            following = true;
            var splice = Splice.between(area.getText(), text);
            area.replaceText(splice.from(), splice.to(), splice.put());
            following = false;
        }
        mark(settled.problems());
    }

    private void mark(List<FileProblem> found) {
        for (int line = 0; line < area.getParagraphs().size(); line++) {
            if (!area.getParagraph(line).getParagraphStyle().isEmpty()) {
                area.setParagraphStyle(line, List.of());
            }
        }
        for (var problem : found) {
            problem.position()
                    .filter(position -> position.line() <= area.getParagraphs().size())
                    .ifPresent(position -> area.setParagraphStyle(position.line() - 1, List.of("wrong-line")));
        }
        problems.show(found);
    }
}
