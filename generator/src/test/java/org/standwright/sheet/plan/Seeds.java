package org.standwright.sheet.plan;

import java.util.stream.LongStream;

/** How many random cases a test tries: few in every build, many where {@code standwright.random} is 'full'. */
public final class Seeds {
    private Seeds() {}

    public static LongStream fewOrMany(int few, int many) {
        boolean full = "full".equals(System.getProperty("standwright.random"));
        return LongStream.range(0, full ? many : few);
    }
}
