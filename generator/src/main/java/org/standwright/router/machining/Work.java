package org.standwright.router.machining;

import java.util.OptionalDouble;
import org.standwright.design.kit.Router;
import org.standwright.geom.Grid;

/**
 * One kind of work to one depth: what shares a layer.
 *
 * @param layer its name, of plain letters, digits, dots and blanks
 * @param depth below the face that the bit enters by, mm; empty where a layer cuts nothing by itself
 */
public record Work(Kind kind, String layer, OptionalDouble depth) {
    private static final String AFTER_TRIM = "after trim ";

    static Work outline(double depth, double thickness) {
        var how = depth < thickness ? " skin " + Mm.of(thickness - depth) : "";
        return new Work(
                Kind.OUTLINE,
                "outline " + (how.isEmpty() ? "through " : "") + deep(depth) + how,
                OptionalDouble.of(depth));
    }

    static Work cutout(double depth) {
        return new Work(Kind.CUTOUT, "cutout through " + deep(depth), OptionalDouble.of(depth));
    }

    static Work pocket(double depth) {
        return new Work(Kind.POCKET, "pocket " + deep(depth), OptionalDouble.of(depth));
    }

    static Work channel(double depth) {
        return new Work(Kind.CHANNEL, "channel " + deep(depth), OptionalDouble.of(depth));
    }

    /** What a bit of at most so much could cut. */
    Work narrow(double widest) {
        return new Work(Kind.NARROW, "narrow " + layer + " bit at most " + Mm.of(widest), depth);
    }

    static Work bore(double diameter, double depth) {
        return new Work(Kind.BORE, "bore " + Mm.of(diameter) + " " + deep(depth), OptionalDouble.of(depth));
    }

    static Work boreThrough(double diameter, double depth) {
        return new Work(Kind.BORE, "bore " + Mm.of(diameter) + " through", OptionalDouble.of(depth));
    }

    static Work centreMark() {
        return new Work(Kind.CENTRE_MARK, "centre mark", OptionalDouble.empty());
    }

    static Work tab(Router.Tabs tabs) {
        return new Work(
                Kind.TAB,
                "tab " + Mm.of(tabs.height()) + " high " + Mm.of(tabs.length()) + " long",
                OptionalDouble.empty());
    }

    /** The same, not before the part is trimmed to its finished size. */
    Work afterTrim() {
        return new Work(kind, AFTER_TRIM + layer, depth);
    }

    /** Whether it is not made on the board at all. */
    public boolean isAfterTrim() {
        return layer.startsWith(AFTER_TRIM);
    }

    /** Whether the bit comes out below a board this thick, mm. */
    public boolean goesThrough(double thickness) {
        return depth.isPresent() && !Grid.less(depth.getAsDouble(), thickness);
    }

    private static String deep(double depth) {
        return Mm.of(depth) + " deep";
    }
}
