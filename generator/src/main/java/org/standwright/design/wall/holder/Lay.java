package org.standwright.design.wall.holder;

import org.standwright.assembly.PlacedPart;
import org.standwright.assembly.Placement;
import org.standwright.geom.Axis;
import org.standwright.geom.Vec3;
import org.standwright.part.Material;
import org.standwright.part.Part;

/** Boards at their places, labelled with the holder's name. */
record Lay(HolderFrame frame) {
    /** Upright along the wall, show face to the room: its grain to the right, its left lower corner at the rear given. */
    PlacedPart facing(String label, Part part, double x, double rear, double z) {
        return placed(label, part, Axis.X_PLUS, Axis.Z_PLUS, new Vec3(x, rear, z));
    }

    /** Flat, show face up: its grain to the right, its left front corner given. */
    PlacedPart lying(String label, Part part, double x, double front, double z) {
        return placed(label, part, Axis.X_PLUS, Axis.Y_PLUS, new Vec3(x, front, z));
    }

    /** Upright square to the wall, show face to the left: its grain out into the room, its left face at x. */
    PlacedPart standing(String label, Part part, double x, double rear, double z) {
        return placed(label, part, Axis.Y_MINUS, Axis.Z_PLUS, new Vec3(x + part.thickness(), rear, z));
    }

    /**
     * A flat board of a size along and square to the wall, show face up: its grain along the shorter one, unless only the
     * other way comes out of a sheet.
     */
    PlacedPart bottom(String label, String name, Material material, Vec3 corner, double width, double depth) {
        var along = Part.blank(name, material, width, depth);
        var square = Part.blank(name, material, depth, width);
        var room = new SheetRoom(frame);
        boolean turned = width > depth && (room.fits(square) || !room.fits(along));
        return turned
                ? placed(label, square, Axis.Y_PLUS, Axis.X_MINUS, new Vec3(corner.x() + width, corner.y(), corner.z()))
                : lying(label, along, corner.x(), corner.y(), corner.z());
    }

    PlacedPart placed(String label, Part part, Axis along, Axis across, Vec3 origin) {
        return new PlacedPart(frame.holder().name() + " " + label, part, new Placement(along, across, origin));
    }
}
