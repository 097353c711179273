package org.standwright.packet;

import org.standwright.design.built.Stand;
import org.standwright.drawing.figure.StandViews;
import org.standwright.packet.page.Flow;

/** Front, side and top on a page of their own. */
final class ViewSection implements Section<Stand> {
    private static final double HEADING = 14;

    @Override
    public void print(Contents<? extends Stand> contents, Flow flow) {
        flow.freshPage();
        flow.heading("Views");
        flow.figure(StandViews.of(contents.furniture(), flow.width(), flow.height() - HEADING, flow.measure()));
        if (OpeningTable.isNeeded(contents)) {
            flow.lead("Fronts, and openings without any, from left to right and from top to bottom:");
            flow.table(OpeningTable.of(contents));
        }
    }
}
