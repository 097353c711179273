package org.standwright.advice;

import java.util.List;
import java.util.Optional;
import org.standwright.design.kit.StockSheet;
import org.standwright.sheet.SheetPlan;
import org.standwright.unit.Money;

/**
 * What the boards of a plan come to that have to be bought.
 *
 * @param area of the boards, mm²
 * @param money their price; empty where one of them has none or they are of several currencies
 */
public record Cost(int sheets, double area, Optional<Money> money) {
    private static final double SAME = 1e-9;

    static Cost of(SheetPlan plan) {
        var bought = plan.materials().stream()
                .flatMap(material -> material.sheets().stream())
                .map(sheet -> sheet.from())
                .filter(StockSheet::isBought)
                .toList();
        double area = bought.stream()
                .mapToDouble(board -> board.length() * board.width())
                .sum();
        return new Cost(bought.size(), area, money(bought));
    }

    private static Optional<Money> money(List<StockSheet> boards) {
        var prices = boards.stream().map(StockSheet::price).toList();
        boolean known = prices.stream().allMatch(Optional::isPresent)
                && prices.stream()
                                .map(price -> price.orElseThrow().currency())
                                .distinct()
                                .count()
                        == 1;
        return known ? prices.stream().map(Optional::orElseThrow).reduce(Money::plus) : Optional.empty();
    }

    /** This cost over another: of their prices where both are known in one currency, else of the boards' areas. */
    public double over(Cost other) {
        boolean priced = money.isPresent()
                && other.money.isPresent()
                && money.get().currency().equals(other.money.get().currency());
        return priced
                ? money.get().amount().doubleValue()
                        / other.money.get().amount().doubleValue()
                : area / other.area;
    }

    boolean isLessThan(Cost other) {
        return over(other) < 1 - SAME;
    }
}
