package org.standwright.packet;

import java.util.List;
import java.util.stream.Collectors;
import org.standwright.packet.page.Flow;
import org.standwright.packet.page.Mark;
import org.standwright.packet.words.NumberedSetUp;
import org.standwright.packet.words.SawWords;
import org.standwright.sheet.MaterialPlan;
import org.standwright.sheet.PlacedPiece;
import org.standwright.sheet.PlacedPiece.Parting;
import org.standwright.sheet.SetUp.Made;
import org.standwright.sheet.SheetUnit;
import org.standwright.unit.Units;

/** What to watch out for in the set-ups of one material in one stage. */
record StageWarnings(MaterialPlan plan, List<NumberedSetUp> setUps) {
    void print(Contents<?> contents, Flow flow) {
        shortCuts(contents, flow);
        blanks(contents.units(), flow);
    }

    private List<Made> cuts() {
        return setUps.stream().flatMap(setUp -> setUp.setUp().cuts().stream()).toList();
    }

    /** What is too short along the fence to be pushed safely. */
    private void shortCuts(Contents<?> contents, Flow flow) {
        var cuts = cuts().stream().map(Made::cut).toList();
        var found = plan.shortCuts(contents.plan().saw()).stream()
                .filter(cut -> cuts.contains(cut.cut()))
                .toList();
        if (!found.isEmpty()) {
            var numbers = found.stream().map(cut -> cut.cut().number()).sorted().toList();
            var parts = found.stream()
                    .flatMap(cut -> cut.parts().stream())
                    .distinct()
                    .collect(Collectors.joining(", "));
            flow.paragraph("Caution, " + plan.material().name() + ", " + (numbers.size() == 1 ? "cut " : "cuts ")
                    + SawWords.runs(numbers) + " (" + parts + "): what is pushed lies along the fence for less than "
                    + contents.units().length(contents.plan().saw().smallestPiece())
                    + ", the least for this saw. Clamp it in a sled, or cut it by hand.");
        }
    }

    /** What leaves the sheet whole and becomes several pieces on the bench. */
    private void blanks(Units units, Flow flow) {
        cuts().stream()
                .flatMap(made -> made.frees().stream())
                .filter(piece -> piece.parting() == Parting.LATER)
                .map(piece -> blank(piece, units))
                .distinct()
                .forEach(words -> flow.item(Mark.BOX_ONLY, words));
    }

    private String blank(PlacedPiece blank, Units units) {
        var size = units.bareLength(SheetUnit.mm(blank.area().length())) + " × "
                + units.bareLength(SheetUnit.mm(blank.area().width()));
        return "Blank " + blank.label() + " of " + plan.material().name() + ", " + size + ": "
                + "machine it whole, then part it into its pieces with the saw's sled or by hand.";
    }
}
