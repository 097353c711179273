package org.standwright.design.wall;

import java.util.List;
import java.util.OptionalDouble;

/** What a wall is made of behind its surface. */
public sealed interface Framing {
    /** Thickness of the plasterboard or other covering that carries nothing, mm. */
    double covering();

    /** How far apart whatever takes a screw is, centre to centre, mm; empty where places are listed. */
    OptionalDouble spacing();

    /** Centre of the first place that takes a screw, from the wall's left end, mm. */
    double first();

    /** Centres of the places that take a screw, from the wall's left end, mm; empty where they are spaced evenly. */
    List<Double> positions();

    /**
     * Studs of sawn wood.
     *
     * @param width of a stud, across the wall, mm
     * @param gravity specific gravity of the wood, oven-dry
     */
    record WoodStuds(
            double covering, OptionalDouble spacing, double first, List<Double> positions, double width, double gravity)
            implements Framing {
        public WoodStuds {
            positions = List.copyOf(positions);
        }
    }

    /**
     * Studs of folded sheet steel, which take special screws or anchors by their makers' data.
     *
     * @param width of a stud's flange, mm
     */
    record SteelStuds(double covering, OptionalDouble spacing, double first, List<Double> positions, double width)
            implements Framing {
        public SteelStuds {
            positions = List.copyOf(positions);
        }
    }

    /**
     * Brick, block or concrete, which takes anchors by their makers' data wherever it is sound.
     *
     * @param anchor what is bought to hold a screw
     * @param drill diameter of the hole for it, mm
     * @param depth how far it reaches into the wall, mm
     */
    record Masonry(
            double covering,
            OptionalDouble spacing,
            double first,
            List<Double> positions,
            String anchor,
            double drill,
            double depth)
            implements Framing {
        public Masonry {
            positions = List.copyOf(positions);
        }
    }
}
