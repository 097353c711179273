package org.standwright.design;

import java.util.List;
import org.standwright.unit.Units;

/** A design in the making that differs from another in some decisions; all others are taken over. */
public final class Redesign {
    private final StandDesign from;
    private Units unit;
    private Place place;
    private WorkingHeight workingHeight;
    private Plan plan;
    private Support support;
    private CarcassPlan carcass;
    private Worktop worktop;
    private List<Cutout> cutouts;
    private List<Bay> bays;
    private DrawerPlan drawers;
    private Edges edges;
    private StockPlan stock;
    private Steady steady;

    private Redesign(StandDesign from) {
        this.from = from;
        this.unit = from.unit();
        this.place = from.place();
        this.workingHeight = from.workingHeight();
        this.plan = from.plan();
        this.support = from.support();
        this.carcass = from.carcass();
        this.worktop = from.worktop();
        this.cutouts = from.cutouts();
        this.bays = from.bays();
        this.drawers = from.drawers();
        this.edges = from.edges();
        this.stock = from.stock();
        this.steady = from.steady();
    }

    /** Begins with a design as it is. */
    public static Redesign of(StandDesign from) {
        return new Redesign(from);
    }

    public Redesign unit(Units other) {
        unit = other;
        return this;
    }

    public Redesign place(Place other) {
        place = other;
        return this;
    }

    public Redesign workingHeight(WorkingHeight other) {
        workingHeight = other;
        return this;
    }

    public Redesign plan(Plan other) {
        plan = other;
        return this;
    }

    public Redesign support(Support other) {
        support = other;
        return this;
    }

    public Redesign carcass(CarcassPlan other) {
        carcass = other;
        return this;
    }

    public Redesign worktop(Worktop other) {
        worktop = other;
        return this;
    }

    public Redesign cutouts(List<Cutout> other) {
        cutouts = other;
        return this;
    }

    public Redesign bays(List<Bay> other) {
        bays = other;
        return this;
    }

    public Redesign drawers(DrawerPlan other) {
        drawers = other;
        return this;
    }

    public Redesign edges(Edges other) {
        edges = other;
        return this;
    }

    public Redesign stock(StockPlan other) {
        stock = other;
        return this;
    }

    public Redesign steady(Steady other) {
        steady = other;
        return this;
    }

    /** The design with all changes so far. */
    public StandDesign done() {
        return new StandDesign(
                from.name(),
                unit,
                from.machine(),
                place,
                workingHeight,
                plan,
                from.layout(),
                support,
                carcass,
                worktop,
                cutouts,
                bays,
                drawers,
                edges,
                from.screws(),
                from.saw(),
                from.router(),
                stock,
                from.cutting(),
                from.savings(),
                from.loads(),
                from.site(),
                steady,
                from.rules());
    }
}
