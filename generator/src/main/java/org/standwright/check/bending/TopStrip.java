package org.standwright.check.bending;

import java.util.ArrayList;
import java.util.List;
import org.standwright.check.LoadedStand;
import org.standwright.design.built.MachineLayout;
import org.standwright.design.built.Stand;
import org.standwright.geom.Box3;

/**
 * What bears of a top from left to right: sub-top and worktop between two places from front to back, over each span less the
 * widest of what is cut out of it there.
 *
 * @param y0 where it begins, mm
 * @param y1 where it ends, mm
 */
record TopStrip(Stand stand, double y0, double y1) {
    /** As deep as a machine's base. */
    static TopStrip under(MachineLayout machine, Stand stand) {
        return new TopStrip(
                stand, machine.base().min().y(), machine.base().max().y());
    }

    static TopStrip whole(Stand stand) {
        var worktop = stand.worktop();
        return new TopStrip(stand, worktop.min().y(), worktop.max().y());
    }

    /** Depth of sub-top in it, mm; 0 or less where it lies beside the sub-top. */
    double ofSubTop() {
        return within(layers().subTop().box());
    }

    private double ofWorktop() {
        return within(stand.worktop());
    }

    private double within(Box3 board) {
        return Math.min(y1, board.max().y()) - Math.max(y0, board.min().y());
    }

    /** E I over a span, N·mm². Where a hole leaves nothing of the strip, the top before and behind the hole bears. */
    double stiffness(Gap gap) {
        double cut = TopOpenings.of(stand).widest(y0, y1, gap);
        return cut < ofSubTop()
                ? layers().stiffness(ofWorktop() - cut, ofSubTop() - cut)
                : whole(stand).stiffness(gap);
    }

    /** Machine's feet on a span, and the strip itself as if nothing were cut out of it. */
    List<SpanLoad> loads(Gap gap, LoadedStand loaded) {
        var loads = new ArrayList<SpanLoad>();
        MachineFeet.of(loaded).stream()
                .filter(foot -> gap.holds(foot.x()))
                .forEach(foot -> loads.add(SpanLoad.point(foot.x() - gap.x0(), foot.force())));
        loads.add(new SpanLoad(0, gap.length(), layers().weight(ofWorktop(), ofSubTop()) * gap.length()));
        return loads;
    }

    /** Of a span by itself. */
    Sagging over(Gap gap, LoadedStand loaded) {
        return new Sagging(gap, new SimpleSpan(gap.length(), stiffness(gap), loads(gap, loaded)), layers().creep());
    }

    TopLayers layers() {
        return TopLayers.of(stand);
    }
}
