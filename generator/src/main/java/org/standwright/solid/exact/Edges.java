package org.standwright.solid.exact;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.standwright.solid.exact.ExactSolid.Edge;
import org.standwright.solid.exact.ExactSolid.Use;

/** Borders cut at corners: each piece is an edge, found from either of its two faces. */
final class Edges {
    private final Model model;
    private final Corners corners;
    private final List<Edge> edges = new ArrayList<>();
    private final Set<Integer> offenders = new HashSet<>();
    private final List<Set<Integer>> regions = new ArrayList<>();
    private boolean failed;
    /** By the first side of a piece: the number of its edge counted from 1, less than 0 against its direction. */
    private final int[] byFirstSide;

    Edges(Model model, Corners corners) {
        this.model = model;
        this.corners = corners;
        this.byFirstSide = new int[model.sides().count()];
    }

    /** The edges along a loop. */
    List<Use> along(int[] loop) {
        int start = 0;
        while (!corners.isCorner(model.sides().from(loop[start]))) {
            start++;
        }
        var uses = new ArrayList<Use>();
        for (int first = start; first < start + loop.length; ) {
            int past = first + 1;
            while (!corners.isCorner(model.sides().from(loop[past % loop.length]))) {
                past++;
            }
            uses.add(use(piece(loop, first, past)));
            first = past;
        }
        return uses;
    }

    private static int[] piece(int[] loop, int first, int past) {
        var piece = new int[past - first];
        Arrays.setAll(piece, i -> loop[(first + i) % loop.length]);
        return piece;
    }

    private Use use(int[] sides) {
        if (byFirstSide[sides[0]] == 0) {
            int from = model.sides().from(sides[0]);
            int to = model.sides().to(sides[sides.length - 1]);
            var curve = curve(sides, new Curves(model, sides, corners.place(from), corners.place(to)));
            edges.add(new Edge(corners.number(from), corners.number(to), curve.orElse(NONE)));
            regions.add(both(sides[0]));
            byFirstSide[model.sides().twin(sides[sides.length - 1])] = -edges.size();
            byFirstSide[sides[0]] = edges.size();
        }
        int number = byFirstSide[sides[0]];
        return new Use(Math.abs(number) - 1, number > 0);
    }

    /** The regions on either side, which are one along a seam. */
    private Set<Integer> both(int side) {
        return new HashSet<>(List.of(model.regions().left(side), model.regions().right(side)));
    }

    /** The regions that meet along an edge. */
    Set<Integer> regions(int edge) {
        return regions.get(edge);
    }

    /** In a solid that will not be. */
    private static final Curve NONE = new Curve.Spline(List.of(), List.of());

    private Optional<Curve> curve(int[] sides, Curves curves) {
        int left = model.regions().left(sides[0]);
        int right = model.regions().right(sides[0]);
        var one = model.surface(left);
        var other = model.surface(right);
        boolean straight = one.isEmpty() || other.isEmpty() || left == right;
        var curve = straight ? curves.line() : curves.between(one.get(), other.get());
        boolean bends = one.isEmpty() != other.isEmpty()
                && (model.round(left).isPresent() || model.round(right).isPresent());
        if (curve.isEmpty() || bends) {
            failed = true;
            offenders.addAll(Offenders.of(model, bends ? both(sides[0]) : around(sides)));
        }
        return curve;
    }

    /** The regions that meet at the two ends. */
    private Set<Integer> around(int[] sides) {
        var around = model.around(sides[0]);
        around.addAll(model.around(model.sides().twin(sides[sides.length - 1])));
        return around;
    }

    List<Edge> all() {
        return edges;
    }

    /** Whether an edge has no curve. */
    boolean failed() {
        return failed;
    }

    /** Regions that must go loose for want of a curve where they meet. */
    Set<Integer> offenders() {
        return offenders;
    }
}
