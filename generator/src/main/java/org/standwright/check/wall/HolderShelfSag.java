package org.standwright.check.wall;

import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.standwright.assembly.PlacedPart;
import org.standwright.check.Finding;
import org.standwright.check.Gauge;
import org.standwright.check.Input;
import org.standwright.check.Quantity;
import org.standwright.check.Rule;
import org.standwright.check.RuleText;
import org.standwright.check.bending.Creep;
import org.standwright.check.bending.Section;
import org.standwright.check.bending.ShelfSag;
import org.standwright.check.bending.SimpleSpan;
import org.standwright.check.bending.SpanLoad;
import org.standwright.design.wall.Holder;
import org.standwright.design.wall.built.HungHolder;
import org.standwright.geom.Axis;
import org.standwright.unit.Gravity;

/** How far the boards of shelves sag between their brackets. */
public final class HolderShelfSag implements Rule<HungWall> {
    private static final RuleText TEXT = new RuleText(
            "holder-shelf-sag",
            "Do the boards of shelves sag?",
            "sag = 5 W L^3 / (384 E I) x (1 + kdef)",
            "Loaded evenly for years with its things and itself; lies on its brackets without being held down. The dado in"
                    + " the back and a lip are not counted.",
            ShelfSag.SOURCE);

    @Override
    public RuleText text() {
        return TEXT;
    }

    @Override
    public List<Finding> check(HungWall wall) {
        return wall.loads().stream()
                .map(HeldLoad::holder)
                .filter(HolderShelfSag::isShelf)
                .map(holder -> found(wall, holder))
                .toList();
    }

    static boolean isShelf(HungHolder holder) {
        return holder.made().holder() instanceof Holder.Shelf;
    }

    /** What so many kg of things make of the sag at which a shelf is stopped: more than 1 beyond it. */
    static double used(HungHolder holder, double things) {
        var span = span(holder, things);
        return sag(holder, span) / ShelfSag.limit(span.length()).stop().orElseThrow();
    }

    private static Finding found(HungWall wall, HungHolder holder) {
        var units = wall.units();
        var span = span(holder, holder.made().holder().things().wholeMass());
        double length = span.length();
        double load = span.loads().get(0).total();
        double sag = sag(holder, span);
        return Finding.judged(
                        TEXT,
                        holder.name(),
                        new Gauge(Quantity.SAG, sag, ShelfSag.limit(length)),
                        "Over " + units.length(length) + " between brackets and under " + units.force(load)
                                + " its board sags " + Quantity.SAG.words(sag, units) + " in the course of years.")
                .with(
                        new Input("W", "things and board on that span", Quantity.FORCE, load),
                        new Input("L", "clear span", Quantity.LENGTH, length),
                        new Input("E I", "stiffness", Quantity.STIFFNESS, span.stiffness()),
                        new Input("kdef", "creep", Quantity.RATIO, creep(holder).kdef()));
    }

    private static double sag(HungHolder holder, SimpleSpan span) {
        return creep(holder).longTerm(span.deflection());
    }

    private static Creep creep(HungHolder holder) {
        return new Creep(board(holder).part().material().elasticity().board().kdef());
    }

    private static PlacedPart board(HungHolder holder) {
        return parts(holder, "board").get(0);
    }

    private static SimpleSpan span(HungHolder holder, double things) {
        var board = board(holder);
        double length = clear(holder);
        double load = load(board, things) * length / board.box().size().x();
        var elasticity = board.part().material().elasticity();
        double modulus = board.placement().along() == Axis.X_PLUS ? elasticity.along() : elasticity.across();
        double stiffness = Section.plank(board.box().size().y(), board.part().thickness(), modulus)
                .stiffness();
        return new SimpleSpan(length, stiffness, List.of(new SpanLoad(0, length, load)));
    }

    /** The longest between neighbouring brackets, mm. */
    private static double clear(HungHolder holder) {
        var brackets = parts(holder, "bracket").stream()
                .map(PlacedPart::box)
                .sorted(Comparator.comparingDouble(box -> box.min().x()))
                .toList();
        return IntStream.range(1, brackets.size())
                .mapToDouble(i ->
                        brackets.get(i).min().x() - brackets.get(i - 1).max().x())
                .max()
                .orElseThrow();
    }

    /** Of all things and the whole board, N. */
    private static double load(PlacedPart board, double things) {
        var size = board.box().size();
        double mass =
                size.x() * size.y() * size.z() * 1e-9 * board.part().material().density();
        return Gravity.newtons(mass + things);
    }

    private static List<PlacedPart> parts(HungHolder holder, String name) {
        return holder.made().parts().stream()
                .filter(part -> part.label().startsWith(holder.name() + " " + name))
                .toList();
    }
}
