package org.standwright.sheet.sawing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.standwright.part.Edge;

/**
 * Decides where the saw reaches what a hand-held one left rough. What stands out over a goal comes off at the first
 * panel that is small enough; where none will be, the hand-held cut has to be true itself.
 */
final class Reach {
    private static final List<Edge> ORDER = List.of(Edge.Y0, Edge.X0, Edge.Y1, Edge.X1);

    private final Blades blades;
    private final Map<Goal, Map<Rims, Boolean>> known = new IdentityHashMap<>();

    Reach(Blades blades) {
        this.blades = blades;
    }

    boolean isByHand(Goal.Strips strips) {
        return !blades.reach(strips.direction(), strips.along());
    }

    /** The edge that the saw can and should true next, before the panel is divided. */
    Optional<Edge> next(Goal goal, Rims rims) {
        var open = ORDER.stream().filter(edge -> isDue(edge, goal, rims)).toList();
        return open.stream()
                .filter(edge -> !rims.at(edge.opposite()).isRough())
                .findFirst()
                .or(() -> open.stream().findFirst());
    }

    private boolean isDue(Edge edge, Goal goal, Rims rims) {
        var direction = Rims.along(edge);
        if (rims.at(edge).over() == 0 || !blades.reach(direction, rims.along(goal, direction))) {
            return false;
        }
        return !rims.at(edge).isRough() || goal.reaches(edge) || isFence(edge, rims) || isInTheWay(edge, goal, rims);
    }

    /** Whether the other edge has to be trued along this one. */
    private static boolean isFence(Edge edge, Rims rims) {
        var other = rims.at(edge.opposite());
        return other.over() > 0 && !other.isRough();
    }

    /** Whether it is the fence's edge, or makes the cuts too long. */
    private boolean isInTheWay(Edge edge, Goal goal, Rims rims) {
        if (!(goal instanceof Goal.Strips strips) || isByHand(strips)) {
            return false;
        }
        return edge == strips.low()
                || Rims.along(edge) != strips.direction()
                        && !blades.reach(strips.direction(), rims.along(goal, strips.direction()));
    }

    /** Whether every piece comes out at its size. */
    boolean isTrue(Goal goal, Rims rims) {
        if (goal instanceof Goal.Left) {
            return true;
        }
        var answers = known.computeIfAbsent(goal, none -> new HashMap<>());
        var answer = answers.get(rims);
        if (answer == null) {
            answer = find(goal, rims);
            answers.put(rims, answer);
        }
        return answer;
    }

    private boolean find(Goal goal, Rims rims) {
        var left = rims;
        for (var edge = next(goal, left); edge.isPresent(); edge = next(goal, left)) {
            left = left.with(edge.get(), Rim.SAWN);
        }
        if (!(goal instanceof Goal.Strips strips)) {
            return left.areClean();
        }
        return (isByHand(strips) || blades.reach(strips.direction(), left.along(strips, strips.direction())))
                && firstFalse(strips, left, seams(strips, left)) < 0;
    }

    /** What is done with each gap. */
    List<Seam> seams(Goal.Strips strips, Rims rims) {
        return isByHand(strips) ? handSeams(strips, rims) : sawnSeams(strips, rims);
    }

    private List<Seam> sawnSeams(Goal.Strips strips, Rims rims) {
        var seams = new ArrayList<Seam>();
        for (int i = 0; i + 1 < strips.nodes().size(); i++) {
            seams.add(Seam.sawn(strips.gap(), room(strips, rims, i), blades.kerf()));
        }
        return seams;
    }

    /** From a strip's edge to the next strip, or to the panel's far edge where nobody asked for what is there. */
    private static int room(Goal.Strips strips, Rims rims, int i) {
        var after = strips.nodes().get(i + 1);
        boolean last = i + 2 == strips.nodes().size();
        return last && after instanceof Goal.Left
                ? strips.gap()
                        + after.extent(strips.direction())
                        + rims.at(strips.high()).over()
                : strips.gap();
    }

    /** Of a split by hand: allowances wherever the saw gets at them later. */
    private List<Seam> handSeams(Goal.Strips strips, Rims rims) {
        int count = strips.nodes().size();
        // whether a node keeps an allowance below, above
        var below = new boolean[count];
        var above = new boolean[count];
        // what a thin blade leaves of a gap stays on the upper strip even without an allowance
        Arrays.fill(below, true);
        Arrays.fill(above, blades.allowance() > 0);
        while (true) {
            var seams = handSeams(strips, rims, below, above);
            int bad = firstFalse(strips, rims, seams);
            if (bad < 0 || !below[bad] && !above[bad]) {
                return seams;
            }
            giveUpOne(strips, rims, below, above, bad);
        }
    }

    /** Takes the one allowance that is enough, or both. */
    private void giveUpOne(Goal.Strips strips, Rims rims, boolean[] below, boolean[] above, int bad) {
        boolean wasBelow = below[bad];
        boolean wasAbove = above[bad];
        below[bad] = false;
        if (wasBelow && wasAbove && !isTrueAt(bad, strips, rims, below, above)) {
            below[bad] = true;
            above[bad] = false;
            if (!isTrueAt(bad, strips, rims, below, above)) {
                below[bad] = false;
            }
        } else if (!wasBelow) {
            above[bad] = false;
        }
    }

    private boolean isTrueAt(int node, Goal.Strips strips, Rims rims, boolean[] below, boolean[] above) {
        return isTrue(
                strips.nodes().get(node),
                rims(strips, rims, handSeams(strips, rims, below, above)).get(node));
    }

    private int firstFalse(Goal.Strips strips, Rims rims, List<Seam> seams) {
        var each = rims(strips, rims, seams);
        for (int i = 0; i < each.size(); i++) {
            if (!isTrue(strips.nodes().get(i), each.get(i))) {
                return i;
            }
        }
        return -1;
    }

    private List<Seam> handSeams(Goal.Strips strips, Rims rims, boolean[] below, boolean[] above) {
        var seams = new ArrayList<Seam>();
        for (int i = 0; i + 1 < strips.nodes().size(); i++) {
            var after = strips.nodes().get(i + 1);
            if (i + 2 == strips.nodes().size() && after instanceof Goal.Left) {
                seams.add(Seam.beforeLeft(above[i], strips.gap(), room(strips, rims, i), blades));
            } else {
                seams.add(Seam.between(above[i], below[i + 1], strips.gap(), blades));
            }
        }
        return seams;
    }

    /** The rims of each strip. */
    List<Rims> rims(Goal.Strips strips, Rims rims, List<Seam> seams) {
        var each = new ArrayList<Rims>();
        for (int i = 0; i <= seams.size(); i++) {
            var node = strips.nodes().get(i);
            var own = rims;
            if (i > 0) {
                own = own.with(
                        strips.low(),
                        rim(strips, node, strips.low(), seams.get(i - 1).overAfter()));
            }
            if (i < seams.size()) {
                own = own.with(
                        strips.high(),
                        rim(strips, node, strips.high(), seams.get(i).overBefore()));
            }
            each.add(own);
        }
        return each;
    }

    private Rim rim(Goal.Strips strips, Goal node, Edge edge, int over) {
        boolean isTrue = !isByHand(strips) || blades.allowance() == 0 || over == 0 && node.reaches(edge);
        return new Rim(over, isTrue ? Rim.Kind.SAWN : Rim.Kind.ROUGH);
    }
}
