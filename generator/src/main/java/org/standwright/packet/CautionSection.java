package org.standwright.packet;

import org.standwright.check.Cautions;
import org.standwright.design.built.Furniture;
import org.standwright.packet.page.Flow;
import org.standwright.packet.page.Mark;

/** Printed with everything, whatever its findings. */
final class CautionSection implements Section<Furniture> {
    @Override
    public void print(Contents<? extends Furniture> contents, Flow flow) {
        flow.freshPage();
        flow.heading("Cautions");
        Cautions.of(contents.furniture()).forEach(caution -> flow.item(Mark.BOX_ONLY, caution.words()));
    }
}
