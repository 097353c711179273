package org.standwright.viewer.paper;

import java.util.List;
import java.util.Optional;
import javafx.beans.property.ReadOnlyIntegerProperty;
import javafx.beans.property.ReadOnlyIntegerWrapper;
import javafx.beans.value.ObservableValue;
import org.standwright.drawing.Drawing;

/** Pages of a packet and the one that is looked at. When the pages change, the same number is looked at again. */
public final class PagesModel {
    private final ObservableValue<List<Drawing>> pages;
    private final ReadOnlyIntegerWrapper index = new ReadOnlyIntegerWrapper(this, "index", 0);

    public PagesModel(ObservableValue<List<Drawing>> pages) {
        this.pages = pages;
        pages.addListener((all, before, now) -> {
            if (!now.isEmpty()) {
                go(index.get());
            }
        });
    }

    public ObservableValue<List<Drawing>> pagesProperty() {
        return pages;
    }

    /** From 0 on; what it was while there are no pages. */
    public ReadOnlyIntegerProperty indexProperty() {
        return index.getReadOnlyProperty();
    }

    public Optional<Drawing> page() {
        var all = pages.getValue();
        return index.get() < all.size() ? Optional.of(all.get(index.get())) : Optional.empty();
    }

    /** To the page with this index, or the nearest that there is. */
    public void go(int wanted) {
        index.set(Math.max(0, Math.min(pages.getValue().size() - 1, wanted)));
    }

    public void next() {
        go(index.get() + 1);
    }

    public void previous() {
        go(index.get() - 1);
    }

    public void first() {
        go(0);
    }

    public void last() {
        go(pages.getValue().size() - 1);
    }

    public boolean isFirst() {
        return index.get() == 0;
    }

    /** 'Page 3 of 21', or 'No pages yet'. */
    public String words() {
        int count = pages.getValue().size();
        return count == 0 ? "No pages yet" : "Page " + (index.get() + 1) + " of " + count;
    }
}
