package org.standwright.check.handling;

import java.util.Comparator;
import java.util.List;
import org.standwright.check.Finding;
import org.standwright.check.Gauge;
import org.standwright.check.Input;
import org.standwright.check.Limit;
import org.standwright.check.LoadedStand;
import org.standwright.check.Quantity;
import org.standwright.check.RuleText;
import org.standwright.design.Site;

/** Whether a stand passes through a passage: first as it is, then with ever more taken off. */
final class WayThrough {
    static final String FORMULA = "share = max(a / W, u / H)";

    private final RuleText text;
    private final String subject;
    private final Site.Passage passage;
    private final LoadedStand loaded;

    WayThrough(RuleText text, String subject, Site.Passage passage, LoadedStand loaded) {
        this.text = text;
        this.subject = subject;
        this.passage = passage;
        this.loaded = loaded;
    }

    /** The first of the ways that passes, and a note where that takes some work; else the one that lacks least. */
    List<Finding> findings(List<Load> ways) {
        var first = ways.stream().filter(load -> share(load) <= 1 + 1e-9).findFirst();
        if (first.isEmpty()) {
            var nearest =
                    ways.stream().min(Comparator.comparingDouble(this::share)).orElseThrow();
            return List.of(judged(nearest, "It does not pass " + opening() + " in any way. " + nearest(nearest)));
        }
        var load = first.get();
        var passes = judged(load, "It passes " + opening() + " " + load.words() + ".");
        return load.equals(ways.get(0))
                ? List.of(passes)
                : List.of(
                        passes,
                        Finding.note(text, subject, "It passes " + opening() + " only " + load.words() + setUp(load)));
    }

    private double share(Load load) {
        return load.share(passage);
    }

    private String nearest(Load load) {
        return "Nearest to it, " + load.words() + ", it is " + loaded.units().length(load.across()) + " by "
                + loaded.units().length(load.upwards()) + "."
                + (new EmptyStand(loaded).comesApart()
                        ? ""
                        : " Its carcass is glued or screwed for good; connecting screws would come apart again.");
    }

    private String setUp(Load load) {
        return load.upright() || load.words().equals(EmptyStand.APART)
                ? "."
                : "; to be set upright again it needs " + loaded.units().length(load.diagonal()) + " of height.";
    }

    private String opening() {
        var units = loaded.units();
        return subject + " of " + units.bareLength(passage.width()) + " x " + units.length(passage.height());
    }

    private Finding judged(Load load, String message) {
        return Finding.judged(text, subject, new Gauge(Quantity.RATIO, share(load), Limit.cautionAbove(1)), message)
                .with(
                        new Input("a", "the stand across", Quantity.LENGTH, load.across()),
                        new Input("u", "the stand upwards", Quantity.LENGTH, load.upwards()),
                        new Input("W", "clear width", Quantity.LENGTH, passage.width()),
                        new Input("H", "clear height", Quantity.LENGTH, passage.height()));
    }
}
