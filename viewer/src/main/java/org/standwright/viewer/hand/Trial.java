package org.standwright.viewer.hand;

import java.util.Optional;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import org.standwright.file.text.FileProblem;
import org.standwright.viewer.work.Desk;
import org.standwright.viewer.work.Stage;

/**
 * Tries texts on the desk before one of them becomes an edit: what cannot be built is not made, and the reason is told.
 * While something is dragged, many texts are shown; in the end the last one that could be built is kept.
 */
final class Trial {
    private final Desk desk;
    private final ReadOnlyStringWrapper refusal = new ReadOnlyStringWrapper(this, "refusal", "");
    /** The text on trial; empty when there is none. */
    private Optional<String> shown = Optional.empty();
    /** The last text on trial that was built. */
    private Optional<String> good = Optional.empty();
    /** What the edit is to be called, once it is to be made. */
    private Optional<String> wanted = Optional.empty();

    private Runnable then = () -> {};

    Trial(Desk desk) {
        this.desk = desk;
        desk.builtProperty().addListener(invalid -> built());
        desk.stageProperty().subscribe(this::reached);
    }

    /** Why the last text on trial is refused; empty while it is not. */
    ReadOnlyStringProperty refusalProperty() {
        return refusal.getReadOnlyProperty();
    }

    void forget() {
        refusal.set("");
    }

    /** Tells a reason of its own. */
    void refuse(String why) {
        refusal.set(why);
    }

    /** Whether a text is on trial. */
    boolean isOn() {
        return shown.isPresent();
    }

    void show(String text) {
        if (shown.filter(text::equals).isEmpty()) {
            shown = Optional.of(text);
            refusal.set("");
            desk.preview(text);
        }
    }

    /** Makes the last text an edit once it is known that it can be built, or the last one that could. */
    void keep(String what, Runnable afterwards) {
        wanted = Optional.of(what);
        then = afterwards;
        settle();
    }

    void cancel() {
        if (isOn()) {
            end();
            refusal.set("");
            desk.drop();
        }
    }

    private void built() {
        desk.builtProperty().get();
        if (isShown()) {
            good = shown;
            settle();
        }
    }

    private void reached(Stage stage) {
        if (stage == Stage.REFUSED && isShown()) {
            refusal.set(words(desk.problemsProperty().get().get(0)));
            settle();
        } else if (isOn() && !isShown()) {
            end(); // somebody else has changed the text
        }
    }

    private boolean isShown() {
        return shown.filter(desk.documentProperty().get().text()::equals).isPresent();
    }

    private void settle() {
        boolean isRefused = !refusal.get().isEmpty();
        if (wanted.isEmpty() || !isRefused && !good.equals(shown)) {
            return;
        }
        var what = wanted.get();
        var text = good;
        var afterwards = then;
        end();
        text.ifPresentOrElse(
                kept -> {
                    desk.edit(what, kept);
                    afterwards.run();
                },
                desk::drop);
    }

    private void end() {
        shown = Optional.empty();
        good = Optional.empty();
        wanted = Optional.empty();
        then = () -> {};
    }

    private static String words(FileProblem problem) {
        return problem.rule() + "." + (problem.wayOut().isEmpty() ? "" : " " + problem.wayOut());
    }
}
