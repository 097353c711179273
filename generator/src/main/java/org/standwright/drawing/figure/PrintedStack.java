package org.standwright.drawing.figure;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.standwright.design.built.HeightStack;
import org.standwright.unit.Units;

/**
 * A height stack as it is printed: every term rounded as its units show it, and the carcass, which was solved for, the
 * balance, so that the printed terms add up to the printed working height.
 *
 * @param layers from the floor up
 */
public record PrintedStack(List<Layer> layers) {
    private static final String SOLVED = "carcass";

    public PrintedStack {
        layers = List.copyOf(layers);
    }

    /**
     * One term, or their sum; heights in mm that need no more rounding.
     *
     * @param lowest and {@code highest}: where it can be set to, both {@code height} where it is fixed
     */
    public record Layer(String name, double height, double lowest, double highest) {
        public boolean isAdjustable() {
            return lowest < height || highest > height;
        }
    }

    public static PrintedStack of(HeightStack stack, Units units) {
        var rounded = stack.terms().stream().map(term -> layer(term, units)).toList();
        double balance = units.shown(stack.workingHeight()) - sum(rounded, Layer::height);
        return new PrintedStack(rounded.stream()
                .map(layer -> layer.name.equals(SOLVED) ? fixed(layer.height + balance) : layer)
                .toList());
    }

    /** The balance. */
    public Layer carcass() {
        return layers.stream()
                .filter(layer -> layer.name.equals(SOLVED))
                .findFirst()
                .orElseThrow();
    }

    /** The working height. */
    public Layer sum() {
        return new Layer(
                "working height", sum(layers, Layer::height), sum(layers, Layer::lowest), sum(layers, Layer::highest));
    }

    private static Layer layer(HeightStack.Term term, Units units) {
        double height = units.shown(term.height());
        return term.isAdjustable()
                ? new Layer(
                        term.name(),
                        height,
                        units.shown(term.height() - term.less()),
                        units.shown(term.height() + term.more()))
                : new Layer(term.name(), height, height, height);
    }

    private static Layer fixed(double height) {
        return new Layer(SOLVED, height, height, height);
    }

    private static double sum(List<Layer> layers, ToDoubleFunction<Layer> of) {
        return layers.stream().mapToDouble(of).sum();
    }
}
