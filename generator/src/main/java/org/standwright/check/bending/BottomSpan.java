package org.standwright.check.bending;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.standwright.assembly.Block;
import org.standwright.assembly.PlacedPart;
import org.standwright.check.LoadedStand;
import org.standwright.check.Weight;
import org.standwright.design.Joint;
import org.standwright.design.StandDesign;
import org.standwright.design.Support;
import org.standwright.design.built.Stand;
import org.standwright.geom.Axis;
import org.standwright.geom.Grid;

/**
 * The bottom of a stand between the casters or levelers at its ends. Where partitions tie it to the top, both bend together
 * under all that is on either: their stiffnesses add. Screws into a partition's edge can only press; then the bottom hangs
 * by itself wherever it would sag more than the top lets it.
 */
final class BottomSpan {
    private final LoadedStand loaded;
    private final Stand stand;
    private final PlacedPart bottom;
    private final TopLayers top;

    private BottomSpan(LoadedStand loaded) {
        this.loaded = loaded;
        this.stand = loaded.stand();
        this.bottom = Named.part(stand, "bottom");
        this.top = TopLayers.of(stand);
    }

    /** Nothing for a bottom that is held under its partitions too. */
    static Optional<Sagging> of(LoadedStand loaded) {
        return holdsPartitions(loaded.design()) ? Optional.empty() : Optional.of(new BottomSpan(loaded).sagging());
    }

    /** Top and bottom under all that is on either, where glued or bolted partitions on a hanging bottom tie them. */
    static Optional<Sagging> together(LoadedStand loaded) {
        var span = new BottomSpan(loaded);
        return !holdsPartitions(loaded.design()) && span.isPartitioned() && span.isTied()
                ? Optional.of(span.together(span.gap()))
                : Optional.empty();
    }

    /**
     * Whether partitions do not sink: the bottom is held below them, or the back is glued all round. Back, partition, top
     * and bottom are a closed box then, whose panels carry what is on the partition in their own planes.
     */
    static boolean holdsPartitions(StandDesign design) {
        return isHeldUnderPartitions(design.support()) || design.carcass().joint() instanceof Joint.Housed;
    }

    static boolean isHeldUnderPartitions(Support support) {
        return support instanceof Support.Plinth || support instanceof Support.None;
    }

    private Sagging sagging() {
        var gap = gap();
        if (!isPartitioned()) {
            return sagging(gap, stiffness(), floor(loaded, gap));
        }
        var together = together(gap);
        var alone = sagging(gap, stiffness(), floor(withoutTop(), gap));
        return isTied() || alone.sag() < together.sag() ? together : alone;
    }

    private Sagging together(Gap gap) {
        var strip = TopStrip.whole(stand);
        var loads = new ArrayList<>(floor(withoutTop(), gap));
        loads.addAll(strip.loads(gap, loaded));
        return sagging(gap, stiffness() + strip.stiffness(gap), loads);
    }

    private boolean isTied() {
        return !(loaded.design().carcass().joint() instanceof Joint.Screwed);
    }

    private Sagging sagging(Gap gap, double stiffness, List<SpanLoad> loads) {
        return new Sagging(gap, new SimpleSpan(gap.length(), stiffness, loads), GrainWay.creep(bottom));
    }

    private List<SpanLoad> floor(LoadedStand from, Gap gap) {
        return new LevelLoads(from).onFloor(bottom, gap.x0(), gap.x1());
    }

    /** Whether a partition stands between bottom and top. */
    private boolean isPartitioned() {
        var on = Uprights.of(stand).on(bottom);
        return Uprights.of(stand).at(top.subTop().box().min().z()).stream().anyMatch(on::contains);
    }

    /** Everything but what lies on the partitions from above: machine, worktop, sub-top. */
    private LoadedStand withoutTop() {
        return new LoadedStand(
                stand,
                loaded.weights().stream()
                        .filter(weight -> weight.kind() != Weight.Kind.MACHINE
                                && !weight.group().equals("worktop")
                                && !weight.what().equals(top.subTop().label()))
                        .toList());
    }

    /** Between the inner edges of the strips, or between the middles of what a doubled bottom stands on. */
    private Gap gap() {
        var strips = support()
                .filter(part -> !isWhole(part))
                .sorted(Comparator.comparingDouble(part -> part.box().min().x()))
                .toList();
        if (!strips.isEmpty()) {
            return new Gap(
                    "the left strip",
                    "the right strip",
                    strips.get(0).box().max().x(),
                    strips.get(strips.size() - 1).box().min().x());
        }
        var feet = stand.assembly().blocks().stream()
                .filter(block -> block.kind() == Block.Kind.CASTER || block.kind() == Block.Kind.LEVELER)
                .mapToDouble(block -> block.box().centre().x())
                .summaryStatistics();
        return new Gap("its feet at the left", "those at the right", feet.getMin(), feet.getMax());
    }

    private double stiffness() {
        return ShelfSection.of(bottom, loaded.design()).stiffness()
                + support()
                        .filter(this::isWhole)
                        .mapToDouble(part -> GrainWay.section(
                                        part, Axis.X_PLUS, part.box().size().y())
                                .stiffness())
                        .sum();
    }

    /** A layer of a doubled bottom. */
    private boolean isWhole(PlacedPart part) {
        return Grid.same(part.box().size().x(), stand.carcass().size().x());
    }

    private Stream<PlacedPart> support() {
        return stand.assembly().groups().stream()
                .filter(group -> group.name().equals("support"))
                .flatMap(group -> group.parts().stream());
    }
}
