package org.standwright.packet;

import java.util.List;
import java.util.stream.Stream;
import org.standwright.packet.words.Guide;
import org.standwright.packet.words.NumberedSetUp;
import org.standwright.part.Material;
import org.standwright.sheet.Cut;
import org.standwright.sheet.SetUp.Made;

/** What is said above a table of set-ups of one tool. */
final class CuttingAdvice {
    /** How a plan drawn show face up is read on a sheet that lies on its show face. */
    static final List<String> HAND_HELD = List.of(
            "Hand-held saw, good face down: mark the names of the sheet's edges first, good face up. Then turn it over "
                    + "its long edge, top to bottom: the ends left and right stay where they are; the lower edge is "
                    + "then on the far side, the upper one on the near side.",
            "Guide is the distance from the edge named to the near side of the kerf; the kerf lies on the far side of "
                    + "it. A straightedge is clamped at that distance less the distance from the edge of the saw's base "
                    + "to its blade where the base runs on the near side, plus that distance where it runs on the far "
                    + "side. A track whose lip marks the cut lies on the line itself.");

    private final Material material;
    private final List<Cut> cuts;

    private CuttingAdvice(Material material, List<Cut> cuts) {
        this.material = material;
        this.cuts = cuts;
    }

    /** @param run set-ups of one tool, one at least */
    static String of(Material material, List<NumberedSetUp> run, Contents<?> contents) {
        var cuts = run.stream()
                .flatMap(setUp -> setUp.setUp().cuts().stream())
                .map(Made::cut)
                .toList();
        var advice = new CuttingAdvice(material, cuts);
        return cuts.get(0).tool() == Cut.Tool.SAW ? advice.saw() : advice.handHeld(contents);
    }

    private String saw() {
        var sled = cuts.stream().anyMatch(cut -> Guide.of(cut) == Guide.SLED_AND_STOP)
                ? " 'sled': mitre gauge or sled, with a stop block clamped ahead of the blade; the fence is not the "
                        + "stop. What is too large for them is cut with the hand-held saw."
                : "";
        return "Saw: " + face() + score() + sled + " Beyond your fence's reach: strike a line and use the hand-held "
                + "saw, or measure from the other edge.";
    }

    private String handHeld(Contents<?> contents) {
        var allowance = contents.plan()
                .saw()
                .breakDown()
                .map(saw -> " Its cuts leave " + contents.exact(saw.allowance()) + " that is recut at the saw.")
                .orElse("");
        return "Hand-held saw along a track or a straightedge: " + face() + score() + allowance;
    }

    private String face() {
        return cuts.get(0).goodFaceUp() ? "good face up." : "good face down.";
    }

    private String score() {
        return Stream.of(" Score the line of each crosscut with a knife first.")
                .filter(words -> cuts.stream().anyMatch(cut -> cut.isScored(material)))
                .findFirst()
                .orElse("");
    }
}
