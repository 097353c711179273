package org.standwright.export;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.dataformat.csv.CsvGenerator;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import java.io.IOException;
import java.io.OutputStream;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;

/** Comma-separated values in UTF-8, a header line first, quoted only where needed (RFC 4180, but lines end in "\n"). */
final class CsvTable {
    private static final CsvMapper CSV = CsvMapper.builder()
            .enable(CsvGenerator.Feature.STRICT_CHECK_FOR_QUOTING)
            .disable(JsonGenerator.Feature.AUTO_CLOSE_TARGET)
            .build();

    private CsvTable() {}

    static void write(List<String> header, List<List<String>> rows, OutputStream out) throws IOException {
        var schema = CsvSchema.emptySchema().withLineSeparator("\n");
        try (var lines = CSV.writer(schema).writeValues(out)) {
            lines.write(header);
            lines.writeAll(rows);
        }
    }

    /** Millimetres for a computer: to the micrometre, with a point, no unit. */
    static String exact(double mm) {
        return BigDecimal.valueOf(mm)
                .setScale(3, RoundingMode.HALF_UP)
                .stripTrailingZeros()
                .toPlainString();
    }
}
