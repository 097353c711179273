package org.standwright.sheet;

import java.util.ArrayList;
import java.util.List;

/** Saws a board by its list of cuts and says what lies on the bench each time. */
final class CutReplay {
    /**
     * One cut as it was made.
     *
     * @param halves the near one, then the far one
     */
    record Sawn(Cut cut, Panel panel, List<Panel> halves) {
        /** The half away from the fence. */
        Panel fallsOff() {
            return halves.get(cut.reference().isFar() ? 0 : 1);
        }
    }

    private final PlannedSheet sheet;
    private final List<Panel> panels = new ArrayList<>();
    private final List<Sawn> sawn = new ArrayList<>();
    private final List<String> faults = new ArrayList<>();

    private CutReplay(PlannedSheet sheet) {
        this.sheet = sheet;
        panels.add(Panel.of(sheet.board()));
    }

    static CutReplay of(PlannedSheet sheet) {
        var replay = new CutReplay(sheet);
        sheet.cuts().forEach(replay::saw);
        return replay;
    }

    private void saw(Cut cut) {
        var divided = panels.stream().filter(panel -> panel.isDividedBy(cut)).toList();
        if (divided.size() != 1) {
            faults.add("cut " + cut.number() + " along " + cut.kerf() + " divides " + divided.size() + " panels.");
            return;
        }
        var panel = divided.get(0);
        var halves = panel.divided(cut, sheet);
        panels.remove(panel);
        halves.stream().filter(half -> half.area().size() > 0).forEach(panels::add);
        sawn.add(new Sawn(cut, panel, halves));
    }

    /** The cuts that could be made. */
    List<Sawn> sawn() {
        return sawn;
    }

    /** One sentence for each cut that could not. */
    List<String> faults() {
        return faults;
    }

    /** What lies on the bench in the end. */
    List<Panel> remains() {
        return panels;
    }
}
