package org.standwright.sheet;

/** A rectangle on a sheet from (x, y), in units of 1/3200 mm. */
public record Area(int x, int y, int length, int width) {
    public long size() {
        return (long) length * width;
    }
}
