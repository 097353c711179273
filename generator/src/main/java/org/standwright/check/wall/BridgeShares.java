package org.standwright.check.wall;

import java.util.List;
import java.util.stream.IntStream;
import org.standwright.geom.Interval;

/**
 * How strips of one row share a holder that bridges them: each gets the larger of its share by the length that the load lies
 * on and of its share by the lever rule on the middles of the contacts, between the two next to the centre of mass. So the
 * shares may sum to more than 1 (own derivation, on the safe side).
 *
 * @param contacts of the hanger with the strips, from the left, mm
 * @param loaded where on the hanger the load counts as spread evenly, mm
 * @param centre of mass along the wall, mm
 */
record BridgeShares(List<Interval> contacts, Interval loaded, double centre) {

    /** One for each contact. */
    List<Double> all() {
        double[] lever = byLever();
        double whole = contacts.stream().mapToDouble(loaded::overlap).sum();
        return IntStream.range(0, contacts.size())
                .mapToObj(i -> Math.max(lever[i], whole > 0 ? loaded.overlap(contacts.get(i)) / whole : 0))
                .toList();
    }

    private double[] byLever() {
        double[] shares = new double[contacts.size()];
        int right = (int)
                contacts.stream().filter(contact -> contact.middle() < centre).count();
        if (right == 0 || right == shares.length) {
            shares[Math.max(0, right - 1)] = 1;
            return shares;
        }
        double from = contacts.get(right - 1).middle();
        shares[right] = (centre - from) / (contacts.get(right).middle() - from);
        shares[right - 1] = 1 - shares[right];
        return shares;
    }
}
