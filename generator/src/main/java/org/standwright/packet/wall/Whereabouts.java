package org.standwright.packet.wall;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import org.standwright.assembly.PlacedPart;
import org.standwright.drawing.holder.EqualHolders;
import org.standwright.geom.Box3;
import org.standwright.geom.Grid;
import org.standwright.unit.Units;

/**
 * Where equal boards of a holder sit, in words taken from their boxes: from the left edge, above the lower edge of the back,
 * and before or behind it.
 */
record Whereabouts(EqualHolders holder, List<PlacedPart> boards, Units units) {
    String words() {
        var words = new ArrayList<String>();
        if (isBack()) {
            words.add("rear face " + figures(box -> -box.max().y())
                    + " from the wall; upper edge flush with the hanger's");
        } else {
            along(words);
            up(words);
            out(words);
        }
        return String.join("; ", words);
    }

    private boolean isBack() {
        return boards.contains(holder.back());
    }

    private void along(List<String> words) {
        double left = holder.box().min().x();
        boolean whole = boards.stream()
                .map(PlacedPart::box)
                .allMatch(box -> Grid.same(box.size().x(), holder.box().size().x()));
        words.add(
                whole
                        ? "whole width"
                        : "left " + (boards.size() > 1 ? "faces " : "face ")
                                + figures(box -> box.min().x() - left) + " from the left edge");
    }

    private void up(List<String> words) {
        double foot = holder.back().box().min().z();
        double top = holder.back().box().max().z();
        if (boards.stream().allMatch(board -> Grid.same(board.box().min().z(), foot))) {
            words.add("lower edge flush with the back's");
        } else {
            words.add("lower edge " + figures(box -> box.min().z() - foot) + " above the back's");
        }
        if (boards.stream().allMatch(board -> Grid.same(board.box().max().z(), top))) {
            words.add("upper edge flush with it");
        }
    }

    private void out(List<String> words) {
        double face = holder.back().box().min().y();
        if (boards.stream().allMatch(holder::isBehind)) {
            words.add("behind it");
            return;
        }
        words.add("front " + figures(box -> face - box.min().y()) + " before its face");
        double into = boards.get(0).box().max().y() - face;
        if (Grid.less(0, into)) {
            words.add(units.bareLength(into) + " let into it");
        }
    }

    /** '0, 288, 576': each once, rising. */
    private String figures(ToDoubleFunction<Box3> place) {
        return boards.stream()
                .map(PlacedPart::box)
                .mapToDouble(place)
                .sorted()
                .mapToObj(units::bareLength)
                .distinct()
                .collect(Collectors.joining(", "));
    }
}
