package org.standwright.check.wall.statics;

import java.util.List;

/**
 * The reactions of a strip's studs to a load of 1 spread evenly from one place to another, by the moments over the studs.
 *
 * <p>Over the first and the last these come from what overhangs. Cut at each stud, the strip has none over the others; in one
 * piece, the three-moment equation gives them: M₁ L₁ + 2 M₂ (L₁ + L₂) + M₃ L₂ = −6 (A₁ a₁/L₁ + A₂ b₂/L₂), in which an even
 * load w from p to q of a span L, measured from its far end, gives 6 A a/L = w (L² (q² − p²)/2 − (q⁴ − p⁴)/4) / L (Clapeyron;
 * from memory, and tested against deflections). Moments that hog are below 0.
 */
final class StripSpans {
    private final List<Double> studs;
    private final double from;
    private final double to;

    StripSpans(List<Double> studs, double from, double to) {
        this.studs = studs;
        this.from = from;
        this.to = to;
    }

    /** As if hinged at each stud: the lever rule between neighbours. */
    double[] cutAtStuds() {
        return reactions(ends());
    }

    /** Running over all of them. */
    double[] inOnePiece() {
        double[] moments = ends();
        int last = moments.length - 1;
        double[] factor = new double[moments.length];
        for (int i = 1; i < last; i++) {
            double left = span(i - 1);
            double right = span(i);
            double pivot = 2 * (left + right) - left * factor[i - 1];
            double known = i == last - 1 ? right * moments[last] : 0;
            moments[i] = (-towards(i - 1) - away(i) - known - left * moments[i - 1]) / pivot;
            factor[i] = right / pivot;
        }
        for (int i = last - 2; i > 0; i--) {
            moments[i] -= factor[i] * moments[i + 1];
        }
        return reactions(moments);
    }

    private double[] ends() {
        double[] moments = new double[studs.size()];
        double left = Math.max(0, Math.min(to, first()) - from);
        double right = Math.max(0, to - Math.max(from, last()));
        moments[0] = -left / (to - from) * (first() - (from + left / 2));
        if (studs.size() > 1) {
            moments[studs.size() - 1] = -right / (to - from) * (to - right / 2 - last());
        }
        return moments;
    }

    /** One stud alone gets all, wherever it lies. */
    private double[] reactions(double[] moments) {
        int count = studs.size();
        double[] reactions = new double[count];
        reactions[0] += Math.max(0, Math.min(to, first()) - from) / (to - from);
        reactions[count - 1] += Math.max(0, to - Math.max(from, last())) / (to - from);
        for (int i = 0; i + 1 < count; i++) {
            double load = (end(i) - begin(i)) / (to - from);
            double toRight = load * ((begin(i) + end(i)) / 2 - studs.get(i)) / span(i);
            double carried = (moments[i + 1] - moments[i]) / span(i);
            reactions[i] += load - toRight + carried;
            reactions[i + 1] += toRight - carried;
        }
        return reactions;
    }

    /** 6 A a/L of the span, for the moment over its right stud: distances from its left one. */
    private double towards(int i) {
        return area(begin(i) - studs.get(i), end(i) - studs.get(i), span(i));
    }

    /** The same for the moment over its left stud: distances from its right one. */
    private double away(int i) {
        return area(studs.get(i + 1) - end(i), studs.get(i + 1) - begin(i), span(i));
    }

    private double area(double p, double q, double length) {
        double squares = q * q - p * p;
        return squares * (length * length / 2 - (q * q + p * p) / 4) / length / (to - from);
    }

    private double begin(int i) {
        return Math.min(Math.max(from, studs.get(i)), studs.get(i + 1));
    }

    private double end(int i) {
        return Math.max(Math.min(to, studs.get(i + 1)), studs.get(i));
    }

    private double span(int i) {
        return studs.get(i + 1) - studs.get(i);
    }

    private double first() {
        return studs.get(0);
    }

    private double last() {
        return studs.get(studs.size() - 1);
    }
}
