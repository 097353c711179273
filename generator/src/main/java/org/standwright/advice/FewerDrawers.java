package org.standwright.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.standwright.design.Bay;
import org.standwright.design.Content;
import org.standwright.design.Redesign;
import org.standwright.design.StandDesign;

/**
 * Drawers left out of one part of a bay. Those with fronts that share the height become higher; of given fronts the lowest
 * takes the height of those that go, the highest first.
 *
 * @param place of the part: bay and content, and again within a divided part, all counted from 0
 * @param by how many
 */
record FewerDrawers(List<Integer> place, int by) implements Change {
    FewerDrawers {
        place = List.copyOf(place);
    }

    /** Parts of bays that have so many drawers or more, in the order of the design. */
    static List<List<Integer>> places(StandDesign design, int drawers) {
        return places(design.bays(), List.of(), drawers);
    }

    private static List<List<Integer>> places(List<Bay> bays, List<Integer> within, int drawers) {
        var found = new ArrayList<List<Integer>>();
        for (int bay = 0; bay < bays.size(); bay++) {
            var contents = bays.get(bay).contents();
            for (int content = 0; content < contents.size(); content++) {
                var place = new ArrayList<>(within);
                place.addAll(List.of(bay, content));
                if (contents.get(content) instanceof Content.Divided divided) {
                    found.addAll(places(divided.bays(), place, drawers));
                } else if (count(contents.get(content)).orElse(0) >= drawers) {
                    found.add(place);
                }
            }
        }
        return found;
    }

    private static OptionalInt count(Content content) {
        if (content instanceof Content.GivenDrawers given) {
            return OptionalInt.of(given.fronts().size());
        } else if (content instanceof Content.EqualDrawers equal) {
            return OptionalInt.of(equal.count());
        }
        return content instanceof Content.GraduatedDrawers graduated
                ? OptionalInt.of(graduated.count())
                : OptionalInt.empty();
    }

    @Override
    public StandDesign in(StandDesign design) {
        return Redesign.of(design)
                .bays(bays(design.bays(), place, design.drawers().gap()))
                .done();
    }

    @Override
    public double size() {
        return by;
    }

    /** The bay is named as the design writes it: '2', within a divided part '2a'. */
    @Override
    public String words(StandDesign before) {
        var bay = new StringBuilder().append(place.get(0) + 1);
        IntStream.range(1, place.size() / 2).forEach(i -> bay.append((char) ('a' + place.get(2 * i))));
        return by + (by == 1 ? " drawer" : " drawers") + " fewer in bay " + bay;
    }

    private List<Bay> bays(List<Bay> bays, List<Integer> to, double gap) {
        var bay = bays.get(to.get(0));
        var contents = new ArrayList<>(bay.contents());
        var here = contents.get(to.get(1));
        contents.set(
                to.get(1),
                here instanceof Content.Divided divided
                        ? new Content.Divided(divided.height(), bays(divided.bays(), to.subList(2, to.size()), gap))
                        : fewer(here, gap));
        var changed = new ArrayList<>(bays);
        changed.set(to.get(0), new Bay(bay.width(), contents));
        return changed;
    }

    private Content fewer(Content content, double gap) {
        if (content instanceof Content.GivenDrawers given) {
            var gone = given.fronts().subList(0, by);
            var left = new ArrayList<>(given.fronts().subList(by, given.fronts().size()));
            double more = gone.stream().mapToDouble(front -> front + gap).sum();
            left.set(left.size() - 1, left.get(left.size() - 1) + more);
            return new Content.GivenDrawers(left);
        } else if (content instanceof Content.EqualDrawers equal) {
            return new Content.EqualDrawers(equal.count() - by, equal.least(), equal.most());
        }
        var graduated = (Content.GraduatedDrawers) content;
        return new Content.GraduatedDrawers(
                graduated.count() - by, graduated.ratio(), graduated.least(), graduated.most());
    }
}
