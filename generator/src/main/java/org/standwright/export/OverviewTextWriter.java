package org.standwright.export;

import static org.standwright.export.TextTable.Align.LEFT;
import static org.standwright.export.TextTable.Align.RIGHT;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.standwright.design.Layout;
import org.standwright.design.built.BayLayout;
import org.standwright.design.built.DoorLayout;
import org.standwright.design.built.DrawerLayout;
import org.standwright.design.built.SectionLayout;
import org.standwright.design.built.Stand;
import org.standwright.design.kit.Size3;
import org.standwright.drawing.figure.PrintedStack;
import org.standwright.geom.Box3;
import org.standwright.geom.Rect;
import org.standwright.packet.words.FoundHeight;
import org.standwright.unit.Units;

/** What a stand comes to, as plain text: how its height was found, its sizes and its bays. */
public final class OverviewTextWriter {
    private final Stand stand;
    private final Units units;
    private final List<String> lines = new ArrayList<>();

    private OverviewTextWriter(Stand stand) {
        this.stand = stand;
        this.units = stand.design().unit();
    }

    /** Writes UTF-8. */
    public static void write(Stand stand, OutputStream out) throws IOException {
        var page = new OverviewTextWriter(stand);
        page.lines.add(stand.design().name());
        page.found();
        page.stack(PrintedStack.of(stand.stack(), page.units));
        page.sizes();
        stand.bays().forEach(page::bay);
        out.write((String.join("\n", page.lines) + "\n").getBytes(StandardCharsets.UTF_8));
    }

    private void found() {
        heading("Working height");
        lines.addAll(WrappedText.lines("", "", FoundHeight.of(stand)));
        if (stand.design().layout() == Layout.MIRRORED) {
            lines.add("Mirrored: built with the design's left at the right; the machine itself is not mirrored.");
        }
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
        table.add("worktop", size(stand.worktop()));
        table.add("over all, with the machine", size(stand.assembly().box()));
        lines.addAll(table.lines());
    }

    private void bay(BayLayout bay) {
        heading("Bay " + bay.name() + ", opening " + size(bay.opening()));
        var table = new TextTable(LEFT, LEFT, LEFT, LEFT);
        bay.sections().forEach(section -> section(section, table));
        lines.addAll(table.lines());
        bay.sections().stream()
                .flatMap(section -> section instanceof SectionLayout.Divided divided
                        ? divided.bays().stream()
                        : Stream.<BayLayout>empty())
                .forEach(this::bay);
    }

    private void section(SectionLayout section, TextTable table) {
        if (section instanceof SectionLayout.Drawers drawers) {
            drawers.drawers().forEach(drawer -> drawer(drawer, table));
        } else if (section instanceof SectionLayout.Closed closed) {
            closed.doors().forEach(door -> door(door, closed.shelves(), table));
        } else if (section instanceof SectionLayout.Open open) {
            table.add("open", "opening " + size(open.opening()), shelves(open.shelves()), "");
        } else if (section instanceof SectionLayout.Clear clear) {
            table.add("clear: " + clear.use(), "opening " + size(clear.opening()), "", "");
        } else if (section instanceof SectionLayout.Divided divided) {
            var names = divided.bays().stream().map(BayLayout::name).toList();
            table.add("divided", "opening " + size(divided.opening()), "into bays " + String.join(", ", names), "");
        }
    }

    private void drawer(DrawerLayout drawer, TextTable table) {
        table.add(
                "drawer " + drawer.name(),
                "front " + size(drawer.front()),
                "inside " + size(drawer.inside()),
                drawer.slide()
                        .map(slide -> "slide " + units.length(slide.length()))
                        .orElse("on runners"));
    }

    private void door(DoorLayout door, List<Double> shelves, TextTable table) {
        table.add(
                "door " + door.name(),
                "front " + size(door.front()),
                "hung at the " + door.hung().name().toLowerCase(Locale.ROOT),
                shelves(shelves));
    }

    private String shelves(List<Double> undersides) {
        return undersides.isEmpty()
                ? ""
                : "shelves at " + undersides.stream().map(units::bareLength).collect(Collectors.joining(", "));
    }

    private void heading(String text) {
        lines.add("");
        lines.add(text);
    }

    private String size(Rect area) {
        return units.bareLength(area.width()) + " x " + units.length(area.height());
    }

    private String size(Box3 box) {
        return size(new Size3(box.size().x(), box.size().y(), box.size().z()));
    }

    private String size(Size3 size) {
        return units.bareLength(size.width()) + " x " + units.bareLength(size.depth()) + " x "
                + units.length(size.height());
    }
}
