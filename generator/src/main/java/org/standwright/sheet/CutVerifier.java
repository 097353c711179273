package org.standwright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import org.standwright.design.kit.Saw;
import org.standwright.part.Edge;
import org.standwright.sheet.Cut.Direction;
import org.standwright.sheet.Cut.Purpose;
import org.standwright.sheet.Cut.Tool;
import org.standwright.sheet.CutReplay.Sawn;
import org.standwright.sheet.Panel.Origin;

/** Judges the cuts of one board as they are made: blade, reach, fence, and what each is for. */
final class CutVerifier {
    private final PlannedSheet sheet;
    private final Saw saw;
    private final List<String> faults = new ArrayList<>();

    private CutVerifier(PlannedSheet sheet, Saw saw) {
        this.sheet = sheet;
        this.saw = saw;
    }

    static List<String> faults(PlannedSheet sheet, CutReplay replay, Saw saw) {
        var verifier = new CutVerifier(sheet, saw);
        for (var sawn : replay.sawn()) {
            verifier.checkBlade(sawn);
            verifier.checkReach(sawn);
            verifier.checkFence(sawn);
            verifier.checkPurpose(sawn);
        }
        return verifier.faults;
    }

    private void fault(Sawn sawn, String what) {
        faults.add("cut " + sawn.cut().number() + " " + what);
    }

    private void checkBlade(Sawn sawn) {
        var cut = sawn.cut();
        var hand = saw.breakDown();
        if (cut.tool() == Tool.BREAK_DOWN_SAW && hand.isEmpty()) {
            fault(sawn, "is by a break-down saw, but there is none.");
            return;
        }
        int blade = SheetUnit.up(
                cut.tool() == Tool.SAW ? saw.kerf() : hand.orElseThrow().kerf());
        boolean runsOff = sawn.halves().stream().anyMatch(half -> half.area().size() == 0);
        if (cut.across() != blade && !(runsOff && cut.across() < blade)) {
            fault(sawn, "is " + cut.across() + " units wide, but the blade " + blade + ".");
        }
    }

    private void checkReach(Sawn sawn) {
        var cut = sawn.cut();
        var longest = cut.direction() == Direction.RIP ? saw.longestRip() : saw.longestCrosscut();
        if (cut.tool() == Tool.SAW && cut.along() > units(longest)) {
            fault(
                    sawn,
                    String.format(
                            Locale.ROOT,
                            "is %.2f mm long, but the saw reaches %.2f mm.",
                            SheetUnit.mm(cut.along()),
                            longest.orElseThrow()));
        }
    }

    private static int units(OptionalDouble longest) {
        return longest.isPresent() ? SheetUnit.down(longest.getAsDouble()) : Integer.MAX_VALUE;
    }

    private void checkFence(Sawn sawn) {
        var cut = sawn.cut();
        var edge = cut.reference();
        if (edge.isEnd() != (cut.direction() == Direction.CROSSCUT)) {
            fault(sawn, "does not run along its reference edge.");
            return;
        }
        int near = edge.isFar()
                ? sawn.panel().place(edge) - Panel.place(cut.kerf(), edge)
                : Panel.place(cut.kerf(), edge) - sawn.panel().place(edge);
        if (near != cut.setting()) {
            fault(sawn, "is set to " + cut.setting() + " units, but is " + near + " from its reference edge.");
        }
        var other = edge.opposite();
        if (isRough(sawn.panel(), edge)
                && !isRough(sawn.panel(), other)
                && !sawn.panel().isLost(other, cut)) {
            fault(sawn, "has a rough edge for its reference, though the other one is true.");
        }
    }

    /** Left by the break-down saw with an allowance. */
    private boolean isRough(Panel panel, Edge edge) {
        return panel.origin(edge) == Origin.ROUGH
                && saw.breakDown().filter(hand -> hand.allowance() > 0).isPresent();
    }

    private void checkPurpose(Sawn sawn) {
        if (sawn.cut().purpose() == Purpose.DIVIDE) {
            return;
        }
        boolean isTrim = sawn.cut().purpose() == Purpose.TRIM;
        var edge = sawn.cut().reference().opposite();
        boolean factory = sawn.panel().origin(edge) == Origin.FACTORY;
        if (isTrim != factory) {
            fault(sawn, isTrim ? "trims what is no factory edge." : "recuts a factory edge.");
        }
        if (sawn.fallsOff().pieces(sheet).findAny().isPresent()) {
            fault(sawn, "takes a piece off with the edge.");
        }
        int off = sawn.panel().extent(sawn.cut().direction()) - sawn.cut().setting();
        // what the saw itself left over is no allowance
        boolean allowed = saw.breakDown().isEmpty()
                || sawn.panel().origin(edge) == Origin.SAWN
                || off >= SheetUnit.up(saw.breakDown().orElseThrow().allowance());
        if (!isTrim && !allowed) {
            fault(sawn, "takes off less than the allowance.");
        }
    }
}
