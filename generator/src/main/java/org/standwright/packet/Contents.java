package org.standwright.packet;

import java.util.List;
import java.util.Optional;
import org.standwright.advice.Advice;
import org.standwright.check.Finding;
import org.standwright.cutlist.CutList;
import org.standwright.design.Design;
import org.standwright.design.built.Furniture;
import org.standwright.packet.words.ExactLength;
import org.standwright.sheet.SheetPlan;
import org.standwright.unit.Units;

/**
 * All that a packet is printed from.
 *
 * @param <F> kind of furniture that it is about
 */
record Contents<F extends Furniture>(
        F furniture,
        CutList cutList,
        SheetPlan plan,
        List<Finding> findings,
        Optional<Advice> savings,
        List<MassLine> masses) {
    Design design() {
        return furniture.design();
    }

    Units units() {
        return design().unit();
    }

    /** A length in the maker's units, said with its millimetres where an inch fraction would hide some. */
    String exact(double mm) {
        return ExactLength.of(mm, units());
    }
}
