package org.standwright.export;

import static org.standwright.export.TextTable.Align.LEFT;
import static org.standwright.export.TextTable.Align.RIGHT;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.standwright.check.Finding;
import org.standwright.design.built.BayLayout;
import org.standwright.design.built.Stand;
import org.standwright.design.kit.Size3;
import org.standwright.drawing.figure.PrintedStack;
import org.standwright.geom.Box3;
import org.standwright.unit.Units;

/** What a stand comes to, as plain text: its height stack, its sizes, its drawers, and what the checks found. */
public final class OverviewTextWriter {
    private final Stand stand;
    private final Units units;
    private final List<String> lines = new ArrayList<>();

    private OverviewTextWriter(Stand stand) {
        this.stand = stand;
        this.units = stand.design().unit();
    }

    /** Writes UTF-8. */
    public static void write(Stand stand, List<Finding> findings, OutputStream out) throws IOException {
        var page = new OverviewTextWriter(stand);
        page.lines.add(stand.design().name());
        page.stack(PrintedStack.of(stand.stack(), page.units));
        page.sizes();
        stand.bays().forEach(page::bay);
        page.findings(findings);
        out.write((String.join("\n", page.lines) + "\n").getBytes(StandardCharsets.UTF_8));
    }

    private void stack(PrintedStack stack) {
        heading("Height stack, from the floor up");
        var table = new TextTable(LEFT, RIGHT, LEFT);
        stack.layers().forEach(layer -> row(layer, table));
        row(stack.sum(), table);
        lines.addAll(table.lines());
    }

    private void row(PrintedStack.Layer layer, TextTable table) {
        var range = layer.isAdjustable()
                ? "can be set from " + units.bareLength(layer.lowest()) + " to " + units.length(layer.highest())
                : "";
        table.add(layer.name(), units.length(layer.height()), range);
    }

    private void sizes() {
        heading("Sizes, width x depth x height");
        var table = new TextTable(LEFT, LEFT);
        table.add("carcass", size(stand.carcass()));
        table.add("over all, with the machine", size(stand.assembly().box()));
        lines.addAll(table.lines());
    }

    private void bay(BayLayout bay) {
        heading("Bay " + bay.name() + ", opening "
                + units.bareLength(bay.opening().width()) + " x "
                + units.length(bay.opening().height()));
        var table = new TextTable(LEFT, LEFT, LEFT, LEFT);
        for (var drawer : bay.drawers()) {
            var front = drawer.front();
            table.add(
                    "drawer " + drawer.name(),
                    "front " + units.bareLength(front.width()) + " x " + units.length(front.height()),
                    "inside " + size(drawer.inside()),
                    drawer.slide()
                            .map(slide -> "slide " + units.length(slide.length()))
                            .orElse("runners"));
        }
        lines.addAll(table.lines());
    }

    private void findings(List<Finding> findings) {
        heading("Findings");
        if (findings.isEmpty()) {
            lines.add("none; the checks know only what was entered");
        }
        findings.forEach(finding -> lines.addAll(WrappedText.lines(
                finding.severity().name().toLowerCase(Locale.ROOT) + ": ",
                "    ",
                finding.subject() + ": " + finding.message() + " (" + finding.source() + ")")));
    }

    private void heading(String text) {
        lines.add("");
        lines.add(text);
    }

    private String size(Box3 box) {
        return size(new Size3(box.size().x(), box.size().y(), box.size().z()));
    }

    private String size(Size3 size) {
        return units.bareLength(size.width()) + " x " + units.bareLength(size.depth()) + " x "
                + units.length(size.height());
    }
}
