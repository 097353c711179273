package org.standwright.design.wall.place;

/**
 * A holder at its place.
 *
 * @param name in quotes
 */
record Hung(ToHang holder, Place place, String name) {
    Hung(ToHang holder, Place place) {
        this(holder, place, "'" + holder.name() + "'");
    }

    int at() {
        return holder.at();
    }

    Hung at(Place other) {
        return new Hung(holder, other, name);
    }
}
