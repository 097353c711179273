package org.standwright.sheet.lane;

/**
 * Worth of a rest by its area: area^1.2, so that one large rest beats two small ones. Read off a table, since powers
 * are slow and need not agree to the last bit on every machine.
 */
public final class Values {
    private static final double POWER = 1.2;
    private static final int STEPS = 1 << 14;

    private final double[] table = new double[STEPS + 2];
    private final double perStep;

    /** @param most area of the largest board, units² */
    public Values(long most) {
        this.perStep = most <= STEPS ? 1 : (double) STEPS / most;
        for (int i = 0; i < table.length; i++) {
            table[i] = StrictMath.pow(i, POWER);
        }
    }

    public double of(long length, long width) {
        double place = length * width * perStep;
        int step = (int) place;
        double low = table[step];
        return low + (place - step) * (table[step + 1] - low);
    }
}
