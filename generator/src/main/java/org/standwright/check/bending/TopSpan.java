package org.standwright.check.bending;

import java.util.ArrayList;
import java.util.List;
import org.standwright.check.LoadedStand;
import org.standwright.check.Remedy;
import org.standwright.design.built.MachineLayout;

/**
 * A span of top under a machine.
 *
 * @param kind what is in it and at its ends
 */
record TopSpan(Sagging sagging, Kind kind) {
    enum Kind {
        /** Between neighbours among the uprights, taken as if they did not sink. */
        LOCAL(""),
        /** Over partitions that are not held from below and only press. */
        ALONE(" (what stands between them is not held from below)"),
        /** Over partitions that are not held from below but tie the top to the bottom. */
        TOGETHER(" (together with the bottom, which hangs free under its partitions)");

        private final String words;

        Kind(String words) {
            this.words = words;
        }
    }

    /** All that a machine's strip lies over. */
    static List<TopSpan> of(LoadedStand loaded, MachineLayout machine) {
        var stand = loaded.stand();
        var strip = TopStrip.under(machine, stand);
        double z = strip.layers().subTop().box().min().z();
        var spans = new ArrayList<TopSpan>();
        var near = Uprights.of(stand).gaps(z);
        near.forEach(gap -> spans.add(new TopSpan(strip.over(gap, loaded), Kind.LOCAL)));
        var together = BottomSpan.together(loaded);
        if (together.isPresent()) {
            spans.add(new TopSpan(together.get(), Kind.TOGETHER));
        } else {
            Uprights.held(stand).gaps(z).stream()
                    .filter(gap -> !near.contains(gap))
                    .forEach(gap -> spans.add(new TopSpan(strip.over(gap, loaded), Kind.ALONE)));
        }
        return spans;
    }

    /** After years, mm. */
    double sag() {
        return sagging.sag();
    }

    boolean isLocal() {
        return kind == Kind.LOCAL;
    }

    /** 'between left side and partition'. */
    String words() {
        return sagging.gap().words() + kind.words;
    }

    /** Cheapest first, two at once last. */
    List<Remedy> remedies(LoadedStand loaded) {
        var design = loaded.design();
        var layer = Stiffer.secondLayer();
        var under = isLocal() ? Stiffer.partitions(loaded.stand(), sagging.gap()) : List.of(Stiffer.housed());
        var remedies = new ArrayList<Remedy>();
        remedies.add(layer);
        remedies.addAll(under);
        remedies.add(Stiffer.thickerWorktop(design));
        remedies.add(Stiffer.thickerCarcass(design));
        under.forEach(other -> remedies.add(layer.and(other)));
        if (!isLocal()) {
            remedies.add(Stiffer.plinth(design));
            remedies.add(layer.and(Stiffer.plinth(design)));
            remedies.add(Stiffer.thickerWorktop(design).and(Stiffer.plinth(design)));
        }
        return remedies;
    }
}
