package org.standwright.viewer.hand;

import java.util.Optional;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import org.standwright.make.Built;
import org.standwright.viewer.document.Document;
import org.standwright.viewer.work.Desk;

/** A text together with what was built from it; the desk's text runs ahead of that while something is worked out. */
final class Matched {
    private final Desk desk;
    private final ReadOnlyObjectWrapper<Optional<Pair>> pair =
            new ReadOnlyObjectWrapper<>(this, "pair", Optional.empty());

    /** That belong together. */
    record Pair(Document document, Built built) {}

    Matched(Desk desk) {
        this.desk = desk;
        // by invalidation: whether two of them are equal takes longer to find out than to show the next
        desk.builtProperty().addListener(invalid -> match());
        if (desk.problemsProperty().get().isEmpty()) {
            match();
        }
    }

    /** The last that belonged together. */
    ReadOnlyObjectProperty<Optional<Pair>> pairProperty() {
        return pair.getReadOnlyProperty();
    }

    /** Whether that is also what stands on the desk. */
    boolean isPresent() {
        return pair.get()
                .filter(last -> last.document() == desk.documentProperty().get())
                .isPresent();
    }

    private void match() {
        var document = desk.documentProperty().get();
        pair.set(desk.builtProperty().get().map(built -> new Pair(document, built)));
    }
}
