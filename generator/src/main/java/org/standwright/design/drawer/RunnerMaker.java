package org.standwright.design.drawer;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.standwright.assembly.PlacedPart;
import org.standwright.assembly.Placement;
import org.standwright.design.built.BayLayout;
import org.standwright.design.built.DrawerLayout;
import org.standwright.design.built.SectionLayout;
import org.standwright.design.column.DrawerFit;
import org.standwright.design.column.OnRunners;
import org.standwright.design.column.Running;
import org.standwright.design.frame.Frame;
import org.standwright.design.frame.ScrewChoice;
import org.standwright.design.frame.SideBore;
import org.standwright.design.kit.Side;
import org.standwright.geom.Axis;
import org.standwright.geom.Rect;
import org.standwright.geom.Vec3;
import org.standwright.part.Edge;
import org.standwright.part.EdgeHole;
import org.standwright.part.Hole;
import org.standwright.part.Material;
import org.standwright.part.Part;

/**
 * What drawers without slides run on: runners below them, a kicker over the uppermost of each row, and a stop behind
 * each box. They are screwed to the uprights and belong to the carcass.
 */
public final class RunnerMaker {
    /** First and last screw of a runner from its ends, mm; common practice, no source. */
    private static final double FROM_END = 80;
    /** Runners longer than this get a third screw, mm; common practice, no source. */
    private static final double TWO_SCREWS = 350;
    /** Screws left of an upright and right of it stand apart by twice this along it, so that they never meet, mm. */
    private static final double STAGGER = 10;

    private final Frame frame;
    private final List<BayLayout> bays;
    private final Optional<OnRunners> running;

    public RunnerMaker(Frame frame, List<BayLayout> bays) {
        this.frame = frame;
        this.bays = bays;
        this.running =
                Running.of(frame.design()) instanceof OnRunners runners ? Optional.of(runners) : Optional.empty();
    }

    /** Runners, kickers and stops, from the left bay to the right, in each from top to bottom; none beside slides. */
    public List<PlacedPart> parts() {
        return running.stream()
                .flatMap(runners -> rows().flatMap(row -> parts(runners, row).stream()))
                .toList();
    }

    /** Pilots in the uprights for the screws of runners and kickers; none beside slides. */
    public List<SideBore> pilots() {
        return running.stream()
                .flatMap(runners -> rows().flatMap(row -> pilots(runners, row).stream()))
                .toList();
    }

    private Stream<SectionLayout.Drawers> rows() {
        return bays.stream().flatMap(bay -> bay.leaves(SectionLayout.Drawers.class));
    }

    private List<PlacedPart> parts(OnRunners runners, SectionLayout.Drawers row) {
        var parts = new ArrayList<PlacedPart>();
        var opening = row.opening();
        for (var drawer : row.drawers()) {
            double bottom = cellBottom(drawer, opening);
            if (drawer == row.drawers().get(0)) {
                parts.addAll(pair(runners, "kicker", drawer, opening, kicker(runners, drawer, opening)));
            }
            parts.addAll(pair(runners, "runner", drawer, opening, bottom));
            parts.addAll(stops(runners, drawer, opening, bottom + runners.bar().thickness()));
        }
        return parts;
    }

    private List<SideBore> pilots(OnRunners runners, SectionLayout.Drawers row) {
        var bores = new ArrayList<SideBore>();
        var opening = row.opening();
        for (var drawer : row.drawers()) {
            if (drawer == row.drawers().get(0)) {
                bores.addAll(pilots(runners, opening, kicker(runners, drawer, opening), "kicker pilot"));
            }
            bores.addAll(pilots(runners, opening, cellBottom(drawer, opening), "runner pilot"));
        }
        return bores;
    }

    private static double cellBottom(DrawerLayout drawer, Rect opening) {
        return Math.max(drawer.front().y0(), opening.y0());
    }

    /** Underside of the kicker above a drawer. */
    private static double kicker(OnRunners runners, DrawerLayout drawer, Rect opening) {
        return cellBottom(drawer, opening) + runners.below() + drawer.box().height() + OnRunners.HEIGHT_PLAY;
    }

    private List<PlacedPart> pair(OnRunners runners, String name, DrawerLayout drawer, Rect opening, double z) {
        var label = "drawer " + drawer.name() + " ";
        double y = DrawerFit.slideFront(frame);
        double width = runners.bar().width();
        return List.of(
                placed(label + "left " + name, bar(runners, name, Side.LEFT), opening.x0() + width, y, z),
                placed(label + "right " + name, bar(runners, name, Side.RIGHT), opening.x1(), y, z));
    }

    private List<PlacedPart> stops(OnRunners runners, DrawerLayout drawer, Rect opening, double z) {
        var label = "drawer " + drawer.name() + " ";
        double y = DrawerFit.boxFront(frame) + drawer.box().depth() + runners.beforeStop();
        double width = runners.bar().width();
        var stop = Part.blank("stop", material(runners), OnRunners.STOP, width)
                .with(Hole.through(
                        OnRunners.STOP / 2,
                        width / 2,
                        frame.design().screws().panel().clearance(),
                        "stop screw"));
        return List.of(
                placed(label + "left stop", stop, opening.x0() + width, y, z),
                placed(label + "right stop", stop, opening.x1(), y, z));
    }

    /** A bar along the upright: its x runs to the back, its y to the left, its thickness stands upright. */
    private static PlacedPart placed(String label, Part bar, double right, double y, double z) {
        return new PlacedPart(label, bar, new Placement(Axis.Y_PLUS, Axis.X_MINUS, new Vec3(right, y, z)));
    }

    /** Screws go through its width, in from the edge that looks into the opening. */
    private Part bar(OnRunners runners, String name, Side wall) {
        var bar = runners.bar();
        double clearance = frame.design().screws().panel().clearance();
        return Part.blank(name, material(runners), length(), bar.width())
                .with(screwPlaces(wall).stream()
                        .map(x -> new EdgeHole(
                                wall == Side.LEFT ? Edge.Y0 : Edge.Y1,
                                x,
                                bar.thickness() / 2,
                                clearance,
                                bar.width(),
                                name + " screw"))
                        .toList());
    }

    private List<SideBore> pilots(OnRunners runners, Rect opening, double z, String purpose) {
        var bores = new ArrayList<SideBore>();
        double depth = new ScrewChoice(frame.design()).runner(runners.bar())
                - runners.bar().width();
        double pilot = frame.design().screws().panel().pilot();
        double front = DrawerFit.slideFront(frame);
        double level = z + runners.bar().thickness() / 2;
        for (var wall : List.of(Side.LEFT, Side.RIGHT)) {
            double x = wall == Side.LEFT ? opening.x0() : opening.x1();
            screwPlaces(wall).forEach(y -> bores.add(new SideBore(wall, x, front + y, level, pilot, depth, purpose)));
        }
        return bores;
    }

    /** From a runner's front end; those at a left wall and those at a right wall are each other's, turned round. */
    private List<Double> screwPlaces(Side wall) {
        double shift = wall == Side.LEFT ? -STAGGER : STAGGER;
        var ends = List.of(FROM_END + shift, length() - FROM_END + shift);
        return length() > TWO_SCREWS ? List.of(ends.get(0), length() / 2 + shift, ends.get(1)) : ends;
    }

    private double length() {
        return frame.insideDepth() - OnRunners.BEFORE_BACK - DrawerFit.slideFront(frame);
    }

    private static Material material(OnRunners runners) {
        return runners.bar().material();
    }
}
