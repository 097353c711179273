package org.standwright.export;

import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import org.standwright.cutlist.CutLine;
import org.standwright.cutlist.CutList;
import org.standwright.unit.Units;

/**
 * The cut list as a table, one line of it a row: sizes in millimetres for a spreadsheet, and as a tape shows them in the
 * maker's unit.
 */
public final class CutListCsvWriter {
    private static final List<String> HEADER = List.of(
            "label",
            "count",
            "part",
            "material",
            "thickness mm",
            "cut length mm",
            "cut width mm",
            "finished length mm",
            "finished width mm",
            "cut length",
            "cut width",
            "pieces",
            "machining");

    private CutListCsvWriter() {}

    public static void write(CutList cutList, Units units, OutputStream out) throws IOException {
        CsvTable.write(
                HEADER, cutList.lines().stream().map(line -> row(line, units)).toList(), out);
    }

    private static List<String> row(CutLine line, Units units) {
        var part = line.part();
        return List.of(
                line.label(),
                Integer.toString(line.count()),
                part.name(),
                line.material().name(),
                CsvTable.exact(part.thickness()),
                CsvTable.exact(part.roughLength()),
                CsvTable.exact(part.roughWidth()),
                CsvTable.exact(part.length()),
                CsvTable.exact(part.width()),
                units.length(part.roughLength()),
                units.length(part.roughWidth()),
                String.join("; ", line.members()),
                String.join("; ", line.notes()));
    }
}
