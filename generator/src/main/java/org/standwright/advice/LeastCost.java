package org.standwright.advice;

import java.util.List;
import org.standwright.design.kit.StockSheet;
import org.standwright.sheet.Stock;
import org.standwright.sheet.plan.Least;

/**
 * What no plan of a design can do without.
 *
 * @param area of the boards to buy, mm²
 * @param money their price as far as it is known, in one currency or another
 */
record LeastCost(double area, double money) {
    /** In which prices are counted as whole numbers. */
    private static final double THOUSANDTHS = 1000;

    static LeastCost of(Stock stock, List<Least> materials) {
        double area = 0;
        double money = 0;
        for (var least : materials) {
            switch (least.goal()) {
                case AREA -> area += least.amount();
                case MONEY -> money += least.amount() / THOUSANDTHS;
                case SHEETS -> {
                    for (var board : bought(stock, least)) {
                        area += least.amount() * board.length() * board.width();
                        money += least.amount()
                                * board.price()
                                        .map(price -> price.amount().doubleValue())
                                        .orElse(0.0);
                    }
                }
            }
        }
        return new LeastCost(area, money);
    }

    /** One kind or none where sheets are counted. */
    private static List<StockSheet> bought(Stock stock, Least least) {
        return stock.of(least.material()).stream().filter(StockSheet::isBought).toList();
    }

    boolean canBeLessThan(Cost cost) {
        return cost.money()
                        .filter(price -> money < price.amount().doubleValue())
                        .isPresent()
                || area < cost.area();
    }
}
