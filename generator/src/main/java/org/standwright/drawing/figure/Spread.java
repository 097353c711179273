package org.standwright.drawing.figure;

import java.util.ArrayList;
import java.util.List;

/** Pushes labels along a line apart until none overlap, each group of them as near to its places as it can be. */
public final class Spread {
    /** Labels that touch and therefore move together. */
    private record Cluster(double sumOfStarts, int count, double length) {
        double start() {
            return sumOfStarts / count;
        }

        /** With {@code next} set right behind it. */
        Cluster joined(Cluster next) {
            double starts = sumOfStarts + next.sumOfStarts - next.count * length;
            return new Cluster(starts, count + next.count, length + next.length);
        }
    }

    private Spread() {}

    /**
     * @param centres wished for, rising
     * @param lengths of the labels along the line, with the space that each needs around it
     * @return centres of labels that do not overlap, in the same order
     */
    public static List<Double> apart(List<Double> centres, List<Double> lengths) {
        var clusters = new ArrayList<Cluster>();
        for (int i = 0; i < centres.size(); i++) {
            var cluster = new Cluster(centres.get(i) - lengths.get(i) / 2, 1, lengths.get(i));
            while (!clusters.isEmpty() && overlap(clusters.get(clusters.size() - 1), cluster)) {
                cluster = clusters.remove(clusters.size() - 1).joined(cluster);
            }
            clusters.add(cluster);
        }
        var placed = new ArrayList<Double>();
        for (var cluster : clusters) {
            double at = cluster.start();
            for (int i = 0; i < cluster.count(); i++) {
                double length = lengths.get(placed.size());
                placed.add(at + length / 2);
                at += length;
            }
        }
        return List.copyOf(placed);
    }

    private static boolean overlap(Cluster before, Cluster after) {
        return before.start() + before.length() > after.start();
    }
}
