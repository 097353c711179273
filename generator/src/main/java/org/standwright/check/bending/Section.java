package org.standwright.check.bending;

import java.util.ArrayList;
import java.util.List;
import org.standwright.geom.Require;

/**
 * The section of a beam whose rectangles bend as one: glued layers, or a shelf with a lipping. Plane sections stay plane;
 * each rectangle counts with its own modulus (transformed section).
 *
 * <p>E I = Σ Eᵢ (bᵢ hᵢ³/12 + bᵢ hᵢ dᵢ²), d from the axis at Σ Eᵢ Aᵢ zᵢ / Σ Eᵢ Aᵢ (parallel axis theorem). Layers that can slide
 * on each other are separate sections, whose stiffnesses add: {@link #loose}.
 */
public record Section(List<Rectangle> parts) {
    /**
     * @param width b, mm
     * @param bottom height of its lower edge, mm
     * @param height h, mm
     * @param modulus E along the beam, N/mm²
     */
    public record Rectangle(double width, double bottom, double height, double modulus) {
        public Rectangle {
            Require.positive("width", width, "section");
            Require.positive("height", height, "section");
            Require.positive("modulus", modulus, "section");
        }

        private double middle() {
            return bottom + height / 2;
        }

        private double stretch() {
            return modulus * width * height;
        }

        private double stiffness(double axis) {
            double away = middle() - axis;
            return stretch() * (height * height / 12 + away * away);
        }

        private double farthest(double axis) {
            return Math.max(Math.abs(bottom - axis), Math.abs(bottom + height - axis));
        }
    }

    public Section {
        parts = List.copyOf(parts);
        if (parts.isEmpty()) {
            throw new IllegalArgumentException("a section has no parts; give it a rectangle.");
        }
    }

    /** One board. */
    public static Section plank(double width, double thickness, double modulus) {
        return new Section(List.of(new Rectangle(width, 0, thickness, modulus)));
    }

    /** This, with another glued on top. */
    public Section glued(Section upper) {
        double top = parts.stream()
                .mapToDouble(part -> part.bottom() + part.height())
                .max()
                .orElseThrow();
        var all = new ArrayList<>(parts);
        upper.parts()
                .forEach(part ->
                        all.add(new Rectangle(part.width(), top + part.bottom(), part.height(), part.modulus())));
        return new Section(all);
    }

    /**
     * A board with a lipping before its front edge, upper edges flush.
     *
     * @param board of the board without its lipping
     * @param thickness that the lipping adds to the board's width, mm
     * @param height of the lipping, mm; more than the board's where it hangs below
     * @param modulus of the lipping along the board, N/mm²
     */
    public static Section lipped(Rectangle board, double thickness, double height, double modulus) {
        double top = board.bottom() + board.height();
        return new Section(List.of(board, new Rectangle(thickness, top - height, height, modulus)));
    }

    /** E I of sections that slide on each other but bend together, N·mm². */
    public static double loose(List<Section> sections) {
        return sections.stream().mapToDouble(Section::stiffness).sum();
    }

    /** Height of the axis about which it bends, mm. */
    public double axis() {
        double stretch = 0;
        double moment = 0;
        for (var part : parts) {
            stretch += part.stretch();
            moment += part.stretch() * part.middle();
        }
        return moment / stretch;
    }

    /** E I, N·mm². */
    public double stiffness() {
        double axis = axis();
        return parts.stream().mapToDouble(part -> part.stiffness(axis)).sum();
    }

    /** Greatest bending stress under a moment, N/mm²: E M z / (E I). */
    public double stress(double moment) {
        double axis = axis();
        double perStrain = parts.stream()
                .mapToDouble(part -> part.modulus() * part.farthest(axis))
                .max()
                .orElseThrow();
        return moment * perStrain / stiffness();
    }
}
