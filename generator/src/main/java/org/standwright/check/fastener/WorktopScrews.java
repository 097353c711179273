package org.standwright.check.fastener;

import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.standwright.assembly.PlacedPart;
import org.standwright.check.Finding;
import org.standwright.check.Gauge;
import org.standwright.check.Input;
import org.standwright.check.LoadedStand;
import org.standwright.check.Quantity;
import org.standwright.check.Remedy;
import org.standwright.check.Rule;
import org.standwright.check.RuleText;
import org.standwright.check.Weight;
import org.standwright.design.Redesign;
import org.standwright.design.StandDesign;
import org.standwright.design.Worktop;
import org.standwright.geom.Grid;
import org.standwright.geom.Vec3;
import org.standwright.part.Hole;
import org.standwright.unit.Gravity;

/**
 * The screws that hold the worktop down, from inside through the sub-top. Two things draw on them: someone who lifts the
 * full stand by one edge of its worktop, half of its weight on half of the screws while its far feet stand; and the work at the machine, which tips the worktop over
 * one edge on the row of screws at the other, the machine's own weight left out.
 */
public final class WorktopScrews implements Rule<LoadedStand> {
    private static final RuleText TEXT = new RuleText(
            "top-screws",
            "Do its screws hold the worktop?",
            "lifting F = (W/2) / (n/2); working F = P (h + t) / (d r)",
            "Withdrawal only: for flat heads pulled through the sub-top there is no source, so they are not rated. A metric "
                    + "screw counts as the thickest numbered one that is not thicker; plywood as wood of specific gravity "
                    + "0.42, which is low for most furniture plywood: above the allowable load that is a caution, above the "
                    + "ultimate load a stop; loads of ten minutes.",
            "withdrawal of NDS 2018 Eq. 12.2-2; ultimate load of the Wood Handbook chapter 8, as quoted; own derivation of the forces");

    private static final String SUBJECT = "worktop";
    private static final String HOLE = "worktop screw";

    @Override
    public RuleText text() {
        return TEXT;
    }

    @Override
    public List<Finding> check(LoadedStand stand) {
        return stand.stand().assembly().parts().stream()
                .filter(placed -> placed.part().name().equals("sub-top"))
                .findFirst()
                .map(subTop -> found(stand, subTop))
                .stream()
                .toList();
    }

    private static Finding found(LoadedStand stand, PlacedPart subTop) {
        var places = places(subTop);
        if (places.size() < 2) {
            return Finding.stop(
                    TEXT, SUBJECT, places.isEmpty() ? "No screw holds it down." : "One screw alone holds it down.");
        }
        double lifting = Gravity.newtons(hanging(stand)) / 2 / (places.size() / 2.0);
        double working = working(stand, places);
        var units = stand.units();
        var words = lifting >= working
                ? "Lifted full by one edge of its worktop, the stand draws with " + units.force(lifting)
                        + " on each screw that carries it, half of " + places.size()
                : "The work at the machine draws with " + units.force(working) + " on each screw at one edge";
        return held(stand, subTop.part().thickness(), Math.max(lifting, working), words)
                .with(
                        new Input("n", "screws", Quantity.COUNT, places.size()),
                        new Input("lifting F", "on a screw when lifted", Quantity.FORCE, lifting),
                        new Input("working F", "on a screw by the work", Quantity.FORCE, working));
    }

    private static Finding held(LoadedStand stand, double through, double force, String words) {
        var units = stand.units();
        var wood = HoldingWood.of(stand.design().worktop().sheet().material());
        var screw = NumberedScrew.largestWithin(stand.design().screws().panel().diameter());
        var length = BoughtScrew.length(stand.stand(), "worktop");
        if (wood.isEmpty() || screw.isEmpty() || length.isEmpty()) {
            return Finding.note(TEXT, SUBJECT, words + ". Screws in this wood are not rated.");
        }
        double thread = screw.get().threadBeyond(length.getAsDouble(), through);
        if (thread == 0) {
            return Finding.stop(TEXT, SUBJECT, "Its screws do not reach beyond the sub-top.");
        }
        var limit = ScrewLimits.withdrawal(screw.get(), wood.get(), thread, LoadDuration.TEN_MINUTES);
        var unrated = ScrewLimits.isRated(screw.get(), thread)
                ? ""
                : " Less than " + units.length(screw.get().leastPenetration()) + " is not rated.";
        var all = words + ", with " + units.length(thread) + " of thread in the worktop." + unrated;
        return Finding.judged(TEXT, SUBJECT, new Gauge(Quantity.FORCE, force, limit), all)
                .remedies(List.of(
                        Remedy.ofStand("a worktop of two layers, with longer screws", WorktopScrews::twoLayers)));
    }

    private static Optional<StandDesign> twoLayers(StandDesign design) {
        var now = design.worktop();
        return now.layers() > 1
                ? Optional.empty()
                : Optional.of(Redesign.of(design)
                        .worktop(new Worktop(now.sheet(), 2, now.overhang(), now.plate()))
                        .done());
    }

    private static List<Vec3> places(PlacedPart subTop) {
        return subTop.part().features().stream()
                .filter(feature ->
                        feature instanceof Hole hole && hole.purpose().equals(HOLE))
                .map(Hole.class::cast)
                .map(hole -> subTop.placement().apply(new Vec3(hole.x(), hole.y(), 0)))
                .toList();
    }

    /** Of everything below the worktop, full, kg. */
    private static double hanging(LoadedStand stand) {
        return stand.weights().stream()
                .filter(weight ->
                        weight.kind() != Weight.Kind.MACHINE && !weight.group().equals(SUBJECT))
                .mapToDouble(Weight::mass)
                .sum();
    }

    /** The worse of the two directions, N. */
    private static double working(LoadedStand stand, List<Vec3> places) {
        double worktop = stand.stand().worktop().size().z();
        return stand.design()
                .machine()
                .workingForce()
                .map(force -> force.force() * (force.height() + worktop))
                .map(moment -> Math.max(perScrew(moment, places, Vec3::x), perScrew(moment, places, Vec3::y)))
                .orElse(0.0);
    }

    private static double perScrew(double moment, List<Vec3> places, ToDoubleFunction<Vec3> across) {
        double least = places.stream().mapToDouble(across).min().orElseThrow();
        double most = places.stream().mapToDouble(across).max().orElseThrow();
        long row = Math.min(
                places.stream()
                        .filter(place -> Grid.same(across.applyAsDouble(place), most))
                        .count(),
                places.stream()
                        .filter(place -> Grid.same(across.applyAsDouble(place), least))
                        .count());
        return Grid.same(least, most) ? 0 : moment / (most - least) / row;
    }
}
