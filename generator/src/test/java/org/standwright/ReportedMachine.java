package org.standwright;

import static org.assertj.core.api.Assertions.assertThat;
import static org.standwright.Area.same;

import java.util.List;

/** Worktop, machine and bolts, worked out again: seen from above, mm from the carcass's left front corner. */
final class ReportedMachine {
    private static final List<String> SIDES = List.of("front", "right", "back", "left");

    private final Report report;
    private final Entry machine;
    private final int turn;

    ReportedMachine(Report report) {
        this.report = report;
        this.machine = report.entry().at("/design/machine");
        this.turn = (int) report.number("/design/place/turn");
    }

    /** A point of the machine as measured, or of its turned base, from the left front corner. */
    private record Spot(double x, double y) {}

    void check() {
        double top = worktop();
        assertThat(report.entry().has("/machine")).isEqualTo(report.hasMachineOnTop());
        if (report.hasMachineOnTop()) {
            double x = start(true);
            double y = start(false);
            standing(x, y, top + report.entry().number("/design/place/shims/usual", 0));
            bolts(x, y);
            sides();
        }
    }

    /** Carcass and overhang; returns the height of the upper face. */
    private double worktop() {
        double z = report.number("/carcass/max/2");
        var layers = report.list("/parts").stream()
                .filter(part -> part.text("/group").equals("worktop"))
                .toList();
        assertThat(layers).hasSize((int) report.number("/design/worktopLayers"));
        double under = z;
        for (var layer : layers) {
            double over = under + report.thickness("worktop");
            box(
                    layer.at("/box"),
                    -report.overhang("left"),
                    -report.overhang("front"),
                    under,
                    worktopEnd(true),
                    worktopEnd(false),
                    over);
            under = over;
        }
        box(
                report.entry().at("/worktop"),
                -report.overhang("left"),
                -report.overhang("front"),
                z,
                worktopEnd(true),
                worktopEnd(false),
                under);
        SIDES.forEach(side -> same(report.number("/built/overhang/" + side), report.overhang(side), side));
        return under;
    }

    private double worktopEnd(boolean width) {
        return report.plan(width) + report.overhang(width ? "right" : "back");
    }

    /** Its margin from the worktop's edge; over the middle of a carcass whose size is given without margins. */
    private double start(boolean width) {
        var first = width ? "left" : "front";
        var last = width ? "right" : "back";
        boolean given = report.entry().has("/design/plan/" + (width ? "width" : "depth"));
        if (has(first) || !given) {
            return margin(first) - report.overhang(first);
        }
        return has(last)
                ? worktopEnd(width) - margin(last) - report.base(width)
                : (report.plan(width) - report.base(width)) / 2;
    }

    private boolean has(String side) {
        return report.entry().has("/design/place/margins/" + report.written(side));
    }

    private double margin(String side) {
        return report.entry().number("/design/place/margins/" + report.written(side), 0);
    }

    private void standing(double x, double y, double z) {
        double feet = machine.number("/feet");
        box(
                report.entry().at("/machine/base"),
                x,
                y,
                z,
                x + report.base(true),
                y + report.base(false),
                z + feet + machine.number("/reference/height"));
        double wide = machine.number("/envelope/width");
        double deep = machine.number("/envelope/depth");
        double left = machine.number("/envelope/left", (wide - machine.number("/base/width")) / 2);
        double front = machine.number("/envelope/front", (deep - machine.number("/base/depth")) / 2);
        var one = turned(new Spot(-left, -front));
        var other = turned(new Spot(wide - left, deep - front));
        box(
                report.entry().at("/machine/whole"),
                x + Math.min(one.x(), other.x()),
                y + Math.min(one.y(), other.y()),
                z,
                x + Math.max(one.x(), other.x()),
                y + Math.max(one.y(), other.y()),
                z + feet + machine.number("/envelope/height"));
    }

    private void bolts(double x, double y) {
        var holes = machine.list("/mounting/holes");
        var bolts = report.list("/machine/bolts");
        assertThat(bolts).hasSameSizeAs(holes);
        for (int i = 0; i < holes.size(); i++) {
            var spot = turned(new Spot(
                    machine.number("/mounting/origin/x") + holes.get(i).number("/x"),
                    machine.number("/mounting/origin/y") + holes.get(i).number("/y")));
            same(bolts.get(i).number("/x"), x + spot.x(), "bolt " + (i + 1) + " from the left");
            same(bolts.get(i).number("/y"), y + spot.y(), "bolt " + (i + 1) + " from the front");
        }
    }

    /** About the middle of the base as measured, then from the corner of the turned base. */
    private Spot turned(Spot spot) {
        double x = spot.x() - machine.number("/base/width") / 2;
        double y = spot.y() - machine.number("/base/depth") / 2;
        for (int quarter = 0; quarter < turn / 90; quarter++) {
            double before = x;
            x = -y;
            y = before;
        }
        return new Spot(x + report.base(true) / 2, y + report.base(false) / 2);
    }

    private void sides() {
        assertThat(report.entry().text("/machine/operator")).isEqualTo(turned(machine.text("/operator")));
        var feed = machine.text("/feed");
        assertThat(report.entry().has("/machine/infeed")).isEqualTo(!feed.equals("none"));
        if (!feed.equals("none")) {
            assertThat(report.entry().text("/machine/infeed")).isEqualTo(turned(feed.replaceAll("-to-.*", "")));
        }
    }

    private String turned(String side) {
        return SIDES.get((SIDES.indexOf(side) + turn / 90) % 4);
    }

    private static void box(Entry box, double... corners) {
        for (int axis = 0; axis < 3; axis++) {
            same(box.number("/min/" + axis), corners[axis], "least of axis " + axis);
            same(box.number("/max/" + axis), corners[3 + axis], "most of axis " + axis);
        }
    }
}
