package org.standwright.check.making;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.standwright.geom.Grid;
import org.standwright.geom.Rect;
import org.standwright.part.Channel;
import org.standwright.part.Face;
import org.standwright.part.Feature;
import org.standwright.part.Part;
import org.standwright.part.Pocket;
import org.standwright.part.Run;

/**
 * What is cut into one face of a part, not through: a channel or a pocket.
 *
 * @param name for messages: 'groove', 'motor plate'
 * @param run of a channel; pockets have none
 */
record Cut(String name, Face face, Rect area, double depth, Optional<Run> run) {
    /** Wood beside a cut. */
    record Lip(String cut, double width) {}

    static List<Cut> of(Part part) {
        var cuts = new ArrayList<Cut>();
        for (Feature feature : part.features()) {
            if (feature instanceof Channel channel) {
                cuts.add(new Cut(
                        name(channel, part),
                        channel.face(),
                        channel.area(),
                        channel.depth(),
                        Optional.of(channel.run())));
            } else if (feature instanceof Pocket pocket && pocket.depth().isPresent()) {
                cuts.add(new Cut(
                        pocket.purpose(),
                        pocket.face(),
                        pocket.area(),
                        pocket.depth().getAsDouble(),
                        Optional.empty()));
            }
        }
        return cuts;
    }

    /** Whether both lie over one place of the board. */
    boolean meets(Cut other) {
        return Grid.less(Math.max(area.x0(), other.area.x0()), Math.min(area.x1(), other.area.x1()))
                && Grid.less(Math.max(area.y0(), other.area.y0()), Math.min(area.y1(), other.area.y1()));
    }

    /** What stands between a channel and the edges along it, where it is no rabbet. */
    Stream<Lip> lips(Part part) {
        return run.stream()
                .flatMap(along ->
                        widths(along, part).filter(width -> Grid.less(0, width)).boxed())
                .map(width -> new Lip(name, width));
    }

    private DoubleStream widths(Run along, Part part) {
        return along == Run.ALONG
                ? DoubleStream.of(area.y0(), part.width() - area.y1())
                : DoubleStream.of(area.x0(), part.length() - area.x1());
    }

    private static String name(Channel channel, Part part) {
        if (channel.isRabbet(part.length(), part.width())) {
            return "rabbet";
        }
        return channel.run() == Run.ALONG ? "groove" : "dado";
    }
}
