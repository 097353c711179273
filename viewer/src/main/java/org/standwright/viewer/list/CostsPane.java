package org.standwright.viewer.list;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javafx.beans.value.ObservableValue;
import javafx.scene.control.Label;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.VBox;
import org.standwright.unit.Money;
import org.standwright.viewer.paper.Later;
import org.standwright.viewer.paper.Working;
import org.standwright.viewer.work.Job;

/** Everything that has to be bought, with prices as far as they are given, and what these come to. */
public final class CostsPane extends BorderPane {
    private final ListTable<Purchase> table = new ListTable<>("Costs", columns(), "Nothing to buy yet.");
    private final VBox sums = new VBox();

    /** @param planning whether a better plan of the sheets is being looked for */
    public CostsPane(ObservableValue<Optional<Job>> job, ObservableValue<Boolean> planning) {
        getStyleClass().addAll("list-pane", "costs-pane");
        getStylesheets().add(CostsPane.class.getResource("list.css").toExternalForm());
        sums.getStyleClass().add("sums");
        setCenter(table);
        setBottom(new VBox(Working.of(planning, "Looking for a better plan …"), sums));
        Later.of(job, Purchases::of).result().subscribe(this::show);
    }

    private static Columns<Purchase> columns() {
        return new Columns<Purchase>()
                .words("Kind", "Board, bar, edging or hardware", 7, CostsPane::kind)
                .figures("Count", "How many, or how much of what is sold by length", 6, CostsPane::count)
                .words("What", "What to buy", 27, purchase -> Shown.of(purchase.what()))
                .words("Size", "Of one", 19, purchase -> Shown.of(purchase.size()))
                .words(
                        "From",
                        "To buy or at hand",
                        6,
                        purchase -> Shown.of(purchase.source().word()))
                .figures("Each", "Price of one", 8, CostsPane::each)
                .figures("Together", "Price of all of them", 8, purchase -> price(purchase.together()));
    }

    private static Shown kind(Purchase purchase) {
        return new Shown(purchase.kind().word(), purchase.kind().ordinal());
    }

    private static Shown count(Purchase purchase) {
        return new Shown(purchase.count(), purchase.amount());
    }

    private static Shown each(Purchase purchase) {
        return purchase.isUnpriced() ? Shown.of("no price") : price(purchase.each());
    }

    private static Shown price(Optional<Money> price) {
        return price.map(known -> new Shown(known.toString(), known.amount().doubleValue()))
                .orElse(Shown.of(""));
    }

    private void show(Optional<Purchases> purchases) {
        table.fill(purchases.map(Purchases::all).orElse(List.of()));
        sums.getChildren()
                .setAll(purchases.stream()
                        .flatMap(known -> Stream.concat(
                                Stream.of(line(known.total(), "total")),
                                known.sentences().stream().map(words -> line(words, "sentence"))))
                        .toList());
    }

    private static Label line(String words, String styleClass) {
        var label = new Label(words);
        label.getStyleClass().add(styleClass);
        label.setWrapText(true);
        label.setMinHeight(USE_PREF_SIZE);
        return label;
    }

    ListTable<Purchase> table() {
        return table;
    }
}
