package org.standwright;

/**
 * Where fronts end: inset ones a gap within their opening; overlay ones over the whole of the carcass's own panels and
 * half of one between two openings, less a gap at the carcass's ends and half a gap elsewhere.
 */
record ReportedReach(Report report) {
    /** From the opening's edge to the front's, outwards, mm. */
    double upright(boolean own) {
        double side = report.isInset() ? report.gap() : report.gap() / 2;
        return over(own) - side;
    }

    double level(boolean own) {
        double end = report.isInset() || own ? report.gap() : report.gap() / 2;
        return over(own) - end;
    }

    Area fronts(Area opening, Panels panels) {
        return new Area(
                opening.x0() - upright(panels.left()),
                opening.z0() - level(panels.lower()),
                opening.x1() + upright(panels.right()),
                opening.z1() + level(panels.upper()));
    }

    /** Height of an opening whose fronts, with their gaps, are so high together. */
    double openingBehind(double fronts, Panels panels) {
        return fronts - level(panels.lower()) - level(panels.upper());
    }

    private double over(boolean own) {
        return report.isInset() ? 0 : own ? report.panel() : report.panel() / 2;
    }
}
