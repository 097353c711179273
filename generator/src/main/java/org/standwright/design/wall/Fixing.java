package org.standwright.design.wall;

import java.util.OptionalDouble;
import org.standwright.design.kit.Screw;
import org.standwright.geom.Require;

/**
 * How strips are held to the wall.
 *
 * @param length of the screws, mm; without one the longest that goes no farther into a stud than cables may lie
 * @param perStud one screw at each stud, or two one above the other
 * @param washer diameter of a washer head in mm, sunk in; countersunk without one
 */
public record Fixing(Screw screw, OptionalDouble length, int perStud, OptionalDouble washer) {
    public Fixing {
        length.ifPresent(given -> Require.positive("length of wall screws", given, screw.name()));
        washer.ifPresent(given -> Require.positive("washer head", given, screw.name()));
        if (perStud != 1 && perStud != 2) {
            throw new IllegalArgumentException(
                    "screws at each stud are " + perStud + ", but must be 1 or 2; two suit tall strips.");
        }
    }

    /** The screw's name, without a countersunk head where a washer takes its place: 'wood screw 5.0 mm'. */
    public String screwName() {
        var name = screw.name();
        var head = "countersunk ";
        boolean named = name.regionMatches(true, 0, head, 0, head.length());
        return washer.isPresent() && named ? name.substring(head.length()) : name;
    }
}
