package org.standwright.sheet;

/** A rectangle on a sheet from (x, y), in units of 1/3200 mm. */
public record Area(int x, int y, int length, int width) {
    public long size() {
        return (long) length * width;
    }

    /** Its far end, x. */
    public int endX() {
        return x + length;
    }

    /** Its far edge, y. */
    public int endY() {
        return y + width;
    }

    /** Whether the other one lies in it, edges included. */
    public boolean holds(Area other) {
        return other.x >= x && other.y >= y && other.endX() <= endX() && other.endY() <= endY();
    }

    public Area moved(int alongX, int alongY) {
        return new Area(x + alongX, y + alongY, length, width);
    }
}
