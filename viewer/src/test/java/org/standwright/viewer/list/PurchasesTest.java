package org.standwright.viewer.list;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.standwright.make.Product;
import org.standwright.unit.Money;
import org.standwright.viewer.Examples;
import org.standwright.viewer.list.Purchase.Kind;
import org.standwright.viewer.list.Purchase.Source;
import org.standwright.viewer.work.Job;

class PurchasesTest {
    static Job job(Product product) {
        return new Job(product.furniture(), product.cutList(), product.plan());
    }

    private static Purchase boards(int count, Source source, String... price) {
        return new Purchase(
                Kind.BOARD,
                String.valueOf(count),
                count,
                "birch 18",
                "",
                source,
                List.of(price).stream().findFirst().map(Money::parse));
    }

    @Test
    void addsPricesOfOneCurrencyAndKeepsOthersApart() {
        var purchases = new Purchases(
                List.of(
                        boards(2, Source.TO_BUY, "84.50 EUR"),
                        boards(1, Source.TO_BUY, "10 EUR"),
                        boards(3, Source.TO_BUY, "20 USD")),
                List.of());

        assertThat(purchases.total()).isEqualTo("Known prices come to 179.00 EUR and 60 USD.");
    }

    @Test
    void saysWhatHasNoPrice() {
        var purchases =
                new Purchases(List.of(boards(2, Source.TO_BUY, "84.50 EUR"), boards(1, Source.TO_BUY)), List.of());

        assertThat(purchases.total()).isEqualTo("Known prices come to 169.00 EUR. Without a price: 1 × birch 18.");
    }

    @Test
    void whatIsAtHandCostsNothing() {
        var purchases = new Purchases(List.of(boards(2, Source.AT_HAND, "84.50 EUR")), List.of());

        assertThat(purchases.sums()).isEmpty();
        assertThat(purchases.total()).isEqualTo("No price is given.");
    }

    @Test
    void comesToWhatThePlanSays() {
        var product = Examples.mortiserStand();

        assertThat(product.plan().prices()).isNotEmpty();
        assertThat(Purchases.of(job(product)).sums())
                .usingElementComparator((a, b) -> a.currency().equals(b.currency())
                        ? a.amount().compareTo(b.amount())
                        : a.currency().compareTo(b.currency()))
                .isEqualTo(product.plan().prices());
    }

    @Test
    void hasBoardsBarsEdgingAndHardwareEachOnce() {
        var product = Examples.scrollSawStand();
        var all = Purchases.of(job(product)).all();

        assertThat(all).extracting(Purchase::kind).contains(Kind.BOARD, Kind.BAR, Kind.EDGING, Kind.HARDWARE);
        assertThat(all).filteredOn(each -> each.what().contains("lipping")).hasSize(1);
        assertThat(all)
                .filteredOn(each -> each.kind() == Kind.HARDWARE)
                .hasSize(product.cutList().hardware().size() - 1);
        assertThat(all).filteredOn(each -> each.source() == Source.AT_HAND).isNotEmpty();
        assertThat(all).allSatisfy(each -> assertThat(each.each()).isEqualTo(Optional.empty()));
    }
}
