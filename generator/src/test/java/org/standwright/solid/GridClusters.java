package org.standwright.solid;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.locationtech.jts.geom.Envelope;

/** Things sorted into clusters whose surrounding rectangles lie apart. */
final class GridClusters {
    private record Cluster<T>(List<T> members, Envelope around) {}

    private GridClusters() {}

    static <T> List<List<T>> of(List<T> things, Function<T, Envelope> around) {
        var clusters = new ArrayList<Cluster<T>>();
        for (var thing : things) {
            var merged = new Cluster<T>(new ArrayList<>(List.of(thing)), new Envelope(around.apply(thing)));
            // what has grown may touch what it didn't touch before
            while (clusters.removeIf(cluster -> absorbed(cluster, merged))) {
                continue;
            }
            clusters.add(merged);
        }
        return clusters.stream().map(Cluster::members).toList();
    }

    private static <T> boolean absorbed(Cluster<T> cluster, Cluster<T> into) {
        if (!cluster.around.intersects(into.around)) {
            return false;
        }
        into.members.addAll(cluster.members);
        into.around.expandToInclude(cluster.around);
        return true;
    }
}
