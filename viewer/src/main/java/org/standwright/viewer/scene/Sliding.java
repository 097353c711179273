package org.standwright.viewer.scene;

import java.util.Map;
import java.util.TreeMap;
import javafx.animation.Transition;
import javafx.util.Duration;

/** Slides what moves to where it is to be. */
final class Sliding extends Transition {
    private static final Duration TIME = Duration.millis(250);

    private final Runnable whenMoved;
    private final Map<String, Double> from = new TreeMap<>();
    private final Map<String, Double> to = new TreeMap<>();
    private Map<String, Double> now = Map.of();

    Sliding(Runnable whenMoved) {
        this.whenMoved = whenMoved;
        setCycleDuration(TIME);
    }

    /** How far each group is open now, 0 to 1; those not named are closed. */
    Map<String, Double> now() {
        return now;
    }

    /** Begins to slide from where everything is now. */
    void slideTo(Map<String, Double> wanted) {
        fill(from, now);
        fill(to, wanted);
        playFromStart();
    }

    /** Puts everything where it is to be at once; groups that are not named are forgotten. */
    void jumpTo(Map<String, Double> wanted) {
        stop();
        now = new TreeMap<>(wanted);
    }

    @Override
    protected void interpolate(double share) {
        var between = new TreeMap<String, Double>();
        from.forEach((group, start) -> between.merge(group, (1 - share) * start, Double::sum));
        to.forEach((group, end) -> between.merge(group, share * end, Double::sum));
        now = between;
        whenMoved.run();
    }

    private static void fill(Map<String, Double> map, Map<String, Double> values) {
        map.clear();
        map.putAll(values);
    }
}
