package org.standwright.file;

import org.standwright.design.kit.Machine;
import org.standwright.file.text.DesignFileException;
import org.standwright.unit.Units;

/**
 * The text of a first design for a machine, to be changed by its maker. Sizes follow from the machine's base and from
 * usual working heights (common practice, no source); they are round numbers on a tape.
 */
public final class StartingFile {
    private static final double ROOM_BESIDE_BASE = 50;
    /** Within what the schema allows. */
    private static final double MOST_HEIGHT = 2480;

    private static final double MOST_PLAN = 2980;
    private static final double LEAST_WIDTH = 500;
    private static final double LEAST_DEPTH = 450;
    private static final double WIDTH_FOR_TWO_BAYS = 600;
    private static final double LEAST_CARCASS = 300;
    private static final double USUAL_DRAWER = 150;
    /** Levelers, two layers of blocks, two of worktop, and the carcass's bottom and sub-top, roughly. */
    private static final double SUPPORT_AND_BOARDS = 150;

    private final String preset;
    private final Machine machine;
    private final Units unit;
    private final double workingHeight;

    private StartingFile(String preset, Machine machine, Units unit, double usualHeight) {
        this.preset = preset;
        this.machine = machine;
        this.unit = unit;
        this.workingHeight =
                up(Math.min(MOST_HEIGHT, Math.max(usualHeight, reference() + SUPPORT_AND_BOARDS + LEAST_CARCASS)));
    }

    /**
     * A complete design of a stand for a machine.
     *
     * @param machine name of its preset
     * @param unit that its maker reads and writes
     * @throws DesignFileException when there is no such preset, or it cannot be read
     */
    public static String forMachine(PresetLibrary presets, String machine, Units unit) {
        var read = presets.machine(machine);
        var record = (Machine) read.record();
        double usual = read.values().path("usualHeight").asDouble(usualHeight(record));
        return new StartingFile(machine, record, unit, usual).text();
    }

    private static double usualHeight(Machine machine) {
        return switch (machine.reference().kind()) {
            case TABLE, MOVABLE_TABLE, WORKTOP -> 900;
            case SPINDLE -> 1060;
        };
    }

    private String text() {
        var kit = ShopKit.of(unit);
        return """
                {
                  "version": 1,
                  "kind": "stand",
                  "name": "Stand for %s",
                  "note": "A first draft: measure your machine and boards, then change whatever you like.",
                  "unit": "%s",
                  "machine": { "preset": "%s" },
                  "place": { "turn": 0, "margins": { "front": "%s" } },
                  "workingHeight": "%s",
                  "plan": { "width": "%s", "depth": "%s" },
                  "layout": "as-written",
                  "support": { "kind": "levelers", "leveler": "%s" },
                  "carcass": { "sheet": "%s", "back": "%s", "joint": { "kind": "dado" } },
                  "worktop": { "sheet": "%s", "layers": 2 },
                  "bays": [
                %s
                  ],
                  "drawers": {
                    "box": "%s",
                    "bottom": "%s",
                    "front": "%s",
                    "hang": { "kind": "slides", "slide": "%s" },
                    "mount": "overlay",
                    "grip": { "kind": "pull", "pull": "%s" }
                  },
                  "edges": { "fronts": "%s" },
                  "screws": { "panel": "%s", "slide": "%s" },
                  "saw": { "kerf": "%s", "trim": "%s" },
                  "loads": { "note": "Full drawers, in kg/m³ of their inside.", "drawers": 500 },
                  "steady": {
                    "note": "Full drawers can turn a stand over: leave lock and anchor out only where 'check' says that it stands without.",
                    "interlock": true,
                    "anchor": "wall"
                  }
                }
                """.formatted(
                        preset,
                        unit.word(),
                        preset,
                        unit.length(margin()),
                        unit.length(workingHeight),
                        unit.length(width()),
                        unit.length(depth()),
                        kit.leveler(),
                        kit.board(),
                        kit.thin(),
                        kit.board(),
                        bays(),
                        kit.box(),
                        kit.thin(),
                        kit.board(),
                        kit.slide(),
                        kit.pull(),
                        kit.edging(),
                        kit.panelScrew(),
                        kit.slideScrew(),
                        kit.kerf(),
                        kit.trim());
    }

    private double width() {
        return plan(machine.base().width(), LEAST_WIDTH);
    }

    private double depth() {
        return plan(machine.base().depth(), LEAST_DEPTH);
    }

    private double plan(double base, double least) {
        return up(Math.min(MOST_PLAN, Math.max(base + 2 * ROOM_BESIDE_BASE, least)));
    }

    /** From the base to the worktop's front edge: it stands in the middle, as near as a tape shows. */
    private double margin() {
        double step = step();
        return Math.floor((depth() - machine.base().depth()) / 2 / step + 1e-9) * step;
    }

    private double reference() {
        return machine.reference().height() + machine.feet();
    }

    private String bays() {
        double carcass = workingHeight - reference() - SUPPORT_AND_BOARDS;
        long drawers = Math.max(1, Math.min(6, Math.round(carcass / USUAL_DRAWER)));
        var bay = "    { \"contents\": [{ \"kind\": \"equal-drawers\", \"count\": " + drawers + " }] }";
        return width() < WIDTH_FOR_TWO_BAYS ? bay : bay + ",\n" + bay;
    }

    /** The next round number on a tape: 10 mm or 1/2 in. */
    private double up(double length) {
        return Math.ceil(length / step() - 1e-9) * step();
    }

    private double step() {
        return unit == Units.MM ? 10 : 12.7;
    }
}
