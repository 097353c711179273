package org.standwright.check.wall;

import java.util.function.DoublePredicate;

/** The largest number that will do, where all below it do and none beyond. */
final class Largest {
    /** Each step halves what is unsure: 60 reach the last digit of a double. */
    private static final int STEPS = 60;
    /** Nobody hangs a million times what hangs there. */
    static final double BEYOND_ALL = 1 << 20;

    private Largest() {}

    /** Of those from 0 up; 0 where that will not do, {@link #BEYOND_ALL} where all will. */
    static double of(DoublePredicate willDo) {
        double good = 0;
        double bad = 1;
        while (bad < BEYOND_ALL && willDo.test(bad)) {
            bad *= 2;
        }
        if (bad >= BEYOND_ALL || !willDo.test(0)) {
            return bad >= BEYOND_ALL ? BEYOND_ALL : 0;
        }
        for (int step = 0; step < STEPS; step++) {
            double middle = (good + bad) / 2;
            if (willDo.test(middle)) {
                good = middle;
            } else {
                bad = middle;
            }
        }
        return good;
    }
}
