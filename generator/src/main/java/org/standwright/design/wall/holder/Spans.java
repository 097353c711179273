package org.standwright.design.wall.holder;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.standwright.geom.Grid;

/**
 * Things in a row with posts at both ends and, in a long one, between.
 *
 * @param width over all, mm
 * @param centres of the things, from the left end, mm
 * @param posts left faces of the posts, from the left end, mm
 */
record Spans(double width, List<Double> centres, List<Double> posts) {
    /** No board is longer between its posts, mm; common practice, no source. */
    private static final double LONGEST = 600;

    Spans {
        centres = List.copyOf(centres);
        posts = List.copyOf(posts);
    }

    /** A board of a width that nothing goes through, its posts evenly below it. */
    static List<Double> evenly(double width, double post) {
        int spans = (int) StrictMath.ceil(width / LONGEST - Grid.STEP);
        return IntStream.rangeClosed(0, spans)
                .mapToObj(i -> i * (width - post) / spans)
                .toList();
    }

    /**
     * Posts between the things, which are shared evenly.
     *
     * @param pitch width of a thing and of the gap to the next, mm
     * @param margin what each span is longer than its things and gaps, mm
     * @param post thickness of a post, mm
     * @param least width over all, mm
     */
    static Spans of(int count, double pitch, double margin, double post, double least) {
        int spans = Math.min(count, Math.max(1, (int) StrictMath.ceil(count * pitch / LONGEST - Grid.STEP)));
        double bare = count * pitch + spans * margin + (spans + 1) * post;
        double beside = margin + Math.max(0, least - bare) / spans;
        var centres = new ArrayList<Double>();
        var posts = new ArrayList<Double>(List.of(0.0));
        double x = post;
        for (int span = 0; span < spans; span++) {
            int here = count / spans + (span < count % spans ? 1 : 0);
            for (int i = 0; i < here; i++) {
                centres.add(x + beside / 2 + (i + 0.5) * pitch);
            }
            x += here * pitch + beside;
            posts.add(x);
            x += post;
        }
        return new Spans(x, centres, posts);
    }
}
