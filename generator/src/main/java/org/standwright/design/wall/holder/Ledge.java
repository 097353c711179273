package org.standwright.design.wall.holder;

import java.util.ArrayList;
import java.util.List;
import org.standwright.assembly.PlacedPart;
import org.standwright.part.Channel;
import org.standwright.part.Face;
import org.standwright.part.Feature;
import org.standwright.part.Part;

/**
 * A board before the back, its upper face level with the high edge of the strip that it hangs on: its rear edge is glued
 * into a dado of the back, and it lies glued on brackets.
 *
 * @param depth of the board before the back's face, mm
 * @param posts left faces of the brackets
 * @param front how far anything stands out before the board, mm
 */
record Ledge(HolderFrame frame, double width, double depth, List<Double> posts, double front) {
    static final String GLUED = "hanger on its back, board and brackets in dados of the back";
    /** Brackets stay behind the board's front edge: so much of its depth they take. */
    private static final double BRACKET = 0.9;
    /** Least height of a bracket, mm; common practice, no source. */
    private static final double LEAST_BRACKET = 60;
    /** Height of a bracket's front end, mm; common practice, no source. */
    private static final double NOSE = 15;

    Ledge {
        posts = List.copyOf(posts);
    }

    /** How far the front of all stands from the wall, mm. */
    double reach() {
        return -frame.face() + depth + front;
    }

    double bottom() {
        return frame.bottom(reach(), frame.board() + LEAST_BRACKET);
    }

    List<Feature> inBack() {
        double y = -frame.board() - bottom();
        var features = new ArrayList<Feature>();
        features.add(Channel.along(
                Face.SHOW, y, y + frame.board() + frame.design().making().fit(), width, frame.housing()));
        features.addAll(brackets().dados());
        return features;
    }

    /** The board first, then its brackets; its features are in its own frame, y from its front edge. */
    List<PlacedPart> boards(String name, List<? extends Feature> features) {
        var board =
                Part.blank(name, frame.sheet(), width, depth + frame.housing()).with(features);
        var parts = new ArrayList<PlacedPart>();
        parts.add(frame.lay().lying("board", board, 0, frame.face() - depth, -frame.board()));
        parts.addAll(brackets().boards());
        return parts;
    }

    private Posts brackets() {
        return new Posts(frame, width, posts, BRACKET * depth, bottom(), -frame.board(), NOSE);
    }
}
