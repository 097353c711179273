package org.standwright.design;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import org.standwright.design.kit.CentreOfMass;
import org.standwright.design.kit.Cord;
import org.standwright.design.kit.DustPort;
import org.standwright.design.kit.Envelope;
import org.standwright.design.kit.Feed;
import org.standwright.design.kit.Machine;
import org.standwright.design.kit.Mounting;
import org.standwright.design.kit.Reference;
import org.standwright.design.kit.Saw;
import org.standwright.design.kit.Side;
import org.standwright.design.kit.Size2;
import org.standwright.design.kit.Slide;
import org.standwright.design.kit.WorkingForce;
import org.standwright.part.SheetGood;
import org.standwright.unit.Units;

/** A design whose decisions a test may change one by one. */
public final class Draft {
    public String name;
    public Units unit;
    public Machine machine;
    public Place place;
    public WorkingHeight workingHeight;
    public Plan plan;
    public Layout layout;
    public Support support;
    public CarcassPlan carcass;
    public Worktop worktop;
    public List<Cutout> cutouts;
    public List<Bay> bays;
    public DrawerPlan drawers;
    public Edges edges;
    public Screws screws;
    public Saw saw;
    public StockPlan stock;
    public CuttingPlan cutting;
    public Optional<Savings> savings;
    public Loads loads;
    public Site site;
    public Steady steady;
    public List<RuleChoice> rules;

    private Draft(StandDesign from) {
        name = from.name();
        unit = from.unit();
        machine = from.machine();
        place = from.place();
        workingHeight = from.workingHeight();
        plan = from.plan();
        layout = from.layout();
        support = from.support();
        carcass = from.carcass();
        worktop = from.worktop();
        cutouts = from.cutouts();
        bays = from.bays();
        drawers = from.drawers();
        edges = from.edges();
        screws = from.screws();
        saw = from.saw();
        stock = from.stock();
        cutting = from.cutting();
        savings = from.savings();
        loads = from.loads();
        site = from.site();
        steady = from.steady();
        rules = from.rules();
    }

    /** {@code from} with some decisions changed. */
    public static StandDesign of(StandDesign from, Consumer<Draft> change) {
        var draft = new Draft(from);
        change.accept(draft);
        return draft.design();
    }

    public void plan(double width, double depth) {
        plan = new Plan(OptionalDouble.of(width), OptionalDouble.of(depth));
    }

    public void slide(Slide slide) {
        hang(new Hang.Slides(slide));
    }

    public void hang(Hang hang) {
        drawers(drawers.front(), hang, drawers.grip(), drawers.gap());
    }

    public void gap(double gap) {
        drawers(drawers.front(), drawers.hang(), drawers.grip(), gap);
    }

    public void grip(Grip grip) {
        drawers(drawers.front(), drawers.hang(), grip, drawers.gap());
    }

    public void front(SheetGood front) {
        drawers(front, drawers.hang(), drawers.grip(), drawers.gap());
    }

    public void matched(FrontGrain grain) {
        drawers = new DrawerPlan(
                drawers.box(),
                drawers.bottom(),
                drawers.front(),
                drawers.hang(),
                drawers.mount(),
                drawers.gap(),
                drawers.bumper(),
                drawers.grip(),
                grain,
                true,
                drawers.rounding());
    }

    private void drawers(SheetGood front, Hang hang, Grip grip, double gap) {
        drawers = new DrawerPlan(
                drawers.box(),
                drawers.bottom(),
                front,
                hang,
                drawers.mount(),
                gap,
                drawers.bumper(),
                grip,
                drawers.frontGrain(),
                drawers.matched(),
                drawers.rounding());
    }

    private StandDesign design() {
        return new StandDesign(
                name,
                unit,
                machine,
                place,
                workingHeight,
                plan,
                layout,
                support,
                carcass,
                worktop,
                cutouts,
                bays,
                drawers,
                edges,
                screws,
                saw,
                Optional.empty(),
                stock,
                cutting,
                savings,
                loads,
                site,
                steady,
                rules);
    }

    /** A machine whose facts a test may change one by one. */
    public static final class OfMachine {
        public String name;
        public Size2 base;
        public Envelope envelope;
        public double mass;
        public Reference reference;
        public double feet;
        public Optional<CentreOfMass> centreOfMass = Optional.empty();
        public Optional<Mounting> mounting = Optional.empty();
        public Optional<WorkingForce> workingForce = Optional.empty();
        public Optional<DustPort> dustPort = Optional.empty();
        public Optional<Cord> cord = Optional.empty();
        public List<Side> reachable = List.of();
        public Side operator = Side.FRONT;
        public Feed feed = Feed.NONE;

        /** A box on its own base that carries nothing but its name and sizes. */
        public static Machine plain(String name, Size2 base, Envelope envelope, double mass, Reference reference) {
            var machine = new OfMachine();
            machine.name = name;
            machine.base = base;
            machine.envelope = envelope;
            machine.mass = mass;
            machine.reference = reference;
            return machine.machine();
        }

        /** {@code from} with some facts changed. */
        public static Machine of(Machine from, Consumer<OfMachine> change) {
            var machine = new OfMachine();
            machine.name = from.name();
            machine.base = from.base();
            machine.envelope = from.envelope();
            machine.mass = from.mass();
            machine.reference = from.reference();
            machine.feet = from.feet();
            machine.centreOfMass = from.centreOfMass();
            machine.mounting = from.mounting();
            machine.workingForce = from.workingForce();
            machine.dustPort = from.dustPort();
            machine.cord = from.cord();
            machine.reachable = from.reachable();
            machine.operator = from.operator();
            machine.feed = from.feed();
            change.accept(machine);
            return machine.machine();
        }

        private Machine machine() {
            return new Machine(
                    name,
                    base,
                    envelope,
                    mass,
                    reference,
                    feet,
                    centreOfMass,
                    mounting,
                    workingForce,
                    dustPort,
                    cord,
                    reachable,
                    operator,
                    feed);
        }
    }
}
