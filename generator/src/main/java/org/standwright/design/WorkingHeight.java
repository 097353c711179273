package org.standwright.design;

/** How the maker says where the machine's work surface has to be. */
public sealed interface WorkingHeight {
    /** Floor to the machine's work surface, mm. */
    double height();

    /** As measured or wished, mm. */
    record Given(double height) implements WorkingHeight {}

    /**
     * From the person's elbow: the middle of the range for the work.
     *
     * @param elbow height of the standing person's elbow, without shoes, mm
     * @param shoes height that they add, mm
     */
    record Elbow(double elbow, double shoes, Work work) implements WorkingHeight {
        @Override
        public double height() {
            return elbow + shoes + (work.lowest(0) + work.highest(0)) / 2;
        }
    }

    /**
     * Level with a surface beside it, or below that.
     *
     * @param surface what it is: 'bench', 'table saw'
     * @param surfaceHeight of that surface above the floor, mm
     * @param below how far below that surface, mm; 0 for level
     * @param fall of the floor over the stand's plan, measured, mm
     */
    record Beside(String surface, double surfaceHeight, double below, double fall) implements WorkingHeight {
        @Override
        public double height() {
            return surfaceHeight - below;
        }
    }
}
