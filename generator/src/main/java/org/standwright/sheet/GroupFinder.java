package org.standwright.sheet;

import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.standwright.cutlist.Together;
import org.standwright.cutlist.Together.Kind;

/**
 * Finds the pieces of one material that are to stay together: each group its own pieces, so that groups with labels in
 * common are shared out by trial.
 *
 * @param <P> a piece on its board
 */
public final class GroupFinder<P> {
    /** The pieces that a group may have. */
    public interface Choices<P> {
        /** How many there are to try. */
        int count(Together group);

        /**
         * The pieces of one of them; none where it does not hold the group.
         *
         * @param used what other groups have
         */
        List<P> take(Together group, int choice, Set<P> used);
    }

    private final List<Together> groups;
    private final Choices<P> choices;
    private final Set<P> used = new HashSet<>();
    private int furthest;

    private GroupFinder(List<Together> groups, Choices<P> choices) {
        // what may lie anywhere on a board comes last
        this.groups = groups.stream()
                .sorted(Comparator.comparing((Together group) -> group.kind() == Kind.ONE_SHEET))
                .toList();
        this.choices = choices;
    }

    /** The first group that finds no place, with all before it in theirs. */
    public static <P> Optional<Together> homeless(List<Together> groups, Choices<P> choices) {
        var finder = new GroupFinder<>(groups, choices);
        return finder.find(0, 0) ? Optional.empty() : Optional.of(finder.groups.get(finder.furthest));
    }

    /** @param from groups that are equal take their choices in order */
    private boolean find(int index, int from) {
        if (index == groups.size()) {
            return true;
        }
        furthest = Math.max(furthest, index);
        var group = groups.get(index);
        for (int choice = from; choice < choices.count(group); choice++) {
            var taken = choices.take(group, choice, used);
            if (!taken.isEmpty()) {
                used.addAll(taken);
                boolean sameNext =
                        index + 1 < groups.size() && groups.get(index + 1).equals(group);
                if (find(index + 1, sameNext ? choice : 0)) {
                    return true;
                }
                taken.forEach(used::remove);
            }
        }
        return false;
    }
}
