package org.standwright.viewer.sheet;

import java.util.List;
import java.util.Optional;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyIntegerProperty;
import javafx.beans.property.ReadOnlyIntegerWrapper;
import javafx.beans.value.ObservableValue;
import org.standwright.drawing.Point;
import org.standwright.make.SheetPaper;

/** Which sheet is looked at, how far it is sawn, and which part is picked. */
final class SheetsModel {
    private final ObservableValue<Optional<DrawnPlan>> plan;
    private final ObjectProperty<Optional<String>> picked;
    private final ReadOnlyIntegerWrapper paper = new ReadOnlyIntegerWrapper(this, "paper", 0);
    private final ReadOnlyIntegerWrapper done = new ReadOnlyIntegerWrapper(this, "done", 0);

    SheetsModel(ObservableValue<Optional<DrawnPlan>> plan, ObjectProperty<Optional<String>> picked) {
        this.plan = plan;
        this.picked = picked;
        plan.subscribe(this::planned);
        picked.subscribe(this::find);
    }

    private void planned(Optional<DrawnPlan> now) {
        done.set(0);
        now.ifPresent(drawn ->
                paper.set(Math.max(0, Math.min(paper.get(), drawn.papers().size() - 1))));
    }

    private void find(Optional<String> label) {
        plan.getValue().flatMap(drawn -> label.flatMap(drawn::find)).ifPresent(laid -> look(laid.paper()));
    }

    ObservableValue<Optional<DrawnPlan>> planProperty() {
        return plan;
    }

    /** Index of the sheet that is looked at. */
    ReadOnlyIntegerProperty paperProperty() {
        return paper.getReadOnlyProperty();
    }

    /** How many cuts of its material are done, the last of them just now; 0 where none is stepped through. */
    ReadOnlyIntegerProperty doneProperty() {
        return done.getReadOnlyProperty();
    }

    ObjectProperty<Optional<String>> pickedProperty() {
        return picked;
    }

    Optional<SheetPaper> sheet() {
        return plan.getValue()
                .filter(drawn -> paper.get() < drawn.papers().size())
                .map(drawn -> drawn.papers().get(paper.get()));
    }

    /** Cuts of the material that is looked at. */
    List<CutStep> steps() {
        return sheet().map(now -> plan.getValue().orElseThrow().steps(now)).orElse(List.of());
    }

    /** The cut that is made now. */
    Optional<CutStep> step() {
        return done.get() == 0 ? Optional.empty() : Optional.of(steps().get(done.get() - 1));
    }

    List<LaidPart> parts() {
        return plan.getValue().map(drawn -> drawn.on(paper.get())).orElse(List.of());
    }

    /** The picked part, where it lies on the sheet that is looked at. */
    Optional<LaidPart> marked() {
        return parts().stream()
                .filter(laid -> picked.get().filter(laid.part()::equals).isPresent())
                .findFirst();
    }

    /** Turns to a sheet; cuts start anew where its material is another one. */
    void look(int wanted) {
        var before = sheet().map(SheetPaper::material);
        int most = plan.getValue().map(drawn -> drawn.papers().size()).orElse(0) - 1;
        int to = Math.max(0, Math.min(wanted, most));
        boolean isOther = plan.getValue().isPresent()
                && most >= 0
                && before.filter(plan.getValue().get().papers().get(to).material()::equals)
                        .isEmpty();
        if (isOther) {
            done.set(0);
        }
        paper.set(to);
    }

    /** Picks what lies at a point of the paper, mm. */
    void pick(Point point) {
        plan.getValue()
                .filter(drawn -> sheet().isPresent())
                .flatMap(drawn -> drawn.at(paper.get(), point))
                .ifPresent(laid -> picked.set(Optional.of(laid.part())));
    }

    void nextCut() {
        saw(done.get() + 1);
    }

    void previousCut() {
        saw(done.get() - 1);
    }

    void firstCut() {
        saw(1);
    }

    void lastCut() {
        saw(steps().size());
    }

    boolean isLastCut() {
        return done.get() >= steps().size();
    }

    /** So many cuts done; the sheet of the last one is looked at. */
    private void saw(int wanted) {
        int now = Math.max(0, Math.min(wanted, steps().size()));
        done.set(now);
        step().ifPresent(step -> paper.set(plan.getValue()
                .orElseThrow()
                .paper(sheet().orElseThrow().material(), step.made().sheet())));
    }

    /** 'Cut 12 of 40', or what to do to see cuts. */
    String place() {
        int count = steps().size();
        return count == 0 ? "No cuts" : done.get() == 0 ? count + " cuts" : "Cut " + done.get() + " of " + count;
    }
}
