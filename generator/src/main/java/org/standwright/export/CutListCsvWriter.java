package org.standwright.export;

import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import java.util.stream.Stream;
import org.standwright.cutlist.CutLine;
import org.standwright.cutlist.CutList;
import org.standwright.part.Banding;
import org.standwright.part.Edge;
import org.standwright.part.Part;
import org.standwright.unit.Units;

/**
 * The cut list as a table, one line of it a row, sheets before bars: sizes in millimetres for a spreadsheet, and as a tape shows them in the
 * maker's unit.
 */
public final class CutListCsvWriter {
    private static final List<String> HEADER = List.of(
            "label",
            "count",
            "part",
            "stock",
            "material",
            "thickness mm",
            "rough length mm",
            "rough width mm",
            "cut length mm",
            "cut width mm",
            "finished length mm",
            "finished width mm",
            "rough length",
            "rough width",
            "band reference end",
            "band far end",
            "band reference edge",
            "band far edge",
            "pieces",
            "machining");

    private CutListCsvWriter() {}

    public static void write(CutList cutList, Units units, OutputStream out) throws IOException {
        var bars = cutList.bars().stream().flatMap(run -> run.lines().stream());
        var rows = Stream.concat(cutList.sheetLines().stream(), bars).map(line -> row(line, units));
        CsvTable.write(HEADER, rows.toList(), out);
    }

    private static List<String> row(CutLine line, Units units) {
        var part = line.part();
        return List.of(
                line.label(),
                Integer.toString(line.count()),
                part.name(),
                line.material().isBar() ? "bar" : "sheet",
                line.material().name(),
                CsvTable.exact(part.thickness()),
                CsvTable.exact(part.roughLength()),
                CsvTable.exact(part.roughWidth()),
                CsvTable.exact(part.cutLength()),
                CsvTable.exact(part.cutWidth()),
                CsvTable.exact(part.length()),
                CsvTable.exact(part.width()),
                units.length(part.roughLength()),
                units.length(part.roughWidth()),
                band(part, Edge.X0),
                band(part, Edge.X1),
                band(part, Edge.Y0),
                band(part, Edge.Y1),
                String.join("; ", line.members()),
                String.join("; ", line.notes()));
    }

    private static String band(Part part, Edge edge) {
        return part.bands().on(edge).map(Banding::name).orElse("");
    }
}
