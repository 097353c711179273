package org.standwright.design.wall;

/** Where rows of cleats run; every height is that of a strip's high edge above the floor, mm. */
public sealed interface Rows {
    /** No row is lower. */
    double lowest();

    /** No row is higher. */
    double highest();

    /** At one spacing from the lowest up. */
    record Fixed(double lowest, double highest, double spacing) implements Rows {}

    /** At both limits and evenly between, as near to {@code about} apart as that goes. */
    record Even(double lowest, double highest, double about) implements Rows {}

    /** {@code near} apart between the person's elbow and eyes, {@code far} apart below and above. */
    record Reach(double lowest, double highest, double near, double far) implements Rows {}

    /** As close as a hanger still gets in between, from the lowest up. */
    record Densest(double lowest, double highest) implements Rows {}
}
