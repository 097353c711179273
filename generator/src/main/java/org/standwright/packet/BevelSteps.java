package org.standwright.packet;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.standwright.packet.page.Flow;
import org.standwright.packet.page.Mark;
import org.standwright.packet.words.BevelRips;
import org.standwright.packet.words.BevelRips.Rip;
import org.standwright.packet.words.NumberedSetUp;

/**
 * The rips with a tilted blade at the end of one material's cutting order: what they are set to and what they are for.
 * Common practice, no source, but for the setting.
 */
record BevelSteps(Contents<?> contents) {
    void print(List<NumberedSetUp> setUps, Flow flow) {
        var rips = BevelRips.of(setUps, contents.cutList());
        if (rips.isEmpty()) {
            return;
        }
        flow.lead(
                "Then the bevels, blade tilted, once all of these have fallen free; try each setting on scrap first.");
        for (var rip : rips) {
            flow.item(Mark.BOX_ONLY, setting(rip));
            flow.item(Mark.BOX_ONLY, pieces(rip));
            if (rip.tip() > 0 && !rip.pairs().isEmpty()) {
                flow.item(Mark.BOX_ONLY, tips(rip));
            }
        }
    }

    private String setting(Rip rip) {
        return "Blade tilted " + degrees(rip.tilt())
                + " from square, leaning away from the fence; good face up; fence to "
                + "the kerf at the table " + contents.exact(rip.fence()) + ". Guard on, both sides supported, nothing "
                + "trapped under the blade.";
    }

    private String pieces(Rip rip) {
        return Stream.of(pairs(rip), wholes(rip), singles(rip))
                .filter(words -> !words.isEmpty())
                .collect(Collectors.joining(" "));
    }

    private String pairs(Rip rip) {
        if (rip.pairs().isEmpty()) {
            return "";
        }
        var widths = rip.widths().stream().map(contents::exact).collect(Collectors.joining(" and "));
        return "One rip makes two equal strips of each blank " + widths + " wide: " + BevelRips.labels(rip.pairs())
                + ". The strip at the fence comes out with its long face up, the other with its short face up: that one "
                + "has the sheet's back on its long face.";
    }

    private String wholes(Rip rip) {
        return rip.wholes().isEmpty()
                ? ""
                : "Bevel each of these whole, before it is crosscut into its pieces: " + BevelRips.labels(rip.wholes())
                        + ".";
    }

    private String singles(Rip rip) {
        if (rip.singles().isEmpty()) {
            return "";
        }
        return "By themselves: " + BevelRips.labels(rip.singles())
                + (rip.tip() > 0
                        ? "; they are " + contents.exact(rip.finished()) + " wide, their tips off already."
                        : ".");
    }

    private String tips(Rip rip) {
        return "Then the tips of the strips of those pairs: blade square, fence " + contents.exact(rip.finished())
                + " against the square edge, long face down: " + contents.exact(rip.tip())
                + " off. Or plane them to that width.";
    }

    private static String degrees(double tilt) {
        return tilt == Math.rint(tilt) ? Math.round(tilt) + "°" : tilt + "°";
    }
}
